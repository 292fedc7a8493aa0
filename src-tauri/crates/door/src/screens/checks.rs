//! The checks of a trouble as shown: each row with what it needs and why it stands there.

use rules::trouble::{Mend, Opening, Plan, Row, Suspect, Why};
use rules::upkeep::{Catalogue, Caution};

use super::show::bare_item;
use crate::{Because, CheckCosts, CheckRow, FindsView, MendView, NeededTool, OpeningView};

/// The rows of a plan, first to last.
pub(super) fn check_rows(plan: &Plan<'_>, catalogue: &Catalogue) -> Vec<CheckRow> {
    plan.rows.iter().map(|row| check_row(row, catalogue)).collect()
}

/// What the order of a plan costs.
pub(super) fn costs(plan: &Plan<'_>) -> CheckCosts {
    CheckCosts {
        order: tenths(plan.cost),
        at_least: tenths(plan.at_least),
        exact: plan.exact,
        by_ratio: tenths(plan.by_ratio),
        left: per_mille(plan.left),
    }
}

/// A chance in thousandths.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a chance between 0 and 1 makes a number between 0 and 1 000"
)]
pub(super) fn per_mille(chance: f64) -> u16 {
    (chance.clamp(0.0, 1.0) * 1_000.0).round() as u16
}

/// Minutes, rounded to tenths: what stands behind is far below what the tables know.
fn tenths(minutes: f64) -> f64 {
    (minutes * 10.0).round() / 10.0
}

/// What mends a cause.
pub(super) fn mend_view(mend: Mend, catalogue: &Catalogue) -> MendView {
    match mend {
        Mend::Items(items) => {
            MendView::Items { items: items.into_iter().map(|number| bare_item(number, catalogue)).collect() }
        }
        Mend::Owner => MendView::Owner,
        Mend::Workshop => MendView::Workshop,
    }
}

fn check_row(row: &Row<'_>, catalogue: &Catalogue) -> CheckRow {
    let check = row.check;
    let tools = check
        .tools
        .iter()
        .map(|tool| NeededTool { tool: tool.clone(), lacking: row.lacks.contains(&tool.as_str()) });
    let opens = check
        .opens
        .iter()
        .map(|opening| OpeningView { word: opening_word(opening), newly: row.opens.contains(&opening) });
    CheckRow {
        check: check.key.clone(),
        chance: per_mille(row.chance),
        minutes: check.minutes,
        cost: tenths(row.cost),
        costs_money: check.money > 0,
        workshop: check.is_for_a_workshop(),
        tools: tools.collect(),
        opens: opens.collect(),
        cautions: check.cautions.iter().copied().map(Caution::key).map(str::to_owned).collect(),
        finds: row.finds.iter().map(finds_view).filter(|finds| finds.chance > 0).collect(),
        look: u8::try_from(row.look).unwrap_or(u8::MAX),
        why: row.why.iter().map(|why| because(why, catalogue)).collect(),
    }
}

fn finds_view(suspect: &Suspect<'_>) -> FindsView {
    FindsView { cause: suspect.cause.key.clone(), chance: per_mille(suspect.chance) }
}

/// The id of an opening in the words.
fn opening_word(opening: Opening) -> String {
    match opening {
        Opening::Access(access) => format!("access-{}", access.key()),
        Opening::Drive | Opening::Reader | Opening::Workshop => format!("opening-{}", opening.key()),
    }
}

fn because(why: &Why, catalogue: &Catalogue) -> Because {
    match why.clone() {
        Why::LooksFor { cause } => Because::LooksFor { cause },
        Why::Symptom { symptom, cause } => Because::Symptom { symptom, cause },
        Why::Code { code, cause } => Because::Code { code, cause },
        Why::Overdue { item, cause } => Because::Overdue { item: bare_item(item, catalogue), cause },
        Why::Touched { item, days, cause } => {
            Because::Touched { item: bare_item(item, catalogue), days, cause }
        }
        Why::Before { cause } => Because::Before { cause },
        Why::Shares { opening } => Because::Shares { word: opening_word(opening) },
        Why::SecondLook => Because::SecondLook,
    }
}
