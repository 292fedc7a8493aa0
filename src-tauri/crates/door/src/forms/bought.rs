//! What was bought, and notes on parts, as typed.

use book::content::{BoughtContent, Mark, NumberContent, PartNoteContent};
use rules::parts::PartNumber;
use rules::upkeep::Catalogue;
use units::Day;

use super::visit::{papers, parts, too_many};
use super::{MOST_ROWS, line, money, note, past_day};
use crate::{BoughtForm, NumberForm, PartNoteForm, Refusal};

/// What was bought, with its papers.
pub(crate) fn bought(form: &BoughtForm, catalogue: &Catalogue, today: Day) -> Result<BoughtContent, Refusal> {
    if form.parts.is_empty() {
        return Err(Refusal::new("parts-missing").at("parts"));
    }
    Ok(BoughtContent {
        day: past_day(&form.day, today, "day")?,
        shop: line(&form.shop, "shop")?,
        parts: parts(&form.parts, &form.currency, catalogue, &[])?,
        cost: money(&form.cost, &form.currency, "cost")?,
        note: note(&form.note, "note")?,
        papers: papers(&form.papers)?,
    })
}

/// A note on a part that has a number.
pub(crate) fn part_note(form: &PartNoteForm) -> Result<PartNoteContent, Refusal> {
    if form.same.len() > MOST_ROWS {
        return Err(too_many("same"));
    }
    let same = form.same.iter().enumerate();
    let same =
        same.map(|(row, other)| one_number(other).map_err(|refusal| refusal.within(&format!("same.{row}"))));
    Ok(PartNoteContent {
        number: number(&form.number, "number")?,
        maker: line(&form.maker, "maker")?,
        same: same.collect::<Result<_, _>>()?,
        mark: match form.mark.as_str() {
            "" => None,
            "wrong" => Some(Mark::Wrong),
            "superseded" => Some(Mark::Superseded),
            other => return Err(Refusal::new("mark").with("text", other).at("mark")),
        },
        instead: line(&form.instead, "instead")?,
        note: note(&form.note, "note")?,
    })
}

fn one_number(form: &NumberForm) -> Result<NumberContent, Refusal> {
    Ok(NumberContent { maker: line(&form.maker, "maker")?, number: number(&form.number, "number")? })
}

fn number(text: &str, field: &str) -> Result<String, Refusal> {
    let text = line(text, field)?;
    match PartNumber::new(&text) {
        Some(_) => Ok(text),
        None => Err(Refusal::new("part-number-missing").at(field)),
    }
}
