//! Guides in words.

use door::{
    BoundsView, CautionView, GuideLine, GuideView, ItemView, KnownView, OriginView, TypicalView, ValueView,
};
use words::Words;

use super::item;

/// A guide in a list.
pub fn guide_line(words: &Words, guide: &GuideLine) -> String {
    let name = words.say(&format!("guide-{}", guide.key), &[]);
    let minutes = words.say("cli-guide-minutes", &[("minutes", u32::from(guide.minutes).into())]);
    format!("{:<28} {name}  {minutes}", guide.key)
}

/// A whole guide: what for, when not, cautions, steps with their values, what to look at, what is left over.
pub fn guide(words: &Words, view: &GuideView) -> Vec<String> {
    let key = &view.guide.key;
    let part = |part: &str, keys: &[String]| -> Vec<String> {
        keys.iter().map(|of| words.say(&format!("guide-{key}-{part}-{of}"), &[])).collect()
    };
    let named = |family: &str, keys: &[String]| -> Vec<String> {
        let names: Vec<_> = keys.iter().map(|of| words.say(&format!("{family}-{of}"), &[])).collect();
        if names.is_empty() { names } else { vec![names.join(", ")] }
    };
    let items = |items: &[ItemView]| -> Vec<String> {
        let said: Vec<_> = items.iter().map(|of| item(words, of)).collect();
        if said.is_empty() { said } else { vec![said.join(", ")] }
    };
    let cautions = view.cautions.iter().map(|caution| self::caution(words, caution));
    let parts = view.parts.iter().map(|part| format!("{} {} {}", part.maker, part.number, part.name));
    let parts = parts.map(|part| part.split_whitespace().collect::<Vec<_>>().join(" "));
    let sections = [
        ("cli-guide-not", part("not", &view.not)),
        ("cli-guide-cautions", cautions.collect()),
        ("cli-guide-tools", named("tool", &view.tools)),
        ("cli-guide-supplies", named("supply", &view.supplies)),
        ("cli-guide-parts", parts.collect()),
        ("cli-guide-steps", steps(words, view)),
        ("cli-guide-look", part("look", &view.look)),
        ("cli-guide-after", part("after", &view.after)),
        ("cli-guide-disposal", named("disposal", &view.disposal)),
        ("cli-guide-does", items(&view.guide.does)),
        ("cli-guide-then", named("guide", &view.then)),
    ];
    let mut lines = vec![guide_line(words, &view.guide), words.say(&format!("guide-{key}-what"), &[])];
    for (head, said) in sections {
        if !said.is_empty() {
            lines.extend([String::new(), words.say(head, &[])]);
            lines.extend(said);
        }
    }
    lines
}

/// A caution by its name, what it says, and who publishes it.
fn caution(words: &Words, caution: &CautionView) -> String {
    let sources: Vec<_> = caution.sources.iter().map(|source| origin(words, source)).collect();
    let name = words.say(&format!("caution-{}-name", caution.key), &[]);
    let said = words.say(&format!("caution-{}", caution.key), &[]);
    format!("{name}. {said} [{}]", sources.join("; "))
}

/// The steps, numbered, each with its values under it.
fn steps(words: &Words, view: &GuideView) -> Vec<String> {
    let mut lines = Vec::new();
    for (number, step) in (1..).zip(&view.steps) {
        let said = words.say(&format!("guide-{}-step-{}", view.guide.key, step.key), &[]);
        lines.push(format!("{number}. {said}"));
        let asked = |value: &&ValueView| step.values.contains(&value.key);
        lines.extend(
            view.values.iter().filter(asked).map(|value| format!("   {}", self::value(words, value))),
        );
    }
    lines
}

fn value(words: &Words, value: &ValueView) -> String {
    let name = words.say(&format!("value-{}", value.key), &[]);
    match &value.known {
        KnownView::Own { text, unit: Some(unit) } => format!("{name}: {text} {unit}"),
        KnownView::Own { text, unit: None } => format!("{name}: {text}"),
        KnownView::Handbook => words.say("cli-value-handbook", &[("name", name.into())]),
        KnownView::Typical { cases } => {
            let cases: Vec<_> = cases.iter().map(|case| typical(words, case)).collect();
            words.say("cli-value-typical", &[("name", name.into()), ("cases", cases.join("; ").into())])
        }
    }
}

fn typical(words: &Words, case: &TypicalView) -> String {
    let when = words.say(&format!("typical-{}", case.case), &[]);
    let metric = case.newton_metres.as_ref().map(|torque| format!(" ({} N·m)", bounds(torque)));
    let source = origin(words, &case.source);
    format!("{when} {} {}{} [{source}]", bounds(&case.bounds), case.unit, metric.unwrap_or_default())
}

fn origin(words: &Words, origin: &OriginView) -> String {
    words.say(&format!("cli-source-{}", origin.source), &[("name", (&origin.name).into())])
}

fn bounds(bounds: &BoundsView) -> String {
    match &bounds.high {
        None => format!("≥ {}", bounds.low),
        Some(high) if *high == bounds.low => high.clone(),
        Some(high) => format!("{}–{high}", bounds.low),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_has_one_unit_the_owners_or_the_tables() {
        let words = Words::load(words::ENGLISH);
        let said = |text: &str, unit: Option<&str>| {
            let known = KnownView::Own { text: text.to_owned(), unit: unit.map(str::to_owned) };
            let value = ValueView { key: "wheel-torque".to_owned(), unit: Some("N·m".to_owned()), known };
            super::value(&words, &value)
        };
        assert!(said("80 lbf·ft", None).ends_with(": 80 lbf·ft"));
        assert!(said("110", Some("N·m")).ends_with(": 110 N·m"));
    }

    #[test]
    fn a_caution_stands_behind_its_name_and_before_its_publisher() {
        let source = OriginView { source: "regulation".to_owned(), name: "10 CFR 1".to_owned() };
        let caution = CautionView { key: "battery-off".to_owned(), one_by_one: true, sources: vec![source] };
        let words = Words::load(words::ENGLISH);
        let said = super::caution(&words, &caution);
        assert!(said.starts_with(&words.say("caution-battery-off-name", &[])), "{said}");
        assert!(said.ends_with(']') && said.contains("10 CFR 1"), "{said}");
    }
}
