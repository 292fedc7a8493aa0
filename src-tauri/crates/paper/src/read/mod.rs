//! Making a receipt of the text on a photo: a pure function from rows of text to fields that are offered.
//!
//! Nothing here is believed silently. Every [`Field`] says how far it can be believed and where it stands, so that a
//! screen shows the crop beside it; [`Sure::Sure`] has to be earned by two things printed apart from each other that
//! agree, and sums that do not agree are offered as they are, with both figures.
//!
//! A receipt is read in passes over the same lines: [`page`] makes lines of the rows, [`labels`] finds the words of
//! the table in [`words`], [`figures`] the numbers; then each of the other files looks for its own field. It reads
//! English, German, French and Spanish, and what other languages print in the same way.
//!
//! # Bounds
//!
//! At most 2 000 rows, 1 000 letters of a row and 64 KiB of text are looked at; what lies beyond is as if it were not
//! there. No text makes it panic, and no text takes it longer than about a second.

mod dates;
mod days;
mod figures;
mod fold;
mod fuel;
mod items;
mod labels;
mod numbers;
mod odometer;
mod page;
mod place;
mod receipt;
mod shapes;
mod shop;
mod stamp;
mod sums;
mod totals;
mod words;
mod zone;

use units::{Currency, Money};

use crate::text::Text;

use page::Page;
use place::Place;
pub use receipt::{
    Check, CheckKind, Country, DayRead, Field, Fuel, FuelKind, Item, Known, KnownShop, PerVolume, Receipt,
    Sure, Tax,
};
use totals::Against;

/// Reads what a receipt says. What is not found is absent; nothing is made up.
pub fn read(text: &Text, known: &Known<'_>) -> Receipt {
    let page = Page::new(text);
    let (known_shop, shop) = shop::known(&page, known).unzip();
    let place = Place::of(&page, known, known_shop);
    let zone = zone::zone(&page);
    let drafts = items::drafts(&page, &zone);
    let (numbers, in_rows) = numbers::find(&page, &zone::goods(&page, &zone, &drafts), known);
    let mut receipt = Receipt {
        shop: shop.or_else(|| shop::printed(&page)),
        day: days::day(&page, known, &place),
        currency: place.currency,
        total: None,
        taxes: Vec::new(),
        items: Vec::new(),
        numbers,
        fuel: None,
        odometer: odometer::odometer(&page, known, &place),
        checks: Vec::new(),
    };
    if let Some(currency) = &place.currency {
        let goods = Goods { end: zone.end, drafts: &drafts, numbers: &in_rows };
        amounts(&page, known, &place, *currency, &goods, &mut receipt);
    }
    receipt
}

/// What was made out about goods before their amounts.
struct Goods<'a> {
    /// The row on which the sums begin.
    end: usize,
    drafts: &'a [items::Draft],
    numbers: &'a [numbers::OnLine],
}

/// Adds everything that is counted in money.
fn amounts(
    page: &Page,
    known: &Known<'_>,
    place: &Place,
    currency: Field<Currency>,
    goods: &Goods<'_>,
    receipt: &mut Receipt,
) {
    let sums = sums::Sums::of(page, goods.end);
    let positions = items::positions(page, goods.drafts);
    receipt.items = goods
        .drafts
        .iter()
        .filter_map(|draft| {
            let mut item = items::item(page, draft, positions, currency.value)?;
            item.number = numbers::of_rows(goods.numbers, &draft.rows);
            Some(item)
        })
        .collect();
    let (fuel, fuel_check) = fuel::fuel(page, known, place, &sums).unzip();
    let fuel_check = fuel_check.flatten();
    let confirmed = fuel_check.filter(|check| check.agrees).map(|check| totals::hundredths(check.printed));
    let against = Against::new(page, &sums, &receipt.items, confirmed);
    let total = against.total(&currency);
    let offered =
        total.map(|(total, overruled)| overruled.unwrap_or((totals::hundredths(total.value), total.area)));
    receipt.total = total.map(|(total, _)| doubted(total, fuel_check.as_ref()));
    receipt.checks = against.checks(offered, currency.value);
    receipt.checks.extend(fuel_check);
    receipt.taxes = sums.offered(page, currency.value);
    receipt.fuel = fuel;
    let added_up = receipt.checks.iter().any(|check| check.kind == CheckKind::Lines && check.agrees);
    for item in receipt.items.iter_mut().filter(|item| added_up && item.sure == Sure::Likely) {
        item.sure = Sure::Sure;
    }
}

/// A total against what volume and price come to: where they disagree, one of the three was misread, and a payment
/// that agrees does not say which. So it is believed by one step less.
fn doubted(total: Field<Money>, fuel: Option<&Check>) -> Field<Money> {
    let against = fuel.is_some_and(|check| !check.agrees && check.printed == total.value);
    let less = if total.sure == Sure::Sure { Sure::Likely } else { Sure::Doubtful };
    Field { sure: if against { less } else { total.sure }, ..total }
}

#[cfg(test)]
mod tests;
