//! Which rows of a receipt are about goods: those between the heads of the columns and the first sum.

use std::ops::Range;

use super::items::Draft;
use super::page::{Line, Page};
use super::sums::is_tax_row;
use super::words::Role;

/// The rows on which goods stand.
pub(super) fn zone(page: &Page) -> Range<usize> {
    let closing = |index: &usize| closes(page, *index) && !fuel_alone(page, *index);
    let end = (0..page.lines.len()).find(closing).unwrap_or(page.lines.len());
    let head = (0..end).rev().find(|index| page.lines.get(*index).is_some_and(is_heading));
    head.map_or(0, |head| head + 1)..end
}

/// Whether the first sum stands on this row.
fn closes(page: &Page, index: usize) -> bool {
    let Some(line) = page.line(index) else { return false };
    let next = page.line(index + 1);
    let priced = line.amounts().next().is_some()
        || (line.figures.is_empty()
            && next.is_some_and(|next| next.describes() == 0 && next.amounts().count() == 1));
    let alone = [Role::Sum, Role::Net, Role::Paid].into_iter().any(|role| line.says_only(role));
    let tax = line.labels.has(Role::Tax) && line.labels.strange <= 6 && !line.labels.has(Role::TaxNumber);
    let tax = tax || is_tax_row(line);
    let named = line.labels.has(Role::Total) || line.labels.has(Role::Subtotal) || alone || tax;
    priced && named && !is_heading(line)
}

/// Whether the sum on this row is only that of the fuel above it: what else was bought follows, and a larger sum.
fn fuel_alone(page: &Page, index: usize) -> bool {
    let amount = |line: &Line| line.amounts().next_back().map(|figure| figure.digits);
    let sum = |line: &Line| {
        let total = [Role::Total, Role::Sum, Role::Subtotal].into_iter().any(|role| line.labels.has(role));
        total && !is_heading(line)
    };
    let fuel = |line: &Line| line.labels.has(Role::UnitPrice) || line.labels.has(Role::Volume);
    let above = page.lines.get(index.saturating_sub(2)..index).unwrap_or_default();
    let Some(cents) = page.line(index).filter(|line| sum(line)).and_then(amount) else { return false };
    let below = page.lines.get(index + 1..).unwrap_or_default();
    let end = below.iter().position(|line| sum(line) && amount(line).is_some_and(|other| other > cents));
    let goods = |line: &Line| matches!(kind(line), Kind::Priced) && !line.labels.has(Role::Tax);
    above.iter().any(fuel) && end.is_some_and(|end| below[..end].iter().any(goods))
}

/// Whether the row is the head of columns: at least two names of columns, and no amount.
pub(super) fn is_heading(line: &Line) -> bool {
    let column = |role: Role| {
        matches!(
            role,
            Role::Heading
                | Role::Sum
                | Role::Part
                | Role::UnitPrice
                | Role::Volume
                | Role::Tax
                | Role::Net
                | Role::Discount
        )
    };
    let columns = line.labels.all.iter().filter(|label| column(label.role)).count();
    let heads = line.labels.all.iter().filter(|label| matches!(label.role, Role::Heading)).count();
    columns >= 2 && heads >= 1 && line.amounts().next().is_none() && line.labels.strange <= 12
}

/// The rows on which a number of a part needs no label: from the first thing bought, with a row above it that holds a
/// number and little else, to the first sum; under the heads of columns all of them.
pub(super) fn goods(page: &Page, zone: &Range<usize>, drafts: &[Draft]) -> Range<usize> {
    let headed = zone.start.checked_sub(1).and_then(|head| page.line(head)).is_some_and(is_heading);
    let first = drafts.first().and_then(|draft| draft.rows.first()).copied().unwrap_or(zone.end);
    let bare = |line: &Line| is_number_row(line) || (line.words.len() <= 3 && line.labels.all.is_empty());
    let above =
        first.checked_sub(1).filter(|above| *above >= zone.start && page.line(*above).is_some_and(bare));
    if headed { zone.clone() } else { above.unwrap_or(first)..zone.end }
}

/// Whether a row holds the number of a part and nothing else: behind a label, or in groups with letters among them.
pub(super) fn is_number_row(line: &Line) -> bool {
    let both = [char::is_alphabetic as fn(char) -> bool, char::is_numeric];
    let mixed = both.iter().all(|is| line.chars.iter().any(|c| is(*c)));
    let labelled = line.labels.has(Role::Part) && mixed;
    let quiet = line.labels.all.iter().all(|label| label.role == Role::Filler);
    let wordless = line.describes() <= 6 && line.chars.iter().all(|c| !c.is_lowercase() || c.is_numeric());
    line.amounts().next().is_none()
        && (labelled || (quiet && mixed && wordless && line.words.len() <= 6 && line.figures.len() <= 6))
}

/// What a row in the zone is.
pub(super) enum Kind {
    /// Nothing about goods.
    Aside,
    /// How much fuel, or what it costs: it stands between a product and its price.
    Between,
    /// A description, or a number.
    Text,
    /// Figures without a description.
    Figures,
    /// A description and a price.
    Priced,
}

pub(super) fn kind(line: &Line) -> Kind {
    let aside = [
        Role::TaxNumber,
        Role::SaleDay,
        Role::OtherDay,
        Role::Saved,
        Role::Count,
        Role::Odometer,
        Role::NextReading,
    ];
    let quiet = [Role::OtherNumber, Role::Pump, Role::Change, Role::Title];
    let priced = line.amounts().next().is_some();
    let has = |roles: &[Role]| roles.iter().any(|role| line.labels.has(*role));
    let fuel = has(&[Role::Petrol, Role::Diesel, Role::Ethanol, Role::Lpg, Role::NaturalGas]);
    let described = line.describes() >= 3 || fuel || has(&[Role::Discount, Role::Grade]);
    let numbered = line.labels.has(Role::Part);
    let amount_of_fuel =
        has(&[Role::Volume, Role::UnitPrice]) || line.figures.iter().any(|figure| figure.places == 3);
    if is_heading(line) || has(&aside) || (has(&quiet) && !(fuel || (priced && line.describes() >= 6))) {
        return Kind::Aside;
    }
    if amount_of_fuel && !described && !numbered {
        return Kind::Between;
    }
    match (described || numbered, priced) {
        (true, true) => Kind::Priced,
        (false, true) => Kind::Figures,
        (false, false) if line.figures.is_empty() => Kind::Aside,
        (_, false) => Kind::Text,
    }
}
