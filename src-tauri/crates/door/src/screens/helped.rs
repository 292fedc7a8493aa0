//! Whether the work of each visit changed what the car uses.

use rayon::prelude::*;
use rules::fuel::{
    Alarm, Answer, FuelKind, Question, Season, Span, Swing, Verdict, are_near, around, helped, may_help,
    sets_apart,
};
use rules::upkeep::Catalogue;
use units::Day;

use super::consumption::change_view;
use super::show::item_view;
use crate::car::{Car, Visit};
use crate::{HelpedView, VerdictView};

/// The answers for every visit with work that can change what the car uses, newest first; without those of which
/// nothing can ever be said, because no span lies on one of their sides. Each is worked out by itself, on as many
/// cores as there are.
pub(super) fn helped_views(
    car: &Car,
    kind: FuelKind,
    spans: &[Span],
    shifts: &[Alarm],
    catalogue: &Catalogue,
) -> Vec<HelpedView> {
    let sets_apart = |visit: &&Visit| visit.content.items.iter().any(sets_apart);
    let apart: Vec<Day> = car.visits.iter().filter(sets_apart).map(|visit| visit.content.day).collect();
    let asked: Vec<&Visit> = car.visits.iter().rev().filter(|visit| may_help(&visit.content.items)).collect();
    let answer = |visit: &Visit| {
        let day = visit.content.day;
        let (not_before, not_after) = around(spans, day, &apart, shifts);
        let swing = Swing::of(car.vehicle.engine, kind);
        let answer = helped(&Question { spans, day, not_before, not_after, swing });
        let never = answer.before == 0 || (answer.after == 0 && not_after.is_some());
        let near = asked.iter().filter(|other| are_near(spans, other.content.day, day)).count();
        (!never).then(|| helped_view(visit, &answer, near - 1, catalogue))
    };
    asked.par_iter().filter_map(|visit| answer(visit)).collect()
}

fn helped_view(visit: &Visit, answer: &Answer, others_near: usize, catalogue: &Catalogue) -> HelpedView {
    HelpedView {
        subject: visit.subject.to_string(),
        day: visit.content.day.to_string(),
        items: visit.content.items.iter().map(|item| item_view(item, catalogue)).collect(),
        verdict: verdict_view(answer.verdict),
        change: answer.change.map(change_view),
        before: answer.before,
        after: answer.after,
        others_near,
        season_may_be: match answer.season {
            Season::Fitted => None,
            Season::MayBe(percent) => Some(percent.to_string()),
        },
    }
}

fn verdict_view(verdict: Verdict) -> VerdictView {
    match verdict {
        Verdict::Better { low, high } => VerdictView::Better { low: low.to_string(), high: high.to_string() },
        Verdict::Worse { low, high } => VerdictView::Worse { low: low.to_string(), high: high.to_string() },
        Verdict::NoLargerThan(percent) => VerdictView::NoLargerThan { percent: percent.to_string() },
        Verdict::CannotTellYet { more } => VerdictView::CannotTellYet { more },
    }
}
