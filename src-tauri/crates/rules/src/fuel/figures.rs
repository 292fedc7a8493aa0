//! The figures of one kind's spans: the last one, the mean, the least and the most.

use units::{Consumption, Day};

use super::Span;

/// What spans come to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Figures {
    /// The last span.
    pub last: Span,
    /// The mean of all of them, over the distance.
    pub overall: Consumption,
    /// The mean of those that ended within a year before the last one's end, that one among them.
    pub last_year: Consumption,
    /// The span that used the least over its distance.
    pub least: Span,
    /// The span that used the most over its distance.
    pub most: Span,
}

/// How many days the last year has.
const YEAR: i32 = 365;

/// The figures of the spans of one kind, in order. `None` without a span.
pub fn figures(spans: &[Span]) -> Option<Figures> {
    let last = *spans.last()?;
    let recent = spans.iter().filter(|span| last.to.days_since(span.to) < YEAR);
    Some(Figures {
        last,
        overall: mean(spans.iter())?,
        last_year: mean(recent)?,
        least: *spans.iter().min_by(|a, b| by_use(a, b))?,
        most: *spans.iter().max_by(|a, b| by_use(a, b))?,
    })
}

/// The mean of each calendar year in which a span ended, over the distance, in order.
pub fn by_year(spans: &[Span]) -> Vec<(i32, Consumption)> {
    let year = |day: Day| day.ymd().0;
    let years = spans.chunk_by(|a, b| year(a.to) == year(b.to));
    years.filter_map(|spans| Some((year(spans.first()?.to), mean(spans.iter())?))).collect()
}

fn mean<'a>(spans: impl Iterator<Item = &'a Span>) -> Option<Consumption> {
    Consumption::mean(spans.map(|span| span.used))
}

/// By what was used over the distance, exactly.
fn by_use(a: &Span, b: &Span) -> std::cmp::Ordering {
    let cross =
        |a: &Span, b: &Span| i128::from(a.used.amount().base()) * i128::from(b.used.distance().millimetres());
    cross(a, b).cmp(&cross(b, a))
}
