//! The fill on a pump receipt: volume, price of a litre or gallon, and what they come to.

use std::ops::Range;

use units::{Currency, Money, Volume, VolumeUnit};

use crate::text::Area;

use super::figures::Figure;
use super::fold::plain;
use super::page::{Line, Page};
use super::place::Place;
use super::receipt::{Check, CheckKind, Country, Field, Fuel, FuelKind, Known, PerVolume, Sure, money};
use super::sums::Sums;
use super::words::{GALLONS, LITRES, Role};

/// Figures of a kind beyond this many are not tried.
const MOST: usize = 30;

/// A number with what speaks for it.
struct Candidate<'a> {
    line: &'a Line,
    at: &'a Range<usize>,
    /// Thousandths for a volume or a price, hundredths for an amount.
    number: i64,
    places: u32,
    labelled: bool,
    mended: bool,
}

/// Volume, price and amount, and how they stand to each other.
struct Fill<'a> {
    volume: Option<&'a Candidate<'a>>,
    price: Option<&'a Candidate<'a>>,
    total: Option<&'a Candidate<'a>>,
    verdict: Verdict,
}

/// How volume, price and amount stand to each other.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Verdict {
    /// The product is the amount, and a label, a unit or the size says which figure is the volume.
    Agree,
    /// The product is the amount, but it is the same the other way round, or a count of things may be the volume.
    AgreeAsTaken,
    /// The product is another amount: one of the three was misread.
    Differ,
    /// One of the three was not found.
    Open,
}

impl Verdict {
    fn agrees(self) -> bool {
        matches!(self, Verdict::Agree | Verdict::AgreeAsTaken)
    }
}

/// From this volume on, in thousandths, a figure is no price of a litre, and nobody counts as many things.
const SURELY_VOLUME: i64 = 20_000;

/// The fill, if the receipt is one of a pump, and the check of its figures.
pub(super) fn fuel(
    page: &Page,
    known: &Known<'_>,
    place: &Place,
    sums: &Sums,
) -> Option<(Fuel, Option<Check>)> {
    let currency = place.currency?.value;
    let product = product(page);
    let pump = page.lines.iter().any(|line| line.labels.has(Role::Pump) && line.labels.plain == 0);
    let (volumes, prices) = (volumes(page), prices(page));
    // Pumps print three decimals, or tenths of pence; the price of a litre of oil on a receipt of parts has two.
    let fine = |price: &Candidate<'_>| price.places != 2;
    let labelled = volumes.iter().any(|v| v.labelled) && prices.iter().any(|p| p.labelled && fine(p));
    let named = product.is_some() || pump;
    // Where no price was read, only a pump that names its product says that a volume was filled in.
    let priceless = prices.is_empty() && product.is_some() && pump && volumes.iter().any(|v| v.labelled);
    if !(labelled || priceless || (named && !prices.is_empty())) {
        return None;
    }
    let (totals, off) = (totals(page), taken_off(sums));
    let by_labels = || {
        let fill = by_labels(&volumes, &prices, &totals, sums);
        fill.filter(|_| priceless || prices.iter().any(fine))
    };
    let fill = agreeing(&volumes, &prices, &totals, off).or_else(by_labels)?;
    let unit = unit(page, fill.volume, known, place);
    let check = check(&fill, currency);
    Some((offered(&fill, unit, currency, product), check))
}

/// What was filled in, and its kind: the first product of a pump that is named beside no other word of the trade.
fn product(page: &Page) -> Option<(Field<FuelKind>, Field<String>)> {
    page.lines.iter().find_map(|line| {
        if line.labels.plain > 0 || line.labels.strange > 12 {
            return None;
        }
        let (label, kind) =
            line.labels.all.iter().find_map(|label| fuel_kind(label.role).map(|kind| (label, kind)))?;
        let area = line.area(&label.at);
        let sure = if line.letters(&label.at) >= 0.8 { Sure::Likely } else { Sure::Doubtful };
        Some((Field { value: kind, sure, area }, Field { value: line.text(label.at.clone()), sure, area }))
    })
}

fn fuel_kind(role: Role) -> Option<FuelKind> {
    match role {
        Role::Petrol => Some(FuelKind::Petrol),
        Role::Diesel => Some(FuelKind::Diesel),
        Role::Ethanol => Some(FuelKind::Ethanol),
        Role::Lpg => Some(FuelKind::Lpg),
        Role::NaturalGas => Some(FuelKind::NaturalGas),
        _ => None,
    }
}

fn figures(page: &Page) -> impl Iterator<Item = (&Line, &Figure)> {
    page.lines.iter().flat_map(|line| line.figures.iter().map(move |figure| (line, figure)))
}

/// All figures, each with what the head of its column announces: the rows above that have no figures of their own.
fn headed(page: &Page) -> impl Iterator<Item = (&Line, &Figure, Option<Role>)> {
    page.lines.iter().enumerate().flat_map(move |(index, line)| {
        let above = page.lines.get(..index).unwrap_or_default().iter().rev().take(2);
        let heads: Vec<&Line> = above.take_while(|above| above.figures.is_empty()).collect();
        line.figures.iter().map(move |figure| {
            let place = line.area(&figure.at);
            let role = heads.iter().find_map(|head| over(head, place));
            (line, figure, role)
        })
    })
}

/// The label of a head that stands over this place.
fn over(head: &Line, place: Area) -> Option<Role> {
    let above = |area: Area| area.left < place.left + place.width && place.left < area.left + area.width;
    let columns =
        |role| matches!(role, Role::Volume | Role::UnitPrice | Role::Total | Role::Sum | Role::Heading);
    let labels = head.labels.all.iter().filter(|label| columns(label.role));
    labels
        .map(|label| (label.role, head.area(&label.at)))
        .find(|(_, area)| above(*area))
        .map(|(role, _)| role)
}

/// Numbers with two or three decimals, those first that a unit or a label makes a volume.
fn volumes(page: &Page) -> Vec<Candidate<'_>> {
    let candidate = |(line, figure, head): (&'_ Line, &'_ Figure, Option<Role>)| {
        let unit = is_volume_unit(&figure.unit) && !per_volume(line, figure);
        let label = named(line, figure, Role::Volume) || head == Some(Role::Volume);
        let number = figure
            .thousandths()
            .filter(|number| (100..=1_000_000).contains(number) && !figure.is_percent())?;
        ((2..=3).contains(&figure.places) || (unit && figure.places == 1)).then_some((number, unit || label))
    };
    sorted(headed(page).filter_map(|(line, figure, head)| {
        let (number, labelled) = candidate((line, figure, head))?;
        Some(Candidate {
            line,
            at: &figure.at,
            number,
            places: figure.places,
            labelled,
            mended: figure.mended,
        })
    }))
}

/// Prices of a litre or a gallon: with three decimals, or with a label or a unit that says so; or in pence.
fn prices(page: &Page) -> Vec<Candidate<'_>> {
    sorted(headed(page).filter_map(|(line, figure, head)| {
        let labelled =
            per_volume(line, figure) || named(line, figure, Role::UnitPrice) || head == Some(Role::UnitPrice);
        let number = figure.thousandths().filter(|_| !figure.is_percent())?;
        // 145.9 behind a label is pence.
        let pence = labelled && (40_000..400_000).contains(&number) && figure.places >= 1;
        let number = if pence { number / 100 } else { number };
        let volume = is_volume_unit(&figure.unit) && !per_volume(line, figure);
        let fits = (200..20_000).contains(&number)
            && !volume
            && (figure.places == 3 || labelled && (figure.places == 2 || pence));
        fits.then_some(Candidate {
            line,
            at: &figure.at,
            number,
            places: figure.places,
            labelled,
            mended: figure.mended,
        })
    }))
}

fn totals(page: &Page) -> Vec<Candidate<'_>> {
    sorted(figures(page).filter(|(_, figure)| figure.is_amount() && figure.digits > 0).map(
        |(line, figure)| {
            let labelled = [Role::Total, Role::Sum, Role::Paid].iter().any(|role| line.labels.has(*role));
            Candidate {
                line,
                at: &figure.at,
                number: figure.digits,
                places: 2,
                labelled,
                mended: figure.mended,
            }
        },
    ))
}

fn sorted<'a>(candidates: impl Iterator<Item = Candidate<'a>>) -> Vec<Candidate<'a>> {
    let mut all: Vec<Candidate<'a>> = candidates.collect();
    all.sort_by_key(|candidate| !candidate.labelled);
    all.truncate(MOST);
    all
}

fn is_volume_unit(unit: &str) -> bool {
    LITRES.contains(&unit) || (GALLONS.contains(&unit))
}

/// `1,789 EUR/L`, `145.9 p/l`, `$3.459/GAL`: the number is the price of one.
fn per_volume(line: &Line, figure: &Figure) -> bool {
    let behind = plain(&line.text(figure.at.end..(figure.at.end + 14).min(line.chars.len())));
    let unit: String = behind.chars().filter(|c| *c != ' ').take_while(|c| !c.is_ascii_digit()).collect();
    ["/l", "/gal", "/g", "p/l", "ppl", "perl", "proliter", "jeliter", "jel", "eur/", "€/"]
        .iter()
        .any(|per| unit.contains(per))
}

/// Whether the nearest label to the left says this.
fn named(line: &Line, figure: &Figure, role: Role) -> bool {
    line.labels.before(figure.at.start).is_some_and(|label| label.role == role)
}

/// What was taken off the price of the fill, in hundredths.
fn taken_off(sums: &Sums) -> i64 {
    sums.with(Role::Discount).map(|named| named.cents.saturating_abs()).fold(0, i64::saturating_add)
}

/// Volume times price against an amount, in millionths: the amount is rounded, and so was the volume when it has two
/// decimals only. Of the product something may have been taken off.
fn fits(volume: &Candidate<'_>, price: &Candidate<'_>, total: &Candidate<'_>, taken_off: i64) -> bool {
    let rounding = if volume.places < 3 { i128::from(price.number) * 5 } else { 0 };
    let product = i128::from(volume.number) * i128::from(price.number);
    [0, taken_off].into_iter().any(|less| {
        let amount = (i128::from(total.number) + i128::from(less)) * 10_000;
        (product - amount).abs() <= 10_000 + rounding
    })
}

fn agreeing<'a>(
    volumes: &'a [Candidate<'a>],
    prices: &'a [Candidate<'a>],
    totals: &'a [Candidate<'a>],
    taken_off: i64,
) -> Option<Fill<'a>> {
    let same = |one: &Candidate<'_>, other: &Candidate<'_>| std::ptr::eq(one.at, other.at);
    let pairs = || prices.iter().flat_map(|price| volumes.iter().map(move |volume| (price, volume)));
    let agreeing = |(price, volume): (&'a Candidate<'a>, &'a Candidate<'a>)| {
        if same(price, volume) || volume.number < 500 {
            return None;
        }
        let total = totals.iter().find(|total| {
            !same(total, volume) && !same(total, price) && fits(volume, price, total, taken_off)
        })?;
        let told = volume.labelled || price.labelled || volume.number >= SURELY_VOLUME;
        let verdict = if told { Verdict::Agree } else { Verdict::AgreeAsTaken };
        Some(Fill { volume: Some(volume), price: Some(price), total: Some(total), verdict })
    };
    // The product is the same the other way round: what has a currency is no volume, and few fill in as little.
    let natural = |(price, volume): &(&Candidate<'_>, &Candidate<'_>)| {
        volume.number > price.number && !has_currency(volume.line, volume.at)
    };
    pairs().filter(natural).find_map(agreeing).or_else(|| pairs().find_map(agreeing))
}

/// Whether a sign or the letters of a currency stand right before a figure: `€2.069`, `EUR 2.069`.
fn has_currency(line: &Line, at: &Range<usize>) -> bool {
    let before = plain(&line.text(at.start.saturating_sub(4)..at.start));
    let before = before.trim_end();
    before.ends_with(['€', '$', '£'])
        || ["eur", "gbp", "usd", "chf"].iter().any(|code| before.ends_with(code))
}

/// What labels and units name, where the figures do not agree or one of them was not read.
fn by_labels<'a>(
    volumes: &'a [Candidate<'a>],
    prices: &'a [Candidate<'a>],
    totals: &'a [Candidate<'a>],
    sums: &Sums,
) -> Option<Fill<'a>> {
    let volume = volumes.iter().find(|volume| volume.labelled);
    let price =
        prices.iter().find(|price| price.labelled).or_else(|| prices.first().filter(|_| volume.is_some()));
    let named = sums.with(Role::Total).chain(sums.with(Role::Sum)).next().map(|named| &named.figure.at);
    let total = totals
        .iter()
        .find(|total| named.is_some_and(|at| std::ptr::eq(at, total.at) || at == total.at) && total.labelled);
    let all = volume.is_some() && price.is_some() && total.is_some();
    let verdict = if all { Verdict::Differ } else { Verdict::Open };
    (volume.is_some() || price.is_some()).then_some(Fill { volume, price, total, verdict })
}

/// The unit of the volume: as printed behind it or anywhere, and whose gallon by the country.
fn unit(page: &Page, volume: Option<&Candidate<'_>>, known: &Known<'_>, place: &Place) -> VolumeUnit {
    let behind = |candidate: &Candidate<'_>| {
        let figure = candidate.line.figures.iter().find(|figure| figure.at == *candidate.at)?;
        is_volume_unit(&figure.unit).then(|| GALLONS.contains(&figure.unit.as_str()))
    };
    let worded = |line: &Line| line.words.iter().any(|word| plain(&line.text(word.clone())).contains("gal"));
    let gallons = volume.and_then(behind).unwrap_or_else(|| page.lines.iter().any(worded));
    let country = place.country.or(known.country);
    let imperial = country.as_ref().map(Country::code) == Some("GB");
    match (gallons, imperial) {
        (false, _) => VolumeUnit::Litre,
        (true, true) => VolumeUnit::ImperialGallon,
        (true, false) => VolumeUnit::UsGallon,
    }
}

fn check(fill: &Fill<'_>, currency: Currency) -> Option<Check> {
    let (volume, price, total) = (fill.volume?, fill.price?, fill.total?);
    // Half up, as a pump rounds.
    let product = (i128::from(volume.number) * i128::from(price.number) + 5_000) / 10_000;
    let agrees = fill.verdict.agrees();
    let worked_out = if agrees { total.number } else { i64::try_from(product).ok()? };
    let (worked_out, printed) = (money(worked_out, currency), money(total.number, currency));
    Some(Check { kind: CheckKind::Fuel, worked_out, printed, agrees, area: total.line.area(total.at) })
}

fn offered(
    fill: &Fill<'_>,
    unit: VolumeUnit,
    currency: Currency,
    product: Option<(Field<FuelKind>, Field<String>)>,
) -> Fuel {
    let field =
        |candidate: &Candidate<'_>| (sure(fill.verdict, candidate), candidate.line.area(candidate.at));
    let volume = fill.volume.and_then(|candidate| {
        let (sure, area) = field(candidate);
        let text = format!("{}.{:03}", candidate.number / 1_000, candidate.number % 1_000);
        Some(Field { value: (Volume::parse(&text, unit).ok()?, unit), sure, area })
    });
    let price = fill.price.map(|candidate| {
        let (sure, area) = field(candidate);
        Field { value: PerVolume { thousandths: candidate.number, currency, per: unit }, sure, area }
    });
    let total: Option<Field<Money>> = fill.total.map(|candidate| {
        let (sure, area) = field(candidate);
        Field { value: money(candidate.number, currency), sure, area }
    });
    let (kind, product) = product.unzip();
    Fuel { volume, price, total, kind, product }
}

/// How far a figure of the fill can be believed. Of three that differ none can, because nothing says which was misread.
fn sure(verdict: Verdict, candidate: &Candidate<'_>) -> Sure {
    match (verdict, candidate.mended, candidate.labelled) {
        (Verdict::Agree, false, _) => Sure::Sure,
        (Verdict::Agree, true, _) | (Verdict::AgreeAsTaken, false, _) | (Verdict::Open, false, true) => {
            Sure::Likely
        }
        (Verdict::AgreeAsTaken | Verdict::Open | Verdict::Differ, ..) => Sure::Doubtful,
    }
}
