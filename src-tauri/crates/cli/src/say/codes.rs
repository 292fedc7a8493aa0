//! Trouble codes in words.

use door::{CodeLife, CodeTurn, CodeView, CodesView, NoteView, ReadinessView, SeenAt};
use words::{Arg, Words};

use super::reading;
use super::trouble::say_cause;

/// What a text says: its codes, its readiness, and what could not be read.
pub fn codes(words: &Words, view: &CodesView) -> Vec<String> {
    let codes = view.codes.iter().flat_map(|code| self::code(words, code));
    let lacks = |status: &&String| view.codes.iter().all(|code| code.status != **status);
    let empty: Vec<_> = view.answered.iter().filter(lacks).map(|status| status_name(words, status)).collect();
    let empty =
        (!empty.is_empty()).then(|| words.say("cli-code-none", &[("lists", empty.join(", ").into())]));
    let readiness = view.readiness.iter().map(|told| readiness_line(words, told));
    let frames = view.frames.iter().map(|frame| {
        let values: Vec<_> = frame.values.iter().map(|told| self::told(words, told)).collect();
        let code = frame.code.clone().unwrap_or_default();
        let args = [("code", Arg::from(code)), ("values", values.join(", ").into())];
        words.say("cli-code-frame", &args)
    });
    let live = view.live.iter().map(|told| self::told(words, told));
    let notes = view.notes.iter().map(|note| self::note(words, note));
    codes.chain(empty).chain(frames).chain(live).chain(readiness).chain(notes).collect()
}

/// One code: status, meaning, how soon it calls for somebody, the causes at which it points, and under it its life in the
/// book of the car that was asked about.
fn code(words: &Words, code: &CodeView) -> Vec<String> {
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
    let area = code.area.as_ref().map(|area| words.say("codes-hint", &[("area", key("area", area).into())]));
    let told = [Some(meaning), Some(key("origin", &code.origin)), area, urgency, causes];
    let told: Vec<_> = told.into_iter().flatten().collect();
    let line = format!("{}{failure}  {}: {}", code.code, status_name(words, &code.status), told.join("; "));
    let under = code.life.iter().flat_map(|life| self::life(words, life));
    [line].into_iter().chain(under.map(|said| format!("    {said}"))).collect()
}

/// The life of a code: first and last seen, what became of it in between, how it stands, and what is to be said of that.
fn life(words: &Words, life: &CodeLife) -> Vec<String> {
    let (first, last) = (seen(words, &life.first), seen(words, &life.last));
    let seen_in = if life.times == 1 {
        words.say("codes-seen-once", &[("first", first.into())])
    } else {
        let args = [("first", Arg::from(first)), ("last", last.into()), ("times", life.times.into())];
        words.say("codes-seen", &args)
    };
    let turns = life.turns.iter().map(|turn| self::turn(words, turn));
    let standing = words.say(&format!("code-standing-{}", life.standing), &[]);
    let standing = match &life.since {
        None => standing,
        Some(since) => {
            let args = [("standing", Arg::from(standing)), ("since", seen(words, since).into())];
            words.say("codes-standing", &args)
        }
    };
    let warnings = life.warnings.iter().map(|warning| words.say(&format!("code-warning-{warning}"), &[]));
    [seen_in].into_iter().chain(turns).chain([standing]).chain(warnings).collect()
}

fn turn(words: &Words, turn: &CodeTurn) -> String {
    match turn {
        CodeTurn::Cleared { at } => words.say("cli-code-cleared", &[("at", seen(words, at).into())]),
        CodeTurn::Gone { at } => words.say("cli-code-gone", &[("at", seen(words, at).into())]),
        CodeTurn::Back(back) => {
            let distance = back.after.distance.map_or_else(|| "unknown".to_owned(), reading);
            let args = [
                ("cleared", Arg::from(if back.was_cleared { "yes" } else { "no" })),
                ("left", seen(words, &back.left).into()),
                ("back", seen(words, &back.back).into()),
                ("distance", distance.into()),
            ];
            words.say("codes-back", &args)
        }
    }
}

fn seen(words: &Words, at: &SeenAt) -> String {
    match at.reading {
        None => at.day.clone(),
        Some(shown) => words.say("seen-at", &[("day", (&at.day).into()), ("reading", reading(shown).into())]),
    }
}

fn status_name(words: &Words, status: &str) -> String {
    words.say(&format!("code-status-{status}"), &[])
}

fn told(words: &Words, told: &door::ToldView) -> String {
    format!("{} {} {}", words.say(&format!("code-value-{}", told.key), &[]), told.value, told.unit)
}

fn readiness_line(words: &Words, told: &ReadinessView) -> String {
    let lamp = if told.lamp { "yes" } else { "no" };
    let lamp = words.say("codes-lamp", &[("lamp", lamp.into()), ("count", u32::from(told.codes).into())]);
    let open = told.monitors.iter().filter(|monitor| !monitor.finished);
    let open: Vec<_> = open.map(|monitor| words.say(&format!("code-monitor-{}", monitor.key), &[])).collect();
    if open.is_empty() {
        return format!("{lamp} {}", words.say("cli-code-ready", &[]));
    }
    let tests = words.say("cli-code-not-ready", &[("monitors", open.join(", ").into())]);
    let allowed = told.allowed.map(|count| words.say("code-tests-allowed", &[("count", count.into())]));
    [Some(lamp), Some(tests), allowed].into_iter().flatten().collect::<Vec<_>>().join(" ")
}

fn note(words: &Words, note: &NoteView) -> String {
    let args: Vec<(&str, Arg<'_>)> =
        note.values.iter().map(|(name, value)| (name.as_str(), value.into())).collect();
    words.say(&format!("code-note-{}", note.key), &args)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use door::{CodeReturn, UsedView};

    use super::*;

    fn at(day: &str) -> SeenAt {
        SeenAt { day: day.to_owned(), reading: None }
    }

    #[test]
    fn an_empty_list_is_told_by_its_name() {
        let told = codes(&Words::load(words::ENGLISH), &door::read_codes("4300 4700").unwrap());
        assert_eq!(told, ["The car reports no codes in these lists: Confirmed, Pending."]);
    }

    #[test]
    fn a_life_tells_every_turn_in_its_order() {
        let back = CodeReturn {
            left: at("2026-02-01"),
            was_cleared: false,
            back: at("2026-03-01"),
            after: UsedView { distance: None, days: 28 },
        };
        let life = CodeLife {
            first: at("2026-01-05"),
            last: at("2026-03-01"),
            times: 2,
            cleared: Some(at("2026-03-02")),
            returns: vec![back.clone()],
            turns: vec![
                CodeTurn::Gone { at: at("2026-02-01") },
                CodeTurn::Back(back),
                CodeTurn::Cleared { at: at("2026-03-02") },
            ],
            standing: "cleared".to_owned(),
            since: Some(at("2026-03-02")),
            warnings: vec!["not-mended".to_owned()],
        };
        let told = super::life(&Words::load(words::ENGLISH), &life);
        let named = ["First seen", "Gone on 2026-02-01", "back on 2026-03-01", "Cleared on 2026-03-02"];
        for (line, named) in told.iter().zip(named) {
            assert!(line.contains(named), "{line}");
        }
        assert_eq!(told.len(), 6, "with how it stands and what is to be said of that: {told:?}");
    }

    #[test]
    fn readiness_tells_the_lamp_the_count_and_what_an_inspection_lets_pass() {
        // SAE J1979, service 01 PID 01: lamp on, one code, the vapour system not finished.
        let view = door::read_codes("41 01 81 07 65 04").unwrap();
        let told = ReadinessView { allowed: Some(1), ..view.readiness[0].clone() };
        let said = readiness_line(&Words::load(words::ENGLISH), &told);
        for named in ["lamp is on", "one stored code", "vapour", "one unfinished test of a car"] {
            assert!(said.contains(named), "{said}");
        }
    }
}
