//! A visit as typed.

use book::content::{By, FoundContent, PartContent, VisitContent};
use rules::RulesError;
use rules::upkeep::{Catalogue, Finding, Gauge, ItemRef, Milli};
use units::{Day, DistanceUnit, Measure, Quantity, SubjectId};

use super::{LONGEST_NAME, MOST_ROWS, item, line, money, note, past_day, reading_text};
use crate::{FoundForm, PartForm, Refusal, VisitForm};

/// A visit with its parts and papers.
pub(crate) fn visit(
    form: &VisitForm,
    catalogue: &Catalogue,
    unit: DistanceUnit,
    today: Day,
) -> Result<VisitContent, Refusal> {
    let items = items(form, catalogue)?;
    let reading = Some(form.reading.trim()).filter(|text| !text.is_empty());
    Ok(VisitContent {
        day: past_day(&form.day, today, "day")?,
        shown: reading.map(|text| reading_text(text, unit, "reading")).transpose()?,
        by: match line(&form.workshop, "workshop")? {
            workshop if workshop.is_empty() => By::Owner,
            workshop => By::Workshop(workshop),
        },
        parts: parts(&form.parts, &form.currency, catalogue, &items)?,
        items,
        cost: money(&form.cost, &form.currency, "cost")?,
        note: note(&form.note, "note")?,
        papers: papers(&form.papers)?,
        found: found(form, catalogue)?,
    })
}

pub(super) fn too_many(field: &str) -> Refusal {
    Refusal::new("too-many").with("most", MOST_ROWS).at(field)
}

/// What was done: something, unless something was found, and nothing twice.
fn items(form: &VisitForm, catalogue: &Catalogue) -> Result<Vec<ItemRef>, Refusal> {
    if form.items.is_empty() && form.found.is_empty() {
        return Err(Refusal::new("items-missing").at("items"));
    }
    if form.items.len() > MOST_ROWS {
        return Err(too_many("items"));
    }
    let mut items = Vec::new();
    for (row, typed) in form.items.iter().enumerate() {
        let item = item(typed, catalogue).map_err(|refusal| refusal.at(&format!("items.{row}")))?;
        if !items.contains(&item) {
            items.push(item);
        }
    }
    Ok(items)
}

/// The parts of a line; in a visit each may serve one of its items.
pub(super) fn parts(
    typed: &[PartForm],
    currency: &str,
    catalogue: &Catalogue,
    items: &[ItemRef],
) -> Result<Vec<PartContent>, Refusal> {
    if typed.len() > MOST_ROWS {
        return Err(too_many("parts"));
    }
    let read = |(row, typed): (usize, &PartForm)| {
        part(typed, currency, catalogue, items).map_err(|refusal| match refusal.field.as_deref() {
            Some("currency") => refusal,
            _ => refusal.within(&format!("parts.{row}")),
        })
    };
    typed.iter().enumerate().map(read).collect()
}

fn part(
    form: &PartForm,
    currency: &str,
    catalogue: &Catalogue,
    items: &[ItemRef],
) -> Result<PartContent, Refusal> {
    let name = line(&form.name, "name")?;
    let number = line(&form.number, "number")?;
    if name.is_empty() && number.is_empty() {
        return Err(Refusal::new("part-empty").with("most", LONGEST_NAME).at("name"));
    }
    let served = form.item.as_ref().map(|typed| item(typed, catalogue)).transpose();
    let served = served.map_err(|refusal| refusal.at("item"))?;
    // In a visit for one thing there is no doubt what its parts were for.
    let only = Some(items).filter(|items| items.len() == 1).map(|items| items[0].clone());
    let item = served.or(only);
    Ok(PartContent {
        name,
        maker: line(&form.maker, "maker")?,
        number,
        quantity: quantity(form)?,
        price: money(&form.price, currency, "price")?,
        item: item.clone(),
        kind: kind(&form.kind, item.as_ref(), catalogue)?,
    })
}

/// The kind of a part, which has to be one that its item tells apart.
fn kind(text: &str, item: Option<&ItemRef>, catalogue: &Catalogue) -> Result<Option<String>, Refusal> {
    let key = text.trim();
    if key.is_empty() {
        return Ok(None);
    }
    let row = item.and_then(|item| catalogue.row(item));
    let kind = row.and_then(|row| row.kind(key)).map(|kind| kind.key.clone());
    kind.map(Some).ok_or_else(|| Refusal::new("kind").with("text", key).at("kind"))
}

fn found(form: &VisitForm, catalogue: &Catalogue) -> Result<Vec<FoundContent>, Refusal> {
    if form.found.len() > MOST_ROWS {
        return Err(too_many("found"));
    }
    let read = |(row, typed): (usize, &FoundForm)| {
        one_found(typed, catalogue).map_err(|refusal| refusal.within(&format!("found.{row}")))
    };
    form.found.iter().enumerate().map(read).collect()
}

fn one_found(form: &FoundForm, catalogue: &Catalogue) -> Result<FoundContent, Refusal> {
    let item = item(&form.item, catalogue).map_err(|refusal| refusal.at("item"))?;
    let finding = Finding::from_key(&form.finding)
        .ok_or_else(|| Refusal::new("finding").with("text", &form.finding).at("finding"))?;
    let typed = Some(form.value.trim()).filter(|text| !text.is_empty());
    let gauge = catalogue.row(&item).and_then(|row| row.gauge);
    if typed.is_some() && gauge.is_none() {
        return Err(Refusal::new("not-measured").at("value"));
    }
    let value: Option<Milli> =
        typed.map(str::parse).transpose().map_err(|error: RulesError| Refusal::from(error).at("value"))?;
    if let Some((value, gauge)) = value.zip(gauge) {
        in_range(value, gauge).map_err(|refusal| refusal.at("value"))?;
    }
    Ok(FoundContent { item, finding, value })
}

/// Refuses what no gauge shows.
fn in_range(value: Milli, gauge: Gauge) -> Result<(), Refusal> {
    let (least, most) = gauge.what.range();
    if (least..=most).contains(&value) {
        return Ok(());
    }
    let refusal = Refusal::new("measurement-range").with("value", value).with("unit", gauge.what.unit());
    Err(refusal.with("least", least).with("most", most))
}

fn quantity(form: &PartForm) -> Result<Quantity, Refusal> {
    let measure = match form.measure.as_str() {
        "piece" | "" => Measure::Piece,
        "litre" => Measure::Litre,
        "set" => Measure::Set,
        "kilogram" => Measure::Kilogram,
        "metre" => Measure::Metre,
        other => return Err(Refusal::new("measure").with("text", other).at("measure")),
    };
    let text = if form.quantity.trim().is_empty() { "1" } else { &form.quantity };
    Quantity::parse(text, measure).map_err(|error| Refusal::from(error).at("quantity"))
}

/// The papers that belong to a line, each once.
pub(super) fn papers(ids: &[String]) -> Result<Vec<SubjectId>, Refusal> {
    if ids.len() > MOST_ROWS {
        return Err(too_many("papers"));
    }
    let mut papers = Vec::new();
    for id in ids {
        let paper = id.parse().map_err(|error| Refusal::from(error).at("papers"))?;
        if !papers.contains(&paper) {
            papers.push(paper);
        }
    }
    Ok(papers)
}
