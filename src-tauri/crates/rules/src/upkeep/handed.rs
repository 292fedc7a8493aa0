//! What an owner's changes of the plan mean once the book has gone to the next one.

use super::{ItemRef, PlanChange, Setting};

/// What holds of the changes of a plan that several owners made.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct HandedOn {
    /// The changes that hold for the owner of today, in their order.
    pub holding: Vec<PlanChange>,
    /// What an earlier owner had switched off and nobody has settled since: the place of the change that did so,
    /// among the changes given.
    pub switched_off: Vec<usize>,
}

/// Sorts the changes of a plan, of which the first `before` were made before the last handover.
///
/// How often something is due is a fact of the car and holds for every owner. A day that was chosen was a day in the
/// calendar of the one who chose it, and what he would not be reminded of was his own affair: neither holds for the
/// next owner, who should not have to find out that something was kept from him.
pub fn handed_on(changes: &[PlanChange], before: usize) -> HandedOn {
    let (old, new) = changes.split_at(before.min(changes.len()));
    let holds = |change: &&PlanChange| !matches!(change.setting, Setting::Off | Setting::Pinned(_));
    let holding = old.iter().filter(holds).chain(new).cloned().collect();
    let settled_last = |at: usize, item: &ItemRef| {
        !changes.iter().skip(at + 1).any(|later| later.item == *item && later.setting.is_how_often())
    };
    let off = old.iter().enumerate().filter(|(_, change)| change.setting == Setting::Off);
    let switched_off = off.filter(|(at, change)| settled_last(*at, &change.item)).map(|(at, _)| at).collect();
    HandedOn { holding, switched_off }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]

    use super::*;
    use crate::testing::day;
    use crate::upkeep::{Interval, Pin, Schedule};
    use units::HalfMonths;

    const NONE: [usize; 0] = [];

    fn change(number: u32, setting: Setting) -> PlanChange {
        PlanChange { item: ItemRef::Catalogue(number), setting }
    }

    fn pinned() -> Setting {
        Setting::Pinned(Some(Pin { day: day("2026-09-01"), set: day("2026-06-01") }))
    }

    fn yearly() -> Setting {
        Setting::Interval(Schedule::every(Interval::new(None, Some(HalfMonths::months(12))).unwrap()))
    }

    #[test]
    fn without_a_handover_everything_holds() {
        let changes = [change(1, Setting::Off), change(2, pinned()), change(3, yearly())];
        let HandedOn { holding, switched_off } = handed_on(&changes, 0);
        assert_eq!((holding.as_slice(), switched_off), (&changes[..], NONE.to_vec()));
    }

    #[test]
    fn intervals_go_on_and_days_and_silences_end() {
        let changes = [
            change(1, Setting::Off),
            change(2, pinned()),
            change(3, yearly()),
            change(4, pinned()),
            change(5, Setting::Off),
        ];
        let HandedOn { holding, switched_off } = handed_on(&changes, 3);
        assert_eq!(holding, changes[2..]);
        assert_eq!(switched_off, [0]);
        assert_eq!(handed_on(&changes, 99).switched_off, [0, 4], "more than there are is all of them");
    }

    #[test]
    fn what_was_switched_off_is_told_until_someone_settles_it() {
        let told = |then: &[Setting], before| {
            let changes: Vec<_> = then.iter().map(|&setting| change(1, setting)).collect();
            handed_on(&changes, before).switched_off
        };
        assert_eq!(told(&[yearly(), Setting::Off], 2), [1]);
        assert_eq!(told(&[Setting::Off, Setting::Off], 2), [1], "the last time");
        assert_eq!(told(&[Setting::Off, pinned()], 1), [0], "a day says nothing of how often");
        assert_eq!(told(&[Setting::Off, Setting::Catalogue], 2), NONE, "switched on again himself");
        assert_eq!(told(&[Setting::Off, Setting::Catalogue], 1), NONE, "the new owner wants it");
        assert_eq!(told(&[Setting::Off, Setting::Off], 1), NONE, "so does not the new owner either");
        assert_eq!(told(&[Setting::Off, yearly()], 1), NONE);
    }
}
