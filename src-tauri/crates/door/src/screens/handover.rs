//! The screen on which a book is handed over, and who wrote in it.

use book::HandoverRow;
use units::BookId;

use super::places::{fingerprint, vehicle_line};
use crate::clock::day_of;
use crate::{Door, HandedOverView, HandoverView, Refusal, WriterView};

impl Door {
    pub(crate) fn handover_view(&self, book: &str) -> Result<HandoverView, Refusal> {
        let car = self.car(book)?;
        let kept = self.kept_papers(car.book)?;
        let lengths = kept.iter().filter_map(|(kept, hash)| self.photos.open_kept(*kept, *hash).ok());
        let lengths: Vec<u64> = lengths.map(|(_, bytes)| bytes).collect();
        let today = self.clock.today();
        Ok(HandoverView {
            vehicle: vehicle_line(&car),
            today: today.to_string(),
            entries: self.shelf.count(car.book)?,
            papers: lengths.len(),
            papers_bytes: lengths.iter().sum(),
            missing: kept.len() - lengths.len(),
            handed_over: self.shelf.handed_over(car.book)?.map(handed_over_view),
            file_name: format!("{}-{today}.wellkept", plain_name(&car.content.name)),
            writers: self.writers(car.book)?,
        })
    }

    /// Who wrote in a book from when to when.
    pub(crate) fn writers(&self, book: BookId) -> Result<Vec<WriterView>, Refusal> {
        let handovers = self.shelf.handovers(book)?;
        let own = self.shelf.writer().key();
        let spans = self.shelf.spans(book)?.into_iter().map(|span| {
            let holds = |row: &&HandoverRow| row.writer == span.writer && row.struck.is_none();
            WriterView {
                fingerprint: fingerprint(span.writer),
                own: span.writer == own,
                from: day_of(span.first).to_string(),
                to: day_of(span.last).to_string(),
                entries: usize::try_from(span.entries).unwrap_or(usize::MAX),
                handed_over: handovers.iter().filter(holds).map(|row| row.content.day.to_string()).collect(),
            }
        });
        Ok(spans.collect())
    }
}

fn handed_over_view(row: HandoverRow) -> HandedOverView {
    HandedOverView {
        subject: row.subject.to_string(),
        day: row.content.day.to_string(),
        words: row.content.words,
        papers: row.content.papers,
    }
}

/// A name that every file system takes: letters and digits as they are, anything else as one dash.
fn plain_name(name: &str) -> String {
    let words = name.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !word.is_empty());
    let plain = words.collect::<Vec<_>>().join("-");
    if plain.is_empty() { "book".to_owned() } else { plain }
}
