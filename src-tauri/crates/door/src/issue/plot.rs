//! The readings over the years, as numbers to draw.

use card::{Claims, GapBound, Place, Plot, PlotPoint, PlotTick};
use units::Day;
use words::Words;

use super::numbers::reading;

/// A scale has at most so many marks above 0; with more, a small plot is all lines.
const MARKS: i64 = 5;

/// The plot of a car's way; nothing where its card lists no visit.
///
/// It is worked out from all visits in the book, though the square may hold fewer.
pub(super) fn plot(claims: &Claims, words: &Words) -> Option<Plot> {
    let line = card::timeline(claims);
    let places = || line.runs.iter().flatten().chain(line.gaps.iter().flatten());
    let (first, last) = (places().map(|place| place.day).min()?, places().map(|place| place.day).max()?);
    let farthest = places().map(|place| place.way).max()?.max(1);
    let step = step(farthest);
    let most = marks(farthest, step) * step;
    Some(Plot {
        days: [first.epoch(), last.epoch()],
        most,
        runs: line.runs.iter().map(|run| run.iter().map(point).collect()).collect(),
        gaps: line.gaps.iter().map(|gap| [point(&gap[0]), point(&gap[1])]).collect(),
        years: years(first, last),
        ways: ways(most, step),
        note: note(claims, line.gaps.len(), words),
    })
}

fn point(place: &Place) -> PlotPoint {
    PlotPoint { day: place.day.epoch(), way: place.way }
}

/// The first day of each year within the plot.
fn years(first: Day, last: Day) -> Vec<PlotTick> {
    let years = first.ymd().0..=last.ymd().0;
    let starts = years.filter_map(|year| Some((year, Day::from_ymd(year, 1, 1).ok()?)));
    let within = starts.filter(|(_, day)| (first..=last).contains(day));
    within.map(|(year, day)| PlotTick { at: day.epoch().into(), label: year.to_string() }).collect()
}

fn ways(most: i64, step: i64) -> Vec<PlotTick> {
    let places = (1..=most / step).map(|mark| mark * step);
    places.map(|at| PlotTick { at, label: reading(at, None) }).collect()
}

/// How many marks above 0 it takes to reach this far.
pub(super) fn marks(farthest: i64, step: i64) -> i64 {
    (farthest + step - 1) / step
}

/// The smallest of 1, 2 and 5 times a power of ten that needs no more marks than a small plot takes.
pub(super) fn step(farthest: i64) -> i64 {
    let mut power = 1_i64;
    loop {
        let fitting =
            [1, 2, 5].into_iter().map(|factor| factor * power).find(|step| farthest <= MARKS * step);
        match fitting {
            Some(step) => return step,
            None => power = power.saturating_mul(10),
        }
    }
}

fn note(claims: &Claims, gaps: usize, words: &Words) -> String {
    let bound = GapBound::of(claims.unit);
    let args = [
        ("gaps", gaps.into()),
        ("months", bound.months.into()),
        ("distance", reading(bound.distance, Some(claims.unit)).into()),
    ];
    let gaps = words.say("card-plot-note", &args);
    // The latest reading printed beside the plot is that of the new instrument alone.
    match claims.instruments.len() {
        0 => gaps,
        count => format!("{gaps} {}", words.say("card-plot-instruments", &[("count", count.into())])),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_scale_has_round_marks_and_few_of_them() {
        for (farthest, expected) in [(1, 1), (5, 1), (6, 2), (99, 20), (105_412, 50_000), (250_000, 50_000)] {
            assert_eq!(step(farthest), expected, "{farthest}");
            assert!(marks(farthest, expected) <= MARKS);
        }
    }
}
