//! Codes, troubles and guides in words.

use door::{
    Because, BoundsView, CheckCosts, CheckRow, CodeView, CodesView, GuideLine, GuideView, KnownView,
    NoteView, OriginView, ReadinessView, SuspectView, TroubleView, TypicalView, ValueView,
};
use words::{Arg, Words};

use super::item;

/// A suspect below this chance, in thousandths, is not told in words; JSON has them all.
const LEAST_TOLD: u16 = 10;

/// What a text says: its codes, its readiness, and what could not be read.
pub fn codes(words: &Words, view: &CodesView) -> Vec<String> {
    let codes = view.codes.iter().map(|code| self::code(words, code));
    let readiness = view.readiness.iter().map(|told| readiness_line(words, told));
    let frames = view.frames.iter().map(|frame| {
        let values: Vec<_> = frame.values.iter().map(|told| self::told(words, told)).collect();
        let code = frame.code.clone().unwrap_or_default();
        let args = [("code", Arg::from(code)), ("values", values.join(", ").into())];
        words.say("cli-code-frame", &args)
    });
    let live = view.live.iter().map(|told| self::told(words, told));
    let notes = view.notes.iter().map(|note| self::note(words, note));
    codes.chain(frames).chain(live).chain(readiness).chain(notes).collect()
}

/// One code: status, meaning, how soon it calls for somebody, and the causes at which it points.
fn code(words: &Words, code: &CodeView) -> String {
    let key = |family: &str, key: &str| words.say(&format!("code-{family}-{key}"), &[]);
    let meaning = match &code.meaning {
        Some(id) => words.say(id, &[]),
        None => format!("{}. {}", key("system", &code.system), words.say("cli-code-no-text", &[])),
    };
    let urgency = code.urgency.as_ref().map(|urgency| key("urgency", urgency));
    let causes: Vec<_> = code.causes.iter().map(|cause| say_cause(words, cause)).collect();
    let causes =
        (!causes.is_empty()).then(|| words.say("cli-code-causes", &[("causes", causes.join(", ").into())]));
    let failure = code.failure_type.as_ref().map(|byte| format!("-{byte}")).unwrap_or_default();
    let told = [Some(meaning), Some(key("origin", &code.origin)), urgency, causes];
    let told: Vec<_> = told.into_iter().flatten().collect();
    format!("{}{failure}  {}: {}", code.code, key("status", &code.status), told.join("; "))
}

fn told(words: &Words, told: &door::ToldView) -> String {
    format!("{} {} {}", words.say(&format!("code-value-{}", told.key), &[]), told.value, told.unit)
}

fn readiness_line(words: &Words, told: &ReadinessView) -> String {
    let open = told.monitors.iter().filter(|monitor| !monitor.finished);
    let open: Vec<_> = open.map(|monitor| words.say(&format!("code-monitor-{}", monitor.key), &[])).collect();
    if open.is_empty() {
        words.say("cli-code-ready", &[])
    } else {
        words.say("cli-code-not-ready", &[("monitors", open.join(", ").into())])
    }
}

fn note(words: &Words, note: &NoteView) -> String {
    let args: Vec<(&str, Arg<'_>)> =
        note.values.iter().map(|(name, value)| (name.as_str(), value.into())).collect();
    words.say(&format!("code-note-{}", note.key), &args)
}

/// A trouble: when to stop first, what it may be, and the checks in their order.
pub fn trouble(words: &Words, view: &TroubleView) -> Vec<String> {
    let stop = view.stop.iter().map(|stop| words.say(&format!("stop-{}", stop.danger), &[]));
    let suspects = view.suspects.iter().filter(|suspect| suspect.chance >= LEAST_TOLD);
    let suspects = suspects.map(|suspect| self::suspect(words, suspect));
    let other = words.say("cli-trouble-other", &[("chance", percent(view.other).into())]);
    let checks = view.checks.iter().map(|row| check(words, row));
    let scans = view.scans.iter().flat_map(|scan| codes(words, scan));
    let head = |id: &str| [String::new(), words.say(id, &[])];
    stop.chain(scans)
        .chain(head("cli-trouble-suspects"))
        .chain(suspects)
        .chain([other])
        .chain(head("cli-trouble-checks"))
        .chain(checks)
        .chain([costs(words, view.costs)])
        .collect()
}

fn suspect(words: &Words, suspect: &SuspectView) -> String {
    format!("{:>6}  {}", percent(suspect.chance), say_cause(words, &suspect.cause))
}

/// A check with its chance, its cost and why it stands there, and under it how it is made.
fn check(words: &Words, row: &CheckRow) -> String {
    let name = words.say(&format!("check-{}", row.check), &[]);
    let why: Vec<_> = row.why.iter().map(|why| because(words, why)).collect();
    let args = [
        ("chance", Arg::from(percent(row.chance))),
        ("minutes", row.cost.to_string().into()),
        ("why", why.join("; ").into()),
    ];
    format!("{name}  [{}]  {}", row.check, words.say("cli-trouble-check", &args))
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

fn say_cause(words: &Words, cause: &str) -> String {
    words.say(&format!("cause-{cause}"), &[])
}

fn percent(per_mille: u16) -> String {
    format!("{}.{} %", per_mille / 10, per_mille % 10)
}

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
    let cautions = view.cautions.iter().map(|caution| words.say(&format!("caution-{}", caution.key), &[]));
    let sections = [
        ("cli-guide-not", part("not", &view.not)),
        ("cli-guide-cautions", cautions.collect()),
        ("cli-guide-tools", named("tool", &view.tools)),
        ("cli-guide-supplies", named("supply", &view.supplies)),
        ("cli-guide-steps", steps(words, view)),
        ("cli-guide-look", part("look", &view.look)),
        ("cli-guide-after", part("after", &view.after)),
        ("cli-guide-disposal", named("disposal", &view.disposal)),
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
    let unit = value.unit.as_deref().unwrap_or_default();
    match &value.known {
        KnownView::Own { text } => format!("{name}: {text} {unit}").trim_end().to_owned(),
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
