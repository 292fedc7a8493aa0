//! What is drawn as one bar a year: what the car used, and what it cost.

use card::{Bar, Bars, PlotTick};
use words::{Arg, Words};

use super::super::numbers::{decimal, reading};
use super::super::plot::{marks, step};
use super::listed;
use crate::car::Car;
use crate::screens::used_by_year;
use crate::{BillView, Door, ReportOptions};

/// Consumption crosses the door in hundredths of its unit.
const HUNDREDTHS: u32 = 2;

impl Door {
    /// The bars that the book has something for; costs only where they are to be told.
    pub(super) fn bars(&self, car: &Car, options: &ReportOptions, words: &Words) -> Vec<Bars> {
        let mut bars = Vec::new();
        for used in used_by_year(car) {
            let kind = words.say(&format!("fuel-kind-{}", used.kind), &[]);
            let unit = words.say(&format!("use-{}", used.unit), &[]);
            let years = used.years.iter().map(|year| Bar {
                label: year.year.to_string(),
                at: year.used.hundredths,
                value: decimal(&year.used.number, words),
                open: false,
            });
            let title = words.say("report-use", &[("kind", kind.into()), ("unit", unit.into())]);
            bars.extend(drawn(title, years.collect(), HUNDREDTHS, String::new(), words));
        }
        if options.prices {
            bars.extend(self.costs(car, words));
        }
        bars
    }

    /// A drawing for each currency, since none is added to another.
    fn costs(&self, car: &Car, words: &Words) -> Vec<Bars> {
        let bills = self.bills_by_year(car);
        let mut currencies: Vec<&str> = bills.iter().map(|bill| bill.currency.as_str()).collect();
        currencies.sort_unstable();
        currencies.dedup();
        let of = |currency: &str| {
            let of = bills.iter().filter(|bill| bill.currency == currency);
            let decimals = of.clone().next().map_or(0, |bill| bill.decimals);
            let title = words.say("report-costs", &[("currency", currency.into())]);
            drawn(
                title,
                of.map(|bill| bar(bill, words)).collect(),
                decimals,
                words.say("report-costs-note", &[]),
                words,
            )
        };
        currencies.into_iter().filter_map(of).collect()
    }
}

fn bar(bill: &BillView, words: &Words) -> Bar {
    Bar {
        label: bill.period.clone(),
        at: bill.parts.iter().map(|part| part.minor).fold(0, i64::saturating_add),
        value: decimal(&bill.total.number, words),
        open: !bill.over,
    }
}

/// Bars counted in units of so many decimals; none where nothing is above 0.
fn drawn(title: String, bars: Vec<Bar>, decimals: u32, note: String, words: &Words) -> Option<Bars> {
    let highest = bars.iter().map(|bar| bar.at).max().filter(|highest| *highest > 0)?;
    let step = step(highest);
    let most = marks(highest, step).saturating_mul(step);
    let ways = (1..=most / step).map(|mark| mark * step);
    let says = bars.iter().map(|bar| {
        words.say("report-bar-says", &[("year", Arg::from(&bar.label)), ("value", Arg::from(&bar.value))])
    });
    let values = listed(says, words);
    let open = bars.iter().any(|bar| bar.open).then(|| words.say("report-open-year", &[]));
    let note = [note].into_iter().chain(open).filter(|text| !text.is_empty()).collect::<Vec<_>>().join(" ");
    Some(Bars {
        says: words.say("report-bars-say", &[("title", Arg::from(&title)), ("values", values.into())]),
        title,
        most,
        ways: ways.map(|at| PlotTick { at, label: scaled(at, decimals, words) }).collect(),
        bars: with_gaps(bars),
        note,
    })
}

/// Years of which the book says nothing get a bar without height, so that each year has its place.
fn with_gaps(bars: Vec<Bar>) -> Vec<Bar> {
    let mut filled: Vec<Bar> = Vec::new();
    let mut expected: Option<i32> = None;
    for bar in bars {
        let year = bar.label.parse::<i32>().ok();
        if let Some((from, to)) = expected.zip(year) {
            filled.extend((from..to).map(|year| Bar { label: year.to_string(), ..Bar::default() }));
        }
        expected = year.map(|year| year + 1);
        filled.push(bar);
    }
    filled
}

/// A count of minor units with its decimals, those that are 0 left away: `1 500`, `0.5`.
fn scaled(at: i64, decimals: u32, words: &Words) -> String {
    let one = 10_i64.saturating_pow(decimals);
    if at % one == 0 {
        return reading(at / one, None);
    }
    let places = usize::try_from(decimals).unwrap_or_default();
    let number = format!("{}.{:0places$}", at / one, at % one);
    decimal(number.trim_end_matches('0'), words)
}

#[cfg(test)]
mod tests {
    use words::Face;

    use super::*;

    #[test]
    fn a_scale_names_whole_units_and_as_many_decimals_as_it_takes() {
        let said = |lang: &str| {
            let words = Words::load_for(Face::Report, lang);
            [(150_000, 2), (50, 2), (5, 2), (2_000, 0), (1_500, 3)]
                .map(|(at, decimals)| scaled(at, decimals, &words))
        };
        assert_eq!(said("en"), ["1\u{202f}500", "0.5", "0.05", "2\u{202f}000", "1.5"]);
        assert_eq!(said("de"), ["1\u{202f}500", "0,5", "0,05", "2\u{202f}000", "1,5"]);
    }

    #[test]
    fn a_year_of_which_nothing_is_known_keeps_its_place() {
        let bar = |year: i32| Bar { label: year.to_string(), at: 1, ..Bar::default() };
        let filled = with_gaps(vec![bar(2019), bar(2022), bar(2023)]);
        let said: Vec<_> = filled.iter().map(|bar| (bar.label.as_str(), bar.at)).collect();
        assert_eq!(said, [("2019", 1), ("2020", 0), ("2021", 0), ("2022", 1), ("2023", 1)]);
    }
}
