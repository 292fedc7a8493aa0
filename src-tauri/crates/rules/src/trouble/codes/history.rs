//! What the dated scans of a book say of one code, as events of its life.

use super::{Code, Event, Readiness, Scan, Status, What};
use crate::parts::Moment;

/// A scan of the book.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Dated<'a> {
    /// When it was made, and how far the car had gone.
    pub at: Moment,
    /// What it said; one that says nothing stands for a clearing without a look before it.
    pub scan: &'a Scan,
    /// Whether the codes were cleared after it.
    pub cleared: bool,
}

/// The status that tells most where a scan has a code in several lists.
const BY_WEIGHT: [Status; 4] = [Status::Confirmed, Status::Permanent, Status::Pending, Status::Unstated];

/// The events of a code in the order of the days; scans of one day must come in the order in which they were made.
///
/// A scan that read the list in which the code stood last, and does not have it, is without it. One that read
/// other lists alone says nothing: a code that is confirmed does not stand among the pending ones.
pub fn events(code: Code, scans: &[Dated<'_>]) -> Vec<Event> {
    let mut scans: Vec<_> = scans.iter().collect();
    scans.sort_by_key(|dated| dated.at.day);
    let (mut events, mut list) = (Vec::new(), Status::Confirmed);
    for dated in scans {
        let all_ready = is_ready(&dated.scan.readiness);
        let event = |what| Event { at: dated.at, what, all_ready };
        if let Some(status) = status_in(code, dated.scan) {
            events.push(event(What::Seen(status)));
            list = if status == Status::Unstated { Status::Confirmed } else { status };
        } else if dated.scan.answered.contains(&list) {
            events.push(event(What::Absent));
        }
        if dated.cleared {
            events.push(event(What::Cleared));
        }
    }
    events
}

fn status_in(code: Code, scan: &Scan) -> Option<Status> {
    let has = |status: &Status| {
        scan.codes.iter().any(|reported| (reported.code, reported.status) == (code, *status))
    };
    BY_WEIGHT.into_iter().find(has)
}

/// Whether every control unit that told its readiness has finished its tests; not when none told it.
fn is_ready(told: &[Readiness]) -> bool {
    !told.is_empty() && told.iter().all(|readiness| readiness.is_complete())
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::super::{Standing, life, read};
    use super::*;

    fn at(day: &str) -> Moment {
        Moment { day: day.parse().unwrap(), travelled: None }
    }

    fn of(scans: &[(&str, &str, bool)]) -> Vec<What> {
        let read: Vec<_> = scans.iter().map(|&(day, text, cleared)| (at(day), read(text), cleared)).collect();
        let dated: Vec<_> =
            read.iter().map(|(at, scan, cleared)| Dated { at: *at, scan, cleared: *cleared }).collect();
        let code = Code::parse("P0420").unwrap();
        events(code, &dated).into_iter().map(|event| event.what).collect()
    }

    #[test]
    fn a_scan_that_reads_the_same_list_without_it_is_without_it() {
        let found = of(&[("2026-01-01", "43 04 20", false), ("2026-02-01", "43 00", false)]);
        assert_eq!(found, [What::Seen(Status::Confirmed), What::Absent]);
    }

    #[test]
    fn another_list_says_nothing_of_it() {
        let found = of(&[("2026-01-01", "43 04 20", false), ("2026-02-01", "47 00", false)]);
        assert_eq!(found, [What::Seen(Status::Confirmed)]);
    }

    #[test]
    fn a_clearing_follows_what_its_scan_saw_and_may_come_without_one() {
        let found = of(&[("2026-01-01", "P0420", true), ("2026-02-01", "", true)]);
        assert_eq!(found, [What::Seen(Status::Unstated), What::Cleared, What::Cleared]);
    }

    #[test]
    fn the_days_need_not_come_in_order() {
        let found = of(&[("2026-02-01", "43 00", false), ("2026-01-01", "43 04 20", false)]);
        assert_eq!(found, [What::Seen(Status::Confirmed), What::Absent]);
    }

    /// 41 01 00 07 65 00: no codes, all tests of byte B and C finished (SAE J1979, the layout of service 01 PID 01).
    #[test]
    fn a_cleared_code_is_gone_once_the_tests_are_finished() {
        let scans = [("2026-01-01", "43 04 20", true), ("2026-01-03", "43 00\n41 01 00 07 65 00", false)];
        let read: Vec<_> = scans.iter().map(|&(day, text, cleared)| (at(day), read(text), cleared)).collect();
        let dated: Vec<_> =
            read.iter().map(|(at, scan, cleared)| Dated { at: *at, scan, cleared: *cleared }).collect();
        let life = life(&events(Code::parse("P0420").unwrap(), &dated)).unwrap();
        assert_eq!(life.standing, Standing::Gone(at("2026-01-03")));
        assert!(!life.readiness_lost);
    }
}
