//! A purchase is written down and put right, and parts are noted.

use book::Change;
use book::content::{BoughtContent, Content, ContentKind};
use rules::parts::PartNumber;
use units::{BookId, SubjectId};

use crate::car::Car;
use crate::screens::part_warnings;
use crate::{BoughtForm, Door, PartNoteForm, Refusal, WrittenView, forms};

impl Door {
    pub(super) fn write_bought(&mut self, book: &str, form: &BoughtForm) -> Result<WrittenView, Refusal> {
        let car = self.car(book)?;
        let bought = self.read_bought(&car, form)?;
        self.write_purchase(&car, bought, Change::Begin)
    }

    pub(super) fn amend_bought(
        &mut self,
        book: &str,
        subject: SubjectId,
        form: &BoughtForm,
        why: &str,
    ) -> Result<WrittenView, Refusal> {
        let car = self.car(book)?;
        let bought = self.read_bought(&car, form)?;
        let why = forms::note(why, "why")?;
        self.write_purchase(&car, bought, |content| Change::Amend { subject, content, why })
    }

    fn read_bought(&self, car: &Car, form: &BoughtForm) -> Result<BoughtContent, Refusal> {
        let bought = forms::bought(form, self.catalogue, self.clock.today());
        let bought = bought.map_err(|refusal| refusal.within("bought"))?;
        self.paper_lines(car.book, &bought.papers).map_err(|refusal| refusal.at("bought.papers"))?;
        Ok(bought)
    }

    /// Writes a purchase, and warns of what is noted against its parts.
    fn write_purchase(
        &mut self,
        car: &Car,
        bought: BoughtContent,
        change: impl FnOnce(Content) -> Change,
    ) -> Result<WrittenView, Refusal> {
        let warnings = part_warnings(car, &bought.parts);
        let written = self.write(car.book, change(Content::Bought(bought)))?;
        Ok(WrittenView { warnings, ..written })
    }

    pub(super) fn note_part(&mut self, book: BookId, form: &PartNoteForm) -> Result<WrittenView, Refusal> {
        let note = forms::part_note(form).map_err(|refusal| refusal.within("note"))?;
        let of = PartNumber::new(&note.number);
        let known = self.shelf.lines_of(book, ContentKind::PartNote)?.into_iter().find(
            |line| matches!(&line.content, Content::PartNote(known) if PartNumber::new(&known.number) == of),
        );
        let content = Content::PartNote(note);
        self.write(
            book,
            match known {
                Some(line) => Change::Amend { subject: line.subject, content, why: String::new() },
                None => Change::Begin(content),
            },
        )
    }
}
