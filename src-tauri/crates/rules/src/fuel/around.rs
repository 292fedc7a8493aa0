//! Which spans are to be held against each other for a visit: those that nothing else sets apart.

use units::Day;

use super::{Alarm, Span};

/// A shift that began no more than so many tanks off a visit can be its doing: where exactly it began is not known.
const NEAR: usize = 1;

/// The days before and after which spans do not count for a visit of this day: other work that sets them apart was
/// done, or consumption shifted at another time than that of the visit.
///
/// `spans` are in order, and so are the days in `apart`; the day itself may be among them.
pub fn around(spans: &[Span], day: Day, apart: &[Day], shifts: &[Alarm]) -> (Option<Day>, Option<Day>) {
    let far = |shift: &&Alarm| !are_near(spans, shift.since, day);
    let days: Vec<Day> =
        apart.iter().copied().chain(shifts.iter().filter(far).map(|shift| shift.since)).collect();
    let before = days.iter().copied().filter(|other| *other < day).max();
    (before, days.into_iter().filter(|other| *other > day).min())
}

/// Whether two days lie so near each other that no tank tells what was done on one from what was done on the other.
pub fn are_near(spans: &[Span], one: Day, other: Day) -> bool {
    let tank = |day: Day| spans.partition_point(|span| span.from < day);
    tank(one).abs_diff(tank(other)) <= NEAR
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fuel::simulated::one;
    use crate::fuel::{PerMille, Share};
    use crate::running::Travelled;
    use crate::testing::day;

    #[test]
    fn a_shift_near_the_visit_may_be_its_doing_and_one_farther_off_is_not() {
        let week = |number: i32| day("2026-01-05").plus_days(7 * number);
        let spans: Vec<Span> = (0..20).map(|number| one(week(number), Travelled::NONE, 500.0, 7.0)).collect();
        let shift = |number: i32| Alarm {
            since: week(number),
            raised: week(number + 3),
            likely: PerMille(100),
            size: Share { low: PerMille(80), high: PerMille(120) },
        };
        let visit = week(10).plus_days(2);
        let bounds = |apart: &[Day], shifts: &[Alarm]| around(&spans, visit, apart, shifts);
        assert!(are_near(&spans, visit, week(11)) && !are_near(&spans, visit, week(13)));
        assert_eq!(bounds(&[], &[]), (None, None));
        assert_eq!(bounds(&[], &[shift(11)]), (None, None));
        assert_eq!(bounds(&[], &[shift(2), shift(10), shift(14)]), (Some(week(2)), Some(week(14))));
        assert_eq!(bounds(&[week(4), visit, week(12)], &[shift(2)]), (Some(week(4)), Some(week(12))));
    }
}
