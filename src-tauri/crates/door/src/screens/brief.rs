//! The brief for the workshop: what is known of a trouble, and no diagnosis.

use std::collections::BTreeSet;

use book::content::{ScanContent, TroubleContent};
use rules::trouble::codes::{self, FreezeFrame, Note, Scan};
use rules::vehicle::Fitting;
use units::{Day, SubjectId};

use super::codes::{Told, code_view, frame_view, readiness_view};
use super::places::vehicle_line;
use super::show::{item_view, reading_of};
use super::trouble::answers;
use crate::car::Car;
use crate::troubles::{TroubleRow, read_scans};
use crate::{BriefFrame, BriefReadiness, BriefView, CodeView, DatedReading, Door, Refusal, SeenAt, WorkLine};

/// For how many days back work on the car is told to a workshop. Common practice.
const WORK_DAYS: i32 = 90;

impl Door {
    pub(crate) fn brief_view(&self, book: &str, subject: &str) -> Result<BriefView, Refusal> {
        let car = self.car(book)?;
        let subject: SubjectId = subject.parse()?;
        let trouble = self.trouble_row(car.book, subject)?.content;
        let all = self.troubles(car.book)?;
        let told = read_scans(&all, &car);
        let scans = scans_of(&all);
        let own: Vec<_> = scans.iter().filter(|scan| scan.of == subject).collect();
        let today = self.clock.today();
        Ok(BriefView {
            vehicle: vehicle_line(&car),
            vin: car.content.vin.map(|vin| vin.to_string()),
            first_use: car.vehicle.first_use.map(|day| day.to_string()),
            fitted: fitted(&car),
            today: today.to_string(),
            day: trouble.day.to_string(),
            reading: reading(&trouble, &car),
            words: trouble.words.clone(),
            when: trouble.when.clone(),
            symptoms: trouble.symptoms.clone(),
            absent: trouble.absent.clone(),
            codes: each_once(&own, Some((&car, &told)))?,
            frames: frames(&own, &car),
            readiness: readiness(&scans, subject, &car),
            cleared: cleared(&scans, subject, trouble.day),
            checked: answers(&trouble),
            work: self.recent_work(&car, today),
            asked: trouble.asked,
        })
    }

    /// The work of the last days, newest first.
    fn recent_work(&self, car: &Car, today: Day) -> Vec<WorkLine> {
        let recent = car.visits.iter().rev().filter(|visit| {
            let done = &visit.content;
            !done.items.is_empty() && today.days_since(done.day) <= WORK_DAYS
        });
        let line = |visit: &crate::car::Visit| WorkLine {
            day: visit.content.day.to_string(),
            reading: visit.content.shown.map(|shown| reading_of(shown, car.unit())),
            workshop: visit.content.by.workshop().to_owned(),
            items: visit.content.items.iter().map(|item| item_view(item, self.catalogue)).collect(),
        };
        recent.map(line).collect()
    }
}

/// What the instrument showed at the trouble, or the newest reading that the book has.
fn reading(trouble: &TroubleContent, car: &Car) -> Option<DatedReading> {
    let noticed = trouble.shown.map(|shown| (trouble.day, shown));
    let (day, shown) = noticed.or_else(|| car.last_reading())?;
    Some(DatedReading { day: day.to_string(), reading: reading_of(shown, car.unit()) })
}

/// The keys of what the car is known to have.
fn fitted(car: &Car) -> Vec<String> {
    let has = |fitting: &Fitting| car.vehicle.equipment.said(*fitting) == Some(true);
    Fitting::ALL.into_iter().filter(has).map(|fitting| fitting.key().to_owned()).collect()
}

/// A scan as it was written down, and what it says.
struct Read<'a> {
    /// The line of its trouble.
    of: SubjectId,
    written: &'a ScanContent,
    says: Scan,
}

impl Read<'_> {
    /// Whether the codes were cleared after it, as its owner or the control unit says.
    fn clears(&self) -> bool {
        self.written.cleared || self.says.notes.contains(&Note::Cleared)
    }

    fn seen(&self, car: &Car) -> SeenAt {
        let shown = self.written.shown.map(|shown| reading_of(shown, car.unit()));
        SeenAt { day: self.written.day.to_string(), reading: shown }
    }
}

/// The scans of all troubles of a car by their days; those of one day as they were written down.
fn scans_of(all: &[TroubleRow]) -> Vec<Read<'_>> {
    let written = all.iter().flat_map(|row| row.content.scans.iter().map(|scan| (row.subject, scan)));
    let read = written.map(|(of, written)| Read { of, written, says: codes::read(&written.text) });
    let mut scans: Vec<_> = read.collect();
    scans.sort_by_key(|scan| scan.written.day);
    scans
}

/// The codes of all scans, each once a status, without the causes at which they point: finding those is what the
/// workshop is asked for.
fn each_once(scans: &[&Read<'_>], told: Told<'_>) -> Result<Vec<CodeView>, Refusal> {
    let mut seen = BTreeSet::new();
    let codes = scans.iter().flat_map(|scan| &scan.says.codes);
    codes
        .filter(|reported| seen.insert((reported.code, reported.status)))
        .map(|reported| Ok(CodeView { causes: Vec::new(), ..code_view(*reported, told)? }))
        .collect()
}

/// What was frozen, each frame once: a later scan often has the same one.
fn frames(scans: &[&Read<'_>], car: &Car) -> Vec<BriefFrame> {
    let mut kept: Vec<(&Read<'_>, &FreezeFrame)> = Vec::new();
    for scan in scans {
        for frame in &scan.says.freeze_frames {
            if kept.iter().all(|(_, known)| *known != frame) {
                kept.push((scan, frame));
            }
        }
    }
    let view = |(scan, frame): (&Read<'_>, _)| BriefFrame { seen: scan.seen(car), frame: frame_view(frame) };
    kept.into_iter().map(view).collect()
}

/// The readiness of the last scan of this trouble that told it, unless the codes of the car were cleared since, for
/// whatever trouble: that sets all tests back.
fn readiness(scans: &[Read<'_>], subject: SubjectId, car: &Car) -> Option<BriefReadiness> {
    let since = scans.iter().rposition(Read::clears).map_or(0, |cleared| cleared + 1);
    let tells = |scan: &&Read<'_>| scan.of == subject && !scan.says.readiness.is_empty();
    let scan = scans[since..].iter().rfind(tells)?;
    let units = scan.says.readiness.iter().map(|readiness| readiness_view(*readiness, Some(car)));
    Some(BriefReadiness { seen: scan.seen(car), units: units.collect() })
}

/// When the codes were last cleared since the trouble was noticed, or for it.
fn cleared(scans: &[Read<'_>], subject: SubjectId, noticed: Day) -> Option<String> {
    let own_or_since = |scan: &Read<'_>| scan.of == subject || scan.written.day >= noticed;
    let last = scans.iter().rfind(|scan| scan.clears() && own_or_since(scan))?;
    Some(last.written.day.to_string())
}
