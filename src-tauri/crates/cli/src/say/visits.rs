//! The visits ahead, as a list that fits a window of 80 characters.

use door::{MoneyView, PlannedVisitView, SpendView};
use words::Words;

use super::{WIDTH, item, row};

/// Where the items stand, behind the day.
const ITEMS: usize = 12;

/// A visit that the plan proposes: day, place, cost and whether that is an estimate; under it what is done.
pub fn visit(words: &Words, visit: &PlannedVisitView) -> String {
    let site = words.say(&format!("cli-site-{}", visit.site), &[]);
    let estimated = (visit.estimated > 0).then(|| format!("({})", words.say("cli-visit-estimated", &[])));
    let cost = visit.cost.as_ref().map(money);
    let head = [Some(visit.day.clone()), Some(site), cost, estimated].into_iter().flatten();
    // The names of some items have commas in them.
    let items: Vec<_> = visit.items.iter().map(|one| item(words, &one.item)).collect();
    row(&head.collect::<Vec<_>>().join("  "), ITEMS, &items.join("; "))
}

/// What the next twelve months are likely to cost, and what that rests on.
pub fn spend(words: &Words, spend: &SpendView) -> String {
    let (low, high) = (money(&spend.low), money(&spend.high));
    let range = [("low", low.into()), ("high", high.into()), ("unpriced", spend.unpriced.into())];
    let counted = [("cli-spend-no-record", spend.no_record), ("cli-spend-estimated", spend.estimated)];
    let counted = counted.into_iter().filter(|&(_, count)| count > 0);
    let counted = counted.map(|(id, count)| words.say(id, &[("count", count.into())]));
    let told = [words.say("cli-spend", &range)].into_iter().chain(counted).collect::<Vec<_>>().join(" ");
    textwrap::fill(&told, WIDTH)
}

fn money(money: &MoneyView) -> String {
    format!("{} {}", money.number, money.currency)
}
