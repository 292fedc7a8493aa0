//! Trouble codes as shown: what a text says, and what the book tells of each code.

use std::collections::BTreeMap;

use rules::parts::Moment;
use rules::trouble::codes::{
    self, Code, Codes, FreezeFrame, Ignition, Life, Note, Readiness, Reported, Return, Scan, Standing,
    Status, Turn, Value,
};

use super::parts::used_view;
use super::show::reading_of;
use crate::car::Car;
use crate::troubles::{ReadScan, life_of, read_scans};
use crate::{
    CodeLife, CodeReturn, CodeTurn, CodeView, CodesView, Door, FrameView, MonitorView, NoteView,
    ReadinessView, Refusal, SeenAt, ToldView,
};

/// What a text of a scan tool says, apart from any car; a text that says nothing is refused.
pub fn codes_of_text(text: &str) -> Result<CodesView, Refusal> {
    let scan = codes::read(text);
    match refused(&scan) {
        Some(refusal) => Err(refusal),
        None => scan_view(&scan, None),
    }
}

/// Why a scan that holds nothing is none: what was meant for a code first.
fn refused(scan: &Scan) -> Option<Refusal> {
    let read = Scan { notes: Vec::new(), ..scan.clone() };
    if read != Scan::default() {
        return None;
    }
    let reasons = scan.notes.iter().map(|note| match note {
        Note::Misread { text, meant } => {
            Some((0, Refusal::new("misread-code").with("text", text).with("meant", meant)))
        }
        Note::NotACode(text) => Some((1, Refusal::new("not-a-code").with("text", text))),
        Note::TooLong => Some((2, Refusal::new("text-too-long").with("most", codes::LONGEST))),
        Note::NothingFound | Note::Unread(_) => Some((3, Refusal::new("no-codes"))),
        // These tell something of the car.
        _ => None,
    });
    let reasons: Option<Vec<_>> = reasons.collect();
    reasons?.into_iter().min_by_key(|(rank, _)| *rank).map(|(_, refusal)| refusal)
}

impl Door {
    /// What a text says, with the life that its codes have in the book of a car, where one is named.
    pub(crate) fn codes_view(&self, text: &str, book: Option<&str>) -> Result<CodesView, Refusal> {
        let Some(book) = book else {
            return scan_view(&codes::read(text), None);
        };
        let scan = codes::read(text);
        let car = self.car(book)?;
        let scans = read_scans(&self.troubles(car.book)?, &car);
        scan_view(&scan, Some((&car, &scans)))
    }
}

/// The scans of a book, and the car that they belong to.
pub(super) type Told<'a> = Option<(&'a Car, &'a [ReadScan])>;

/// What one scan says.
pub(super) fn scan_view(scan: &Scan, told: Told<'_>) -> Result<CodesView, Refusal> {
    let codes = scan.codes.iter().map(|reported| code_view(*reported, told));
    let car = told.map(|(car, _)| car);
    Ok(CodesView {
        codes: codes.collect::<Result<_, _>>()?,
        answered: scan.answered.iter().map(|status| status.key().to_owned()).collect(),
        readiness: scan.readiness.iter().map(|readiness| readiness_view(*readiness, car)).collect(),
        frames: scan.freeze_frames.iter().map(frame_view).collect(),
        live: scan.live.iter().map(told_view).collect(),
        notes: scan.notes.iter().map(note_view).collect(),
    })
}

/// One code, with its life where the book has one.
pub(super) fn code_view(reported: Reported, told: Told<'_>) -> Result<CodeView, Refusal> {
    let code = reported.code;
    let known = Codes::shipped()?.get(code);
    let life = told.and_then(|(car, scans)| Some(life_view(&life_of(code, scans)?, car)));
    Ok(CodeView {
        code: code.to_string(),
        meaning: known.map(|known| known.code.key()),
        system: code.system().key().to_owned(),
        origin: code.origin().key().to_owned(),
        area: code.area().map(|area| area.key().to_owned()),
        urgency: known.map(|known| known.urgency.key().to_owned()),
        status: reported.status.key().to_owned(),
        failure_type: reported.failure_type.map(|byte| format!("{byte:02X}")),
        causes: known.map(|known| known.causes.clone()).unwrap_or_default(),
        life,
    })
}

/// A code of the book, by its status when it was last seen.
pub(super) fn code_of_book(code: Code, car: &Car, scans: &[ReadScan]) -> Result<CodeView, Refusal> {
    let status = life_of(code, scans).map_or(Status::Unstated, |life| life.status);
    code_view(Reported { code, status, failure_type: None }, Some((car, scans)))
}

fn life_view(life: &Life, car: &Car) -> CodeLife {
    let since = match life.standing {
        Standing::Present => None,
        Standing::Cleared(at) | Standing::Gone(at) => Some(at),
    };
    CodeLife {
        first: seen_at(life.first, car),
        last: seen_at(life.last, car),
        times: life.times,
        cleared: life.cleared().map(|at| seen_at(at, car)),
        returns: life.returns().map(|back| return_view(back, car)).collect(),
        turns: life.turns.iter().map(|turn| turn_view(*turn, car)).collect(),
        standing: life.standing.key().to_owned(),
        since: since.map(|at| seen_at(at, car)),
        warnings: life.warnings().into_iter().map(|warning| warning.key().to_owned()).collect(),
    }
}

fn turn_view(turn: Turn, car: &Car) -> CodeTurn {
    match turn {
        Turn::Cleared(at) => CodeTurn::Cleared { at: seen_at(at, car) },
        Turn::Gone(at) => CodeTurn::Gone { at: seen_at(at, car) },
        Turn::Back(back) => CodeTurn::Back(return_view(back, car)),
    }
}

fn return_view(back: Return, car: &Car) -> CodeReturn {
    CodeReturn {
        left: seen_at(back.left, car),
        was_cleared: back.was_cleared,
        back: seen_at(back.back, car),
        after: used_view(back.after, car.unit()),
    }
}

fn seen_at(at: Moment, car: &Car) -> SeenAt {
    let shown = at.travelled.map(|travelled| car.track.shown_on(at.day, travelled));
    SeenAt { day: at.day.to_string(), reading: shown.map(|shown| reading_of(shown, car.unit())) }
}

/// What a control unit says of its tests, with what an inspection lets pass of a car whose year is known.
pub(super) fn readiness_view(readiness: Readiness, car: Option<&Car>) -> ReadinessView {
    let year = car.and_then(|car| car.vehicle.first_use).and_then(|day| u16::try_from(day.ymd().0).ok());
    let ignition = match readiness.ignition() {
        Ignition::Spark => "spark",
        Ignition::Compression => "compression",
    };
    let monitors = readiness.monitors().into_iter();
    ReadinessView {
        lamp: readiness.lamp(),
        codes: readiness.codes(),
        ignition: ignition.to_owned(),
        monitors: monitors
            .map(|(monitor, finished)| MonitorView { key: monitor.key().to_owned(), finished })
            .collect(),
        complete: readiness.is_complete(),
        allowed: year.and_then(Readiness::unfinished_allowed),
    }
}

pub(super) fn frame_view(frame: &FreezeFrame) -> FrameView {
    FrameView {
        number: frame.number,
        code: frame.code.map(|code| code.to_string()),
        values: frame.values.iter().map(told_view).collect(),
    }
}

fn told_view(told: &Value) -> ToldView {
    ToldView {
        key: told.pid.key().to_owned(),
        value: told.value.to_string(),
        unit: told.pid.unit().symbol().to_owned(),
    }
}

/// A note with what its sentence names.
fn note_view(note: &Note) -> NoteView {
    let named = |name: &str, value: String| (name.to_owned(), value);
    let values = match note {
        Note::NotACode(text) | Note::CutShort(text) | Note::LinkFailed(text) | Note::Unread(text) => {
            vec![named("text", text.clone())]
        }
        Note::Misread { text, meant } => {
            vec![named("text", text.clone()), named("meant", meant.to_string())]
        }
        Note::TooLong => vec![named("most", codes::LONGEST.to_string())],
        Note::StatusUnclear(code) => vec![named("code", code.to_string())],
        Note::MaybeCounted(codes) => {
            let codes: Vec<_> = codes.iter().map(ToString::to_string).collect();
            vec![named("codes", codes.join(", "))]
        }
        Note::Refused { service, reason } => {
            vec![named("service", format!("{service:02X}")), named("reason", format!("{reason:02X}"))]
        }
        Note::NothingFound | Note::PartMissing | Note::PartsMixed | Note::NoData | Note::Cleared => {
            Vec::new()
        }
    };
    NoteView { key: note.key().to_owned(), values: values.into_iter().collect::<BTreeMap<_, _>>() }
}
