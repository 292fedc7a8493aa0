//! Reading a paper on the device: what the book knows of the car goes in, what the photo says comes out.
//!
//! It takes about a second and needs no door: [`Door::to_read`] hands out everything that is needed, and
//! [`PaperReader::read`] works on it.

use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

use book::content::Content;
use paper::read::{
    Check, CheckKind, Country, DayRead, Field, Fuel, Item, Known, KnownShop, Receipt, Sure, Tax, read,
};
use paper::{Area, Prepared, Reader, Row, Stretch, Text};
use rules::fuel::PumpUnit;
use units::{Currency, Day, Distance, DistanceUnit, Money};

use crate::car::Car;
use crate::papers::{Intake, prepare_paper};
use crate::screens::{measure_key, money_view, warned_numbers};
use crate::{
    AmountView, AreaView, CheckedView, DayReadView, Door, FieldView, FieldsView, FigureReadView,
    FuelFiguresView, FuelReadView, OdometerReadView, ReceiptLineView, ReceiptView, Refusal, RowView,
    StretchView, WarnedView,
};

/// Where the models of the reader stand: the folder that `WELLKEPT_MODELS` names, else `models` beside the program.
fn models() -> Option<PathBuf> {
    let named = std::env::var_os("WELLKEPT_MODELS").map(PathBuf::from);
    let beside = || Some(std::env::current_exe().ok()?.parent()?.join("models"));
    named.or_else(beside)
}

/// Reads papers. It loads what it needs at the first of them, and keeps it.
#[derive(Default)]
pub struct PaperReader {
    folder: Option<PathBuf>,
    reader: OnceLock<Option<Reader>>,
}

/// A photo to be read, with what is known beforehand.
#[derive(Debug, Clone)]
pub struct ToRead {
    jpeg: Vec<u8>,
    today: Day,
    currency: Option<Currency>,
    shops: Vec<String>,
    numbers: Vec<String>,
    warned: Vec<WarnedView>,
}

/// What is to be read of a file.
#[derive(Debug, Clone)]
pub enum WantedFile {
    /// The photo that it is.
    Photo(ToRead),
    /// The pages of a document, from the first.
    Pages(Vec<ToRead>),
}

impl PaperReader {
    /// A reader with the models in this folder, or where they are looked for otherwise.
    pub fn new(folder: Option<&Path>) -> PaperReader {
        PaperReader { folder: folder.map(Path::to_owned).or_else(models), reader: OnceLock::new() }
    }

    /// Whether there are models, so that papers can be read.
    pub fn is_installed(&self) -> bool {
        self.folder.as_deref().is_some_and(Reader::is_installed)
    }

    /// What a photo says. It stops soon after `stop` says so, and refuses with `stopped` then.
    pub fn read(&self, wanted: &ToRead, stop: &dyn Fn() -> bool) -> Result<ReceiptView, Refusal> {
        let mut go_on = |_| if stop() { ControlFlow::Break(()) } else { ControlFlow::Continue(()) };
        Ok(wanted.receipt(&self.reader()?.read(&wanted.jpeg, &mut go_on)?))
    }

    fn reader(&self) -> Result<&Reader, Refusal> {
        if self.reader.get().is_none() {
            let opened = self.folder.as_deref().map(Reader::open).transpose()?.flatten();
            // Another thread may have opened it in the meantime; both are the same.
            let _ = self.reader.set(opened);
        }
        self.reader.get().and_then(Option::as_ref).ok_or_else(|| Refusal::new("reading-not-installed"))
    }
}

impl ToRead {
    /// What is to be read of a file that belongs to no book.
    pub fn file(bytes: &[u8], today: Day) -> Result<WantedFile, Refusal> {
        let alone = |picture: &Prepared| ToRead {
            jpeg: picture.jpeg().to_vec(),
            today,
            currency: None,
            shops: Vec::new(),
            numbers: Vec::new(),
            warned: Vec::new(),
        };
        Ok(match prepare_paper(bytes)? {
            Intake::Photo(photo) => WantedFile::Photo(alone(&photo)),
            Intake::Document { pages, .. } => WantedFile::Pages(pages.iter().map(alone).collect()),
        })
    }

    /// What the text on the photo comes to, with what is known beforehand.
    fn receipt(&self, text: &Text) -> ReceiptView {
        let shops: Vec<_> = self.shops.iter().map(|name| KnownShop { name, country: None }).collect();
        let numbers: Vec<_> = self.numbers.iter().map(String::as_str).collect();
        let known = Known {
            today: self.today,
            currency: self.currency,
            country: self.currency.and_then(country_of),
            shops: &shops,
            numbers: &numbers,
        };
        receipt_view(text, &read(text, &known), self.warned.clone())
    }
}

impl Door {
    /// Everything that is needed to read a paper.
    pub fn to_read(&self, book: &str, paper: &str) -> Result<ToRead, Refusal> {
        let car = self.car(book)?;
        let Content::Paper(content) = self.shelf.line(car.book, paper.parse()?)?.content else {
            return Err(Refusal::new("other-kind"));
        };
        let bought = car.bought.iter().map(|purchase| &purchase.content);
        let fitted = car.visits.iter().map(|visit| &visit.content);
        let shops = bought.clone().map(|bought| bought.shop.as_str());
        let shops = shops.chain(fitted.clone().map(|visit| visit.by.workshop()));
        let costs = fitted.filter_map(|visit| Some(visit.cost?.currency)).next_back();
        Ok(ToRead {
            jpeg: self.photos.full(content.photo)?,
            today: self.clock.today(),
            currency: costs.or_else(|| bought.filter_map(|bought| Some(bought.cost?.currency)).next_back()),
            shops: once_each(shops.map(str::to_owned)),
            numbers: once_each(numbers(&car).map(str::to_owned)),
            warned: warned_numbers(&car),
        })
    }
}

/// Every number that the book has of a part for this car: those bought and fitted, and those in the notes, also the
/// ones that a note warns of, because a receipt with one on it is when the warning is wanted.
fn numbers(car: &Car) -> impl Iterator<Item = &str> {
    let bought = car.bought.iter().flat_map(|purchase| &purchase.content.parts);
    let fitted = car.visits.iter().flat_map(|visit| &visit.content.parts);
    let had = bought.chain(fitted).map(|part| part.number.as_str());
    let noted = car.part_notes.iter().flat_map(|note| {
        let same = note.same.iter().map(|same| same.number.as_str());
        [note.number.as_str(), note.instead.as_str()].into_iter().chain(same)
    });
    had.chain(noted)
}

/// The country that alone has this currency, whose order of day and month is then offered first. It is only where the
/// household lives: what the receipt itself shows decides.
fn country_of(currency: Currency) -> Option<Country> {
    // The first two letters of a currency are its country's (ISO 4217), save for those that several countries share.
    currency
        .code()
        .get(..2)
        .filter(|country| *country != "EU" && !country.starts_with('X'))
        .and_then(Country::new)
}

fn once_each(texts: impl Iterator<Item = String>) -> Vec<String> {
    let mut texts: Vec<_> = texts.filter(|text| !text.is_empty()).collect();
    texts.sort_unstable();
    texts.dedup();
    texts
}

fn receipt_view(text: &Text, receipt: &Receipt, warned: Vec<WarnedView>) -> ReceiptView {
    ReceiptView {
        rows: text.0.iter().map(row_view).collect(),
        fields: FieldsView {
            shop: receipt.shop.as_ref().map(|field| field_view(field, &field.value)),
            day: receipt.day.as_ref().map(day_view),
            currency: receipt.currency.as_ref().map(|field| field_view(field, field.value.code())),
            total: receipt.total.as_ref().map(|field| amount_view(field, field.value)),
            tax: receipt
                .taxes
                .iter()
                .map(|field: &Field<Tax>| amount_view(field, field.value.amount))
                .collect(),
            lines: receipt.items.iter().map(line_view).collect(),
            numbers: receipt.numbers.iter().map(|field| field_view(field, &field.value)).collect(),
            fuel: receipt.fuel.as_ref().and_then(fuel_view),
            odometer: receipt.odometer.as_ref().map(odometer_view),
        },
        checks: receipt.checks.iter().map(checked_view).collect(),
        warned,
    }
}

fn row_view(Row(stretches): &Row) -> RowView {
    let texts: Vec<_> = stretches.iter().map(|stretch| stretch.text.as_str()).collect();
    let sure = stretches.iter().map(|stretch| stretch.sure).fold(1.0, f32::min);
    RowView { text: texts.join(" "), sure, stretches: stretches.iter().map(stretch_view).collect() }
}

fn stretch_view(stretch: &Stretch) -> StretchView {
    StretchView { text: stretch.text.clone(), sure: stretch.sure, area: area(stretch.area) }
}

fn area(Area { left, top, width, height }: Area) -> AreaView {
    [left, top, width, height]
}

fn sure(sure: Sure) -> String {
    let key = match sure {
        Sure::Doubtful => "doubtful",
        Sure::Likely => "likely",
        Sure::Sure => "sure",
    };
    key.to_owned()
}

fn field_view<T>(field: &Field<T>, value: &str) -> FieldView {
    FieldView { value: value.to_owned(), sure: sure(field.sure), area: area(field.area) }
}

fn day_view(field: &Field<DayRead>) -> DayReadView {
    let (value, or) = match field.value {
        DayRead::One(day) => (day, None),
        DayRead::Either { likelier, other } => (likelier, Some(other)),
    };
    DayReadView {
        value: value.to_string(),
        or: or.map(|day| day.to_string()),
        sure: sure(field.sure),
        area: area(field.area),
    }
}

fn amount_view<T>(field: &Field<T>, amount: Money) -> AmountView {
    AmountView {
        value: amount.number(),
        currency: amount.currency.code().to_owned(),
        sure: sure(field.sure),
        area: area(field.area),
    }
}

fn line_view(item: &Item) -> ReceiptLineView {
    ReceiptLineView {
        text: item.text.clone(),
        quantity: item.quantity.map(units::Quantity::number).unwrap_or_default(),
        measure: item.quantity.map_or("", |quantity| measure_key(quantity.measure)).to_owned(),
        price: item.price.number(),
        number: item.number.as_ref().map(|number| field_view(number, &number.value)),
        sure: sure(item.sure),
        area: area(item.area),
    }
}

/// The fill, when any of its figures was found.
fn fuel_view(fuel: &Fuel) -> Option<FuelReadView> {
    let volume = fuel.volume.as_ref().map(figure);
    let price = fuel.price.as_ref().map(figure);
    let total = fuel.total.as_ref().map(figure);
    let found = [volume, price, total].into_iter().flatten();
    let (least, all) = found.reduce(|(one, here), (other, there)| (one.min(other), here.with(there)))?;
    Some(FuelReadView {
        volume: fuel.volume.as_ref().map(|field| field.value.0.number(field.value.1)).unwrap_or_default(),
        unit: fuel.volume.as_ref().map_or("", |field| PumpUnit::Volume(field.value.1).key()).to_owned(),
        price: fuel.price.as_ref().map(|field| thousandths(field.value.thousandths)).unwrap_or_default(),
        total: fuel.total.as_ref().map(|field| field.value.number()).unwrap_or_default(),
        sure: sure(least),
        area: area(all),
        figures: FuelFiguresView {
            volume: volume.map(figure_view),
            price: price.map(figure_view),
            total: total.map(figure_view),
        },
    })
}

fn figure<T>(field: &Field<T>) -> (Sure, Area) {
    (field.sure, field.area)
}

fn figure_view((level, place): (Sure, Area)) -> FigureReadView {
    FigureReadView { sure: sure(level), area: area(place) }
}

/// A price with its three decimals.
fn thousandths(price: i64) -> String {
    format!("{}.{:03}", price / 1_000, price % 1_000)
}

fn odometer_view(field: &Field<(Distance, DistanceUnit)>) -> OdometerReadView {
    let (distance, unit) = field.value;
    OdometerReadView {
        value: distance.floor(unit),
        unit: unit.symbol().to_owned(),
        sure: sure(field.sure),
        area: area(field.area),
    }
}

fn checked_view(check: &Check) -> CheckedView {
    let kind = match check.kind {
        CheckKind::Lines => "lines",
        CheckKind::NetAndTax => "net-and-tax",
        CheckKind::Paid => "paid",
        CheckKind::Fuel => "fuel",
    };
    CheckedView {
        kind: kind.to_owned(),
        worked_out: money_view(check.worked_out),
        printed: money_view(check.printed),
        agrees: check.agrees,
    }
}

#[cfg(test)]
#[path = "reading_tests.rs"]
mod tests;
