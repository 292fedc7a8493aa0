//! A trouble as typed. What it names must stand in the tables of the rules.

use book::content::{AnswerContent, EndContent, Said, ScanContent, TroubleContent};
use rules::trouble::Trouble;
use units::{Day, Distance, DistanceUnit};

use super::visit::too_many;
use super::{MOST_ROWS, note, past_day, reading_text};
use crate::{AnswerForm, AnswerKey, EndForm, HereForm, Refusal, ScanForm, TroubleForm};

/// The longest text of a scan tool that is kept, in characters.
const LONGEST_SCAN: usize = 8_000;

/// A trouble of which something is known.
pub(crate) fn trouble(form: &TroubleForm, unit: DistanceUnit, today: Day) -> Result<TroubleContent, Refusal> {
    let read = draft(form, unit, today)?;
    if read.words.is_empty() && read.symptoms.is_empty() && read.scans.is_empty() {
        return Err(Refusal::new("trouble-empty").at("words"));
    }
    Ok(read)
}

/// A trouble of which nothing need be known yet.
pub(crate) fn draft(form: &TroubleForm, unit: DistanceUnit, today: Day) -> Result<TroubleContent, Refusal> {
    let tables = Trouble::shipped()?;
    let symptom = |key: &str| tables.symptom(key).is_some();
    Ok(TroubleContent {
        day: past_day(&form.day, today, "day")?,
        shown: some_reading(&form.reading, unit)?,
        words: note(&form.words, "words")?,
        when: note(&form.when, "when")?,
        symptoms: keys(&form.symptoms, symptom, "symptom-unknown", "symptoms")?,
        absent: keys(&form.absent, symptom, "symptom-unknown", "absent")?,
        scans: rows(&form.scans, "scans", |form| scan(form, unit, today))?,
        answers: rows(&form.answers, "answers", |form| answer(form, tables))?,
        asked: note(&form.asked, "asked")?,
        end: form.end.as_ref().map(|form| end(form, tables, today)).transpose()?,
    })
}

/// Refuses tools that no check needs.
pub(crate) fn tools(form: &HereForm) -> Result<(), Refusal> {
    let tables = Trouble::shipped()?;
    let tool = |key: &str| tables.tools().iter().any(|tool| tool.key == key);
    keys(&form.owned, tool, "tool-unknown", "owned")?;
    keys(&form.lacking, tool, "tool-unknown", "lacking")?;
    Ok(())
}

fn some_reading(text: &str, unit: DistanceUnit) -> Result<Option<Distance>, Refusal> {
    let typed = Some(text.trim()).filter(|text| !text.is_empty());
    typed.map(|text| reading_text(text, unit, "reading")).transpose()
}

/// Keys that the tables know, each once.
fn keys(
    typed: &[String],
    known: impl Fn(&str) -> bool,
    refusal: &str,
    field: &str,
) -> Result<Vec<String>, Refusal> {
    if typed.len() > MOST_ROWS {
        return Err(too_many(field));
    }
    let mut keys: Vec<String> = Vec::new();
    for (row, key) in typed.iter().enumerate() {
        if !known(key) {
            return Err(unknown(refusal, key).at(&format!("{field}.{row}")));
        }
        if !keys.contains(key) {
            keys.push(key.clone());
        }
    }
    Ok(keys)
}

/// A key that is not in the tables; a sentence has room for the start of it.
pub(crate) fn unknown(refusal: &str, key: &str) -> Refusal {
    Refusal::new(refusal).with("text", key.chars().take(60).collect::<String>())
}

/// Every row of a list, read by `one`; a refusal names the row.
fn rows<T, R>(typed: &[T], field: &str, one: impl Fn(&T) -> Result<R, Refusal>) -> Result<Vec<R>, Refusal> {
    if typed.len() > MOST_ROWS {
        return Err(too_many(field));
    }
    let read =
        |(row, typed): (usize, &T)| one(typed).map_err(|refusal| refusal.within(&format!("{field}.{row}")));
    typed.iter().enumerate().map(read).collect()
}

fn scan(form: &ScanForm, unit: DistanceUnit, today: Day) -> Result<ScanContent, Refusal> {
    Ok(ScanContent {
        day: past_day(&form.day, today, "day")?,
        shown: some_reading(&form.reading, unit)?,
        text: scan_text(&form.text)?,
        cleared: form.cleared,
    })
}

/// What a scan tool sends may end its lines in any way, and hold signs that control a printer.
fn scan_text(text: &str) -> Result<String, Refusal> {
    let text = text.replace("\r\n", "\n").replace('\r', "\n");
    let text: String = text.trim().chars().filter(|c| !c.is_control() || matches!(c, '\n' | '\t')).collect();
    if text.chars().count() > LONGEST_SCAN {
        return Err(Refusal::new("text-too-long").with("most", LONGEST_SCAN).at("text"));
    }
    Ok(text)
}

fn answer(form: &AnswerForm, tables: &Trouble) -> Result<AnswerContent, Refusal> {
    if tables.check(&form.check).is_none() {
        return Err(unknown("check-unknown", &form.check).at("check"));
    }
    let said = match form.answer {
        AnswerKey::Found => Said::Found,
        AnswerKey::NotFound => Said::NotFound,
        AnswerKey::Skipped => Said::Skipped,
    };
    Ok(AnswerContent { check: form.check.clone(), said })
}

fn end(form: &EndForm, tables: &Trouble, today: Day) -> Result<EndContent, Refusal> {
    let cause = form.cause.trim();
    if !cause.is_empty() && tables.cause(cause).is_none() {
        return Err(unknown("cause-unknown", cause).at("end.cause"));
    }
    let visit = Some(form.visit.trim()).filter(|text| !text.is_empty());
    let visit = visit.map(str::parse).transpose();
    Ok(EndContent {
        day: past_day(&form.day, today, "end.day")?,
        visit: visit.map_err(|error: units::UnitError| Refusal::from(error).at("end.visit"))?,
        cause: cause.to_owned(),
    })
}
