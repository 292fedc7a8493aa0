//! Items and intervals as typed.

use rules::upkeep::{
    Catalogue, Interval, ItemRef, OwnName, Pin, PlanChange, PrintedDistance, Schedule, Setting, Stakes,
};
use units::{Day, HalfMonths};

use super::{day_ahead, unit};
use crate::{IntervalForm, ItemForm, PlanForm, Refusal};

/// An item of the catalogue, or one of the owner's own.
pub(crate) fn item(form: &ItemForm, catalogue: &Catalogue) -> Result<ItemRef, Refusal> {
    match form {
        ItemForm::Catalogue(number) => match catalogue.item(*number) {
            Some(item) => Ok(ItemRef::Catalogue(item.number)),
            None => Err(Refusal::new("item-unknown").with("number", number)),
        },
        ItemForm::Own(name) => Ok(ItemRef::Own(OwnName::parse(name)?)),
    }
}

/// What the owner settles for an item.
pub(crate) fn plan(
    form: &ItemForm,
    change: &PlanForm,
    catalogue: &Catalogue,
    today: Day,
) -> Result<PlanChange, Refusal> {
    let item = item(form, catalogue).map_err(|refusal| refusal.at("item"))?;
    let setting = match change {
        PlanForm::Off => Setting::Off,
        PlanForm::Catalogue => Setting::Catalogue,
        PlanForm::AnyDay => Setting::Pinned(None),
        PlanForm::Day { day } => {
            let day = day_ahead(day, today, "change.day")?;
            Setting::Pinned(Some(Pin { day, set: today }))
        }
        PlanForm::Handbook { then, first, stakes } => {
            let schedule = schedule(then, first.as_ref())?;
            match stakes {
                Some(key) => Setting::Own(schedule, self::stakes(key, &item)?),
                None => Setting::Interval(schedule),
            }
        }
    };
    Ok(PlanChange { item, setting })
}

fn schedule(then: &IntervalForm, first: Option<&IntervalForm>) -> Result<Schedule, Refusal> {
    let first = first.map(interval).transpose();
    Ok(Schedule {
        every: interval(then).map_err(|refusal| refusal.within("change.then"))?,
        first: first.map_err(|refusal| refusal.within("change.first"))?,
    })
}

/// What ignoring an item of the owner's own costs; of a catalogue item the catalogue says it.
fn stakes(key: &str, item: &ItemRef) -> Result<Stakes, Refusal> {
    let own = Stakes::from_key(key).filter(|_| matches!(item, ItemRef::Own(_)));
    let known = || Stakes::ALL.map(Stakes::key).join(", ");
    own.ok_or_else(|| Refusal::new("stakes").with("known", known()).at("change.stakes"))
}

fn interval(form: &IntervalForm) -> Result<Interval, Refusal> {
    let distance = Some(form.distance.trim()).filter(|text| !text.is_empty());
    let distance = distance.map(|text| printed(text, &form.unit)).transpose()?;
    let months = Some(form.months.trim()).filter(|text| !text.is_empty());
    let months = months.map(half_months).transpose()?;
    Interval::new(distance, months).map_err(|error| Refusal::from(error).at("distance"))
}

fn printed(text: &str, in_unit: &str) -> Result<PrintedDistance, Refusal> {
    let refusal = || Refusal::new("interval-distance").with("text", text).at("distance");
    let digits: String = text.chars().filter(|c| !matches!(c, ' ' | '\u{a0}' | '\u{202f}' | '\'')).collect();
    let count = digits.parse().map_err(|_| refusal())?;
    PrintedDistance::new(count, unit(in_unit, "unit")?).map_err(|_| refusal())
}

/// Months with a half or without: `12`, `7.5`, `7,5`.
fn half_months(text: &str) -> Result<HalfMonths, Refusal> {
    let refusal = || Refusal::new("interval-months").with("text", text).at("months");
    let (whole, half) = match text.split_once(['.', ',']) {
        None | Some((_, "0")) => (text.split(['.', ',']).next().unwrap_or(text), 0),
        Some((whole, "5")) => (whole, 1),
        Some(_) => return Err(refusal()),
    };
    let months: u16 = whole.parse().map_err(|_| refusal())?;
    let halves = months.checked_mul(2).and_then(|halves| halves.checked_add(half)).ok_or_else(refusal)?;
    Some(HalfMonths(halves)).filter(|time| time.0 > 0 && *time <= Interval::LONGEST).ok_or_else(refusal)
}
