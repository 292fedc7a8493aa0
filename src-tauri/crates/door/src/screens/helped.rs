//! Whether the work of each visit, or whatever let codes be cleared, changed what the car uses.

use std::cmp::Reverse;
use std::collections::BTreeSet;

use rayon::prelude::*;
use rules::fuel::{
    Alarm, Answer, FuelKind, Question, Season, Span, Swing, Verdict, are_near, around, helped, may_help,
    sets_apart,
};
use rules::trouble::codes::Code;
use rules::upkeep::{Catalogue, ItemRef};
use units::{Day, SubjectId};

use super::consumption::change_view;
use super::show::item_view;
use crate::car::{Car, Visit};
use crate::troubles::Clearing;
use crate::{HelpedView, VerdictView};

/// What it is asked of whether it helped: the work of a visit, or that codes were cleared.
struct Asked<'a> {
    subject: SubjectId,
    day: Day,
    items: &'a [ItemRef],
    cleared: Option<&'a BTreeSet<Code>>,
}

/// The answers for every visit with work that can change what the car uses and for every time that codes were
/// cleared, newest first; without those of which nothing can ever be said, because no span lies on one of their
/// sides. Each is worked out by itself, on as many cores as there are.
pub(super) fn helped_views(
    car: &Car,
    clearings: &[Clearing],
    kind: FuelKind,
    spans: &[Span],
    shifts: &[Alarm],
    catalogue: &Catalogue,
) -> Vec<HelpedView> {
    let sets_apart = |visit: &&Visit| visit.content.items.iter().any(sets_apart);
    let apart: Vec<Day> = car.visits.iter().filter(sets_apart).map(|visit| visit.content.day).collect();
    let asked = asked(&car.visits, clearings);
    let answer = |asked_of: &Asked<'_>| {
        let day = asked_of.day;
        let (not_before, not_after) = around(spans, day, &apart, shifts);
        let swing = Swing::of(car.vehicle.engine, kind);
        let answer = helped(&Question { spans, day, not_before, not_after, swing });
        let never = answer.before == 0 || (answer.after == 0 && not_after.is_some());
        let near = asked.iter().filter(|other| are_near(spans, other.day, day)).count();
        (!never).then(|| helped_view(asked_of, &answer, near - 1, catalogue))
    };
    asked.par_iter().filter_map(answer).collect()
}

/// Newest first, visits before what was cleared on the same day.
fn asked<'a>(visits: &'a [Visit], clearings: &'a [Clearing]) -> Vec<Asked<'a>> {
    let visits = visits.iter().rev().filter(|visit| may_help(&visit.content.items));
    let visits = visits.map(|Visit { subject, content, .. }| Asked {
        subject: *subject,
        day: content.day,
        items: &content.items,
        cleared: None,
    });
    let cleared = clearings.iter().map(|Clearing { subject, day, codes }| Asked {
        subject: *subject,
        day: *day,
        items: &[],
        cleared: Some(codes),
    });
    let mut asked: Vec<_> = visits.chain(cleared).collect();
    asked.sort_by_key(|asked| Reverse(asked.day));
    asked
}

fn helped_view(asked: &Asked<'_>, answer: &Answer, others_near: usize, catalogue: &Catalogue) -> HelpedView {
    HelpedView {
        subject: asked.subject.to_string(),
        day: asked.day.to_string(),
        items: asked.items.iter().map(|item| item_view(item, catalogue)).collect(),
        cleared: asked.cleared.map(|codes| codes.iter().map(Code::to_string).collect()),
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
