//! What the household settled for the plans of its cars.

use units::Day;

use super::barge::TOW_BALL;
use crate::{IntervalForm, ItemForm, PlanForm};

/// When something was settled, for which item, and what.
pub(super) type Settled = (Day, ItemForm, PlanForm);

/// The fuel filter is in the tank, and the wheels change with the season: Oskar has marked the next day for it.
pub(super) fn pip(begins: Day, today: Day) -> Vec<Settled> {
    let early = begins.plus_days(2);
    let mut plan = vec![
        (early, ItemForm::Catalogue(7), PlanForm::Off),
        (early, ItemForm::Catalogue(58), handbook("", "6")),
    ];
    plan.extend(papers(early));
    let marked = next_season(today).map(|day| PlanForm::Day { day: day.to_string() });
    plan.extend(marked.map(|change| (today.plus_days(-5), ItemForm::Catalogue(58), change)));
    plan
}

/// The next day after this one on which summer or winter wheels go on.
fn next_season(today: Day) -> Option<Day> {
    let (year, ..) = today.ymd();
    let seasons = [(year, 4, 17), (year, 10, 24), (year + 1, 4, 17)];
    let days = seasons.into_iter().filter_map(|(year, month, day)| Day::from_ymd(year, month, day).ok());
    days.filter(|day| *day > today).min()
}

/// Its handbook knows the engine; the tow bar is an item of Tamsin's own.
pub(super) fn barge(begins: Day) -> Vec<Settled> {
    let early = begins.plus_days(2);
    let mut plan = vec![
        (early, ItemForm::Catalogue(1), handbook("9000", "12")),
        (early, ItemForm::Catalogue(15), handbook("", "6")),
        (early, ItemForm::Catalogue(44), handbook("150000", "")),
        (early, ItemForm::Own(TOW_BALL.to_owned()), handbook("", "6")),
    ];
    plan.extend(papers(early));
    plan
}

/// How often the papers are due where these people live.
fn papers(day: Day) -> impl Iterator<Item = Settled> {
    let every = [(67, "24"), (68, "12"), (69, "12")];
    every.into_iter().map(move |(number, months)| (day, ItemForm::Catalogue(number), handbook("", months)))
}

/// An interval as the handbook prints it, in miles and months.
fn handbook(distance: &str, months: &str) -> PlanForm {
    let unit = if distance.is_empty() { "" } else { "mi" };
    let then =
        IntervalForm { distance: distance.to_owned(), unit: unit.to_owned(), months: months.to_owned() };
    PlanForm::Handbook { then, first: None, stakes: None }
}
