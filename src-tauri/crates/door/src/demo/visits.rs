//! Writing down what was done: when, by whom, with what, for how much, with which receipt.

use units::{Currency, Day, Money};

use super::What;
use super::chance::Chance;
use super::drive::Drive;
use super::jobs::{By, Do, Job, When};
use super::looks::Used;
use super::parts::Part;
use super::people::{Car, ROUND_BARN, months_before};
use super::receipt::{self, Line, Receipt, Shop};
use super::tell::Draft;
use crate::{ItemForm, PartForm, VisitForm};

/// The household began to keep its receipts this many days ago.
const RECEIPTS_SINCE: i32 = 860;
/// It has written down what it did about insurance, tax and the like for this many days.
const PAPERS_SINCE: i32 = 1_500;
/// Every so many visits one is written down late.
const LATE_EVERY: usize = 31;

/// Every visit of a car, in no order.
pub(super) fn visits(car: &Car, drive: &Drive<'_>, today: Day) -> Vec<Draft> {
    let dated = dated(car, today);
    let bills = dated.iter().map(|&(day, job)| Bill { car, job, day, drive, dated: &dated });
    bills.enumerate().map(|(at, bill)| draft(at, &bill, today)).collect()
}

/// Every day on which something was done, with the job.
fn dated(car: &Car, today: Day) -> Vec<(Day, &'static Job)> {
    let mut chance = Chance::of(&car.vehicle.vin);
    let mut dated = Vec::new();
    let mut before: Vec<Day> = Vec::new();
    for job in car.jobs {
        before = match job.when {
            When::After(later) => before.iter().map(|day| day.plus_days(later)).collect(),
            _ => days(job, car.begins, today, &mut chance),
        };
        before.retain(|day| *day < today);
        dated.extend(before.iter().map(|day| (*day, job)));
    }
    dated
}

/// The days on which a job was done, newest first.
fn days(job: &Job, begins: Day, today: Day, chance: &mut Chance) -> Vec<Day> {
    let first = begins.plus_days(25);
    let counted_back = |from: Day, months: u16, chance: &mut Chance| {
        let times = (0..).map(|time| (time, months_before(from, time * months)));
        let within = times.take_while(|(_, day)| *day > first);
        within.map(|(time, day)| if time == 0 { day } else { day.plus_days(jitter(chance)) }).collect()
    };
    let days: Vec<Day> = match job.when {
        When::Every { months, last } => counted_back(today.plus_days(-last), months, chance),
        When::Yearly => counted_back(months_before(today, 12), 12, chance),
        When::Once(ago) => vec![today.plus_days(-ago)],
        When::After(_) => Vec::new(),
        When::Around { month, day } => {
            let years = begins.ymd().0..=today.ymd().0;
            years
                .filter_map(|year| Day::from_ymd(year, month, day).ok())
                .map(|day| day.plus_days(jitter(chance)))
                .collect()
        }
    };
    let first = if job.by.is_desk() { first.max(today.plus_days(-PAPERS_SINCE)) } else { first };
    let within = days.into_iter().filter(|day| first < *day && *day < today);
    within.map(|day| if job.by == By::Owner { day } else { working_day(day) }).collect()
}

fn jitter(chance: &mut Chance) -> i32 {
    i32::try_from(chance.between(-11, 11)).unwrap_or(0)
}

/// The day itself, or the Saturday before it when it is a Sunday; 1970-01-01 was a Thursday.
fn working_day(day: Day) -> Day {
    if (day.epoch() + 4).rem_euclid(7) == 0 { day.plus_days(-1) } else { day }
}

fn draft(at: usize, bill: &Bill<'_>, today: Day) -> Draft {
    let late = if at % LATE_EVERY == 5 { 34 + i32::try_from(at % 29).unwrap_or(0) } else { 0 };
    let written = bill.day.plus_days(late).min(today);
    let kept = today.days_since(bill.day) < RECEIPTS_SINCE;
    let receipt = bill.receipt().filter(|_| kept);
    Draft::new(written, What::Visit { form: bill.form(), receipt })
}

/// A job done on a day.
struct Bill<'a> {
    car: &'a Car,
    job: &'static Job,
    day: Day,
    drive: &'a Drive<'a>,
    /// Everything that was ever done to the car, and when.
    dated: &'a [(Day, &'static Job)],
}

impl Bill<'_> {
    fn form(&self) -> VisitForm {
        let minor: i64 = self.lines().iter().map(|line| line.minor).sum();
        VisitForm {
            day: self.day.to_string(),
            reading: self.drive.shown(self.day),
            workshop: self.workshop().map_or_else(String::new, |shop| shop.name.to_owned()),
            items: self.job.items.iter().copied().map(item).collect(),
            parts: self.job.parts.iter().map(|part| self.part(part)).collect(),
            cost: if minor > 0 { self.number(minor) } else { String::new() },
            currency: self.car.place(self.day).currency.to_owned(),
            note: self.job.note.to_owned(),
            papers: Vec::new(),
            found: self.job.looks.iter().map(|look| look.found(self.used(look.item()))).collect(),
        }
    }

    /// How long what an item renews has been in use: since it was last renewed, or since the book began.
    fn used(&self, item: u32) -> Used {
        let renewed = self.dated.iter().filter(|(day, job)| *day < self.day && job.does(item));
        let since = renewed.map(|(day, _)| *day).max().unwrap_or(self.car.begins);
        let metres = self.drive.gone(self.day) - self.drive.gone(since);
        Used { metres, days: self.day.days_since(since) }
    }

    fn part(&self, part: &Part) -> PartForm {
        PartForm {
            name: part.name.to_owned(),
            maker: part.maker.to_owned(),
            number: part.number.to_owned(),
            quantity: part.quantity.to_owned(),
            measure: part.measure.to_owned(),
            price: self.number(self.price(part.price)),
            item: part.serves.map(ItemForm::Catalogue),
            kind: part.kind.to_owned(),
        }
    }

    fn receipt(&self) -> Option<Receipt> {
        let place = self.car.place(self.day);
        let shop = self.workshop().unwrap_or(place.counter);
        let lines = self.lines();
        let currency = self.currency()?;
        (!lines.is_empty() && !self.job.by.is_desk()).then(|| Receipt {
            shop,
            day: self.day,
            number: number(self.day),
            lines,
            currency,
        })
    }

    fn lines(&self) -> Vec<Line> {
        let parts = self.job.parts.iter().map(|part| line(part, self.price(part.price)));
        let (name, minor) = match self.job.by {
            By::Owner => return parts.collect(),
            By::Workshop(labour) | By::Tyres(labour) => ("Labour", labour),
            By::Insurer(premium) => ("Premium, 12 months", premium),
            By::Office(fee) => ("Fee", fee),
        };
        let work = Line { name: name.to_owned(), detail: String::new(), minor: self.price(minor) };
        parts.chain([work]).collect()
    }

    fn workshop(&self) -> Option<Shop> {
        let place = self.car.place(self.day);
        match self.job.by {
            By::Owner => None,
            By::Workshop(_) => Some(place.workshop),
            By::Tyres(_) => Some(ROUND_BARN),
            By::Insurer(_) => Some(place.insurer),
            By::Office(_) => Some(place.office),
        }
    }

    /// A price of the first year on the day of the visit: 3 % more each year, to five minor units.
    fn price(&self, base: i64) -> i64 {
        let years = i64::from(self.day.days_since(self.car.begins)) / 365;
        base * (100 + 3 * years) / 500 * 5
    }

    fn currency(&self) -> Option<Currency> {
        receipt::currency(self.car.place(self.day).currency)
    }

    fn number(&self, minor: i64) -> String {
        self.currency().map(|currency| Money { minor, currency }.number()).unwrap_or_default()
    }
}

fn item(item: Do) -> ItemForm {
    match item {
        Do::Item(number) => ItemForm::Catalogue(number),
        Do::Own(name) => ItemForm::Own(name.to_owned()),
    }
}

/// A part as a line of a receipt.
pub(super) fn line(part: &Part, minor: i64) -> Line {
    let quantity = match part.measure {
        "litre" => format!("{} L", part.quantity),
        "set" => format!("{} set", part.quantity),
        _ => format!("{} pc", part.quantity),
    };
    let detail = format!("{}  {}  ·  {quantity}", part.maker, part.number);
    Line { name: part.name.to_owned(), detail, minor }
}

/// The number of the receipt of a day.
pub(super) fn number(day: Day) -> String {
    let (year, _, _) = day.ymd();
    format!("{year}-{:05}", (i64::from(day.epoch()) * 7_919).rem_euclid(100_000))
}
