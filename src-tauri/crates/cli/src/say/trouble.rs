//! Troubles in words.

use door::{Because, CheckCosts, CheckRow, MendView, NeededTool, SuspectView, SymptomLine, TroubleView};
use words::{Arg, Words};

use super::item;

/// A suspect below this chance, in thousandths, is not told in words; JSON has them all.
const LEAST_TOLD: u16 = 10;

/// A trouble: when to stop first, what it may be, and the checks in their order.
pub fn trouble(words: &Words, view: &TroubleView) -> Vec<String> {
    let stop = view.stop.iter().map(|stop| words.say(&format!("stop-{}", stop.danger), &[]));
    let suspects = view.suspects.iter().filter(|suspect| suspect.chance >= LEAST_TOLD);
    let suspects = suspects.map(|suspect| self::suspect(words, suspect));
    let other = words.say("cli-trouble-other", &[("chance", percent(view.other).into())]);
    let checks = view.checks.iter().flat_map(|row| check(words, row));
    let held: Vec<_> = view.held.iter().map(|key| words.say(&format!("check-{key}"), &[])).collect();
    let held = (!held.is_empty()).then(|| words.say("check-held", &[("checks", held.join(", ").into())]));
    let scans = view.scans.iter().flat_map(|scan| super::codes::codes(words, scan));
    let heading = |id: &str| [String::new(), words.say(id, &[])];
    stop.chain(scans)
        .chain(heading("cli-trouble-suspects"))
        .chain(suspects)
        .chain([other])
        .chain(heading("cli-trouble-checks"))
        .chain(checks)
        .chain(held)
        .chain([costs(words, view.costs)])
        .collect()
}

/// A cause with its chance and what mends it.
fn suspect(words: &Words, suspect: &SuspectView) -> String {
    let mend = match &suspect.mend {
        MendView::Owner => words.say("cli-mend-owner", &[]),
        MendView::Workshop => words.say("cli-mend-workshop", &[]),
        MendView::Items { items } => {
            let items: Vec<_> = items.iter().map(|one| item(words, one)).collect();
            words.say("cli-mend-items", &[("items", items.join(", ").into())])
        }
    };
    format!("{:>6}  {}: {mend}", percent(suspect.chance), say_cause(words, &suspect.cause))
}

/// A check with its chance, its cost and why it stands there, and under it what can hurt, how it is made and with what.
fn check(words: &Words, row: &CheckRow) -> Vec<String> {
    let name = words.say(&format!("check-{}", row.check), &[]);
    let why: Vec<_> = row.why.iter().map(|why| because(words, why)).collect();
    let args = [
        ("chance", Arg::from(percent(row.chance))),
        ("minutes", row.cost.to_string().into()),
        ("why", why.join("; ").into()),
    ];
    let mut lines = vec![format!("{name}  [{}]  {}", row.check, words.say("cli-trouble-check", &args))];
    lines.extend(under(words, row).into_iter().map(|line| format!("    {line}")));
    lines
}

/// What stands under a check: that it is a workshop's, what can hurt, with what and how it is made.
fn under(words: &Words, row: &CheckRow) -> Vec<String> {
    let listed = |id: &str, names: Vec<String>| {
        (!names.is_empty()).then(|| words.say(id, &[("said", names.join(", ").into())]))
    };
    let cautions = row.cautions.iter().map(|key| words.say(&format!("caution-{key}-name"), &[]));
    let tools = row.tools.iter().map(|needed| tool(words, needed));
    let told = [
        row.workshop.then(|| words.say("cli-trouble-workshop", &[])),
        listed("cli-trouble-cautions", cautions.collect()),
        listed("cli-trouble-tools", tools.collect()),
        Some(words.say(&format!("check-{}-how", row.check), &[])),
    ];
    told.into_iter().flatten().collect()
}

fn tool(words: &Words, needed: &NeededTool) -> String {
    let name = words.say(&format!("check-tool-{}", needed.tool), &[]);
    if needed.lacking { words.say("cli-tool-lacking", &[("tool", name.into())]) } else { name }
}

fn because(words: &Words, why: &Because) -> String {
    let say = |id: &str, args: &[(&str, Arg<'_>)]| words.say(&format!("cli-because-{id}"), args);
    let named = |cause: &str| ("cause", Arg::from(say_cause(words, cause)));
    match why {
        Because::LooksFor { cause } => say("looks-for", &[named(cause)]),
        Because::Symptom { symptom, cause } => {
            let symptom = words.say(&format!("symptom-{symptom}"), &[]);
            say("symptom", &[("symptom", symptom.into()), named(cause)])
        }
        Because::Code { code, cause } => say("code", &[("code", code.into()), named(cause)]),
        Because::Overdue { item: of, cause } => {
            say("overdue", &[("item", item(words, of).into()), named(cause)])
        }
        Because::Touched { item: of, days, cause } => {
            say("touched", &[("item", item(words, of).into()), ("days", (*days).into()), named(cause)])
        }
        Because::Before { cause } => say("before", &[named(cause)]),
        Because::Shares { word } => say("shares", &[("opening", words.say(word, &[]).into())]),
        Because::SecondLook => say("second-look", &[]),
    }
}

fn costs(words: &Words, costs: CheckCosts) -> String {
    let args = [
        ("order", Arg::from(costs.order.to_string())),
        ("ratio", costs.by_ratio.to_string().into()),
        ("left", percent(costs.left).into()),
    ];
    words.say("cli-trouble-costs", &args)
}

pub(super) fn say_cause(words: &Words, cause: &str) -> String {
    words.say(&format!("cause-{cause}"), &[])
}

fn percent(per_mille: u16) -> String {
    format!("{}.{} %", per_mille / 10, per_mille % 10)
}

/// The symptoms that a car can show, each behind its key.
pub fn symptoms(words: &Words, view: &TroubleView) -> Vec<String> {
    let line = |symptom: &SymptomLine| {
        format!("{:<28} {}", symptom.key, words.say(&format!("symptom-{}", symptom.key), &[]))
    };
    view.symptoms.iter().map(line).collect()
}

#[cfg(test)]
mod tests {
    use door::{FindsView, ItemView};

    use super::*;

    #[test]
    fn a_suspect_tells_what_mends_it() {
        let words = Words::load(words::ENGLISH);
        let said = |mend: MendView| {
            let suspect = SuspectView { cause: "plugs-worn".to_owned(), chance: 125, before: false, mend };
            super::suspect(&words, &suspect)
        };
        let plugs = ItemView::Own { name: "New plugs".to_owned() };
        assert!(said(MendView::Items { items: vec![plugs] }).ends_with(": mended by New plugs"));
        assert!(said(MendView::Workshop).contains("12.5 %"));
        assert!(said(MendView::Workshop).ends_with(": a workshop mends it"));
    }

    #[test]
    fn a_check_tells_who_makes_it_what_can_hurt_with_what_and_how() {
        let row = CheckRow {
            check: "look-at-pads".to_owned(),
            chance: 500,
            minutes: 30,
            cost: 45.0,
            costs_money: false,
            workshop: true,
            tools: vec![NeededTool { tool: "jack-and-stands".to_owned(), lacking: true }],
            opens: Vec::new(),
            cautions: vec!["springs".to_owned()],
            finds: vec![FindsView { cause: "pads-worn".to_owned(), chance: 500 }],
            look: 1,
            why: vec![Because::SecondLook],
        };
        let words = Words::load(words::ENGLISH);
        let told = check(&words, &row);
        assert!(told[0].contains("about 45 min of your time"), "{}", told[0]);
        let under = ["workshop", "Take care: ", "(not at hand)", "Measure the thinnest pad"];
        assert_eq!(told.len(), 1 + under.len());
        for (line, named) in told[1..].iter().zip(under) {
            assert!(line.starts_with("    ") && line.contains(named), "{line}");
        }
    }
}
