//! The brief for the workshop: what is known of a trouble, and no diagnosis.

use std::collections::BTreeSet;

use book::content::TroubleContent;
use rules::trouble::codes::{self, FreezeFrame, Scan};
use units::{Day, SubjectId};

use super::codes::{Told, code_view, frame_view, readiness_view};
use super::places::vehicle_line;
use super::show::{item_view, reading_of};
use super::trouble::answers;
use crate::car::Car;
use crate::troubles::read_scans;
use crate::{BriefView, CodeView, DatedReading, Door, FrameView, ReadinessView, Refusal, WorkLine};

/// For how many days back work on the car is told to a workshop. Common practice.
const WORK_DAYS: i32 = 90;

impl Door {
    pub(crate) fn brief_view(&self, book: &str, subject: &str) -> Result<BriefView, Refusal> {
        let car = self.car(book)?;
        let subject: SubjectId = subject.parse()?;
        let trouble = self.trouble_row(car.book, subject)?.content;
        let told = read_scans(&self.troubles(car.book)?, &car);
        let scans: Vec<Scan> = trouble.scans.iter().map(|scan| codes::read(&scan.text)).collect();
        let today = self.clock.today();
        Ok(BriefView {
            vehicle: vehicle_line(&car),
            vin: car.content.vin.map(|vin| vin.to_string()),
            today: today.to_string(),
            day: trouble.day.to_string(),
            reading: reading(&trouble, &car),
            words: trouble.words.clone(),
            when: trouble.when.clone(),
            symptoms: trouble.symptoms.clone(),
            absent: trouble.absent.clone(),
            codes: each_once(&scans, Some((&car, &told)))?,
            frames: frames(&scans),
            readiness: readiness(&scans),
            cleared: cleared(&trouble),
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

/// The codes of all scans, each once a status, without the causes at which they point: finding those is what the
/// workshop is asked for.
fn each_once(scans: &[Scan], told: Told<'_>) -> Result<Vec<CodeView>, Refusal> {
    let mut seen = BTreeSet::new();
    let codes = scans.iter().flat_map(|scan| &scan.codes);
    codes
        .filter(|reported| seen.insert((reported.code, reported.status)))
        .map(|reported| Ok(CodeView { causes: Vec::new(), ..code_view(*reported, told)? }))
        .collect()
}

/// What was frozen, each frame once: a later scan often has the same one.
fn frames(scans: &[Scan]) -> Vec<FrameView> {
    let mut kept: Vec<&FreezeFrame> = Vec::new();
    for frame in scans.iter().flat_map(|scan| &scan.freeze_frames) {
        if !kept.contains(&frame) {
            kept.push(frame);
        }
    }
    kept.into_iter().map(frame_view).collect()
}

/// The readiness of the last scan that told it.
fn readiness(scans: &[Scan]) -> Vec<ReadinessView> {
    let told = scans.iter().rev().find(|scan| !scan.readiness.is_empty());
    told.into_iter().flat_map(|scan| &scan.readiness).map(|readiness| readiness_view(*readiness)).collect()
}

fn cleared(trouble: &TroubleContent) -> Option<String> {
    let cleared = trouble.scans.iter().filter(|scan| scan.cleared);
    cleared.map(|scan| scan.day).max().map(|day| day.to_string())
}
