//! What a car uses: spans, figures, shifts, marks.

use rules::fuel::{
    Alarm, Apart, Change, Effect, FuelKind, Series, Share, Span, Unused, Warning, Watched, by_year, effects,
    explains, figures, look_at, watch,
};
use rules::upkeep::{Catalogue, Site, State};
use units::{Consumption, ConsumptionUnit, Day};

use super::due::due_view;
use super::fills::{Fills, use_view};
use super::helped::helped_views;
use super::odometer::odometer_view;
use super::places::vehicle_line;
use super::show::{item_view, reading_of, unit_key};
use crate::car::{Car, Visit};
use crate::troubles::{Clearing, clearings};
use crate::{
    AlarmView, ChangeView, ConsumptionView, DatedUseView, Door, EffectView, FiguresView, FuelSpanView,
    FuelWarningView, KindUseView, MarkView, Reading, Refusal, StandingView, UnusedSpanView, WatchView,
    YearUseView,
};

impl Door {
    pub(crate) fn consumption_view(
        &self,
        book: &str,
        unit: Option<&str>,
    ) -> Result<ConsumptionView, Refusal> {
        let asked = unit.map(asked_unit).transpose()?;
        let car = self.car(book)?;
        let today = self.clock.today();
        let fills = Fills::of_car(&car);
        let (series, warnings) = fills.spans(&car);
        let clearings = clearings(&self.troubles(car.book)?);
        let screen =
            Screen { car: &car, fills: &fills, clearings: &clearings, catalogue: self.catalogue, today };
        let warnings = warnings.iter().map(|warning| screen.warning(warning));
        let of_no_use = fills.of_no_use().map(|day| FuelWarningView::OtherKind { day: day.to_string() });
        let kinds = || series.iter().map(|series| screen.kind(series, asked)).collect();
        let (kinds, (marks, odometer)) = rayon::join(kinds, || (screen.marks(), odometer_view(&car, today)));
        Ok(ConsumptionView {
            vehicle: vehicle_line(&car),
            today: today.to_string(),
            kinds,
            marks,
            odometer,
            effects: effects().iter().map(effect_view).collect(),
            warnings: warnings.chain(of_no_use).collect(),
        })
    }
}

/// What a car used of one kind, year by year.
pub(crate) struct UsedByYear {
    /// The key of the kind.
    pub kind: &'static str,
    /// The key of the unit.
    pub unit: &'static str,
    /// The mean of each year, oldest first.
    pub years: Vec<YearUseView>,
}

/// What a car used of each kind, in the unit that is usual for it.
pub(crate) fn used_by_year(car: &Car) -> Vec<UsedByYear> {
    let fills = Fills::of_car(car);
    let (series, _) = fills.spans(car);
    let of = |series: &Series| {
        let unit = fills.consumption_unit(series.kind, car, None);
        UsedByYear { kind: series.kind.key(), unit: unit.key(), years: years(&series.spans, unit) }
    };
    series.iter().map(of).collect()
}

fn years(spans: &[Span], unit: ConsumptionUnit) -> Vec<YearUseView> {
    let years = by_year(spans).into_iter();
    years.filter_map(|(year, used)| Some(YearUseView { year, used: use_view(used, unit)? })).collect()
}

fn asked_unit(key: &str) -> Result<ConsumptionUnit, Refusal> {
    let unit = ConsumptionUnit::from_key(key);
    unit.ok_or_else(|| Refusal::new("consumption-unit").with("text", key).at("unit"))
}

/// What every part of the screen is worked out from.
struct Screen<'a> {
    car: &'a Car,
    fills: &'a Fills,
    clearings: &'a [Clearing],
    catalogue: &'a Catalogue,
    today: Day,
}

impl Screen<'_> {
    fn kind(&self, series: &Series, asked: Option<ConsumptionUnit>) -> KindUseView {
        let Series { kind, spans, unused } = series;
        let unit = self.fills.consumption_unit(*kind, self.car, asked);
        let judged = || {
            let watched = watch(spans);
            let helped =
                helped_views(self.car, self.clearings, *kind, spans, &watched.alarms, self.catalogue);
            (helped, self.watch(&watched))
        };
        let shown = || spans.iter().filter_map(|span| self.span(span, unit)).collect();
        let ((helped, watch), shown) = rayon::join(judged, shown);
        let units =
            ConsumptionUnit::ALL.into_iter().filter(|other| other.is_electric() == unit.is_electric());
        KindUseView {
            kind: kind.key().to_owned(),
            unit: unit.key().to_owned(),
            units: units.map(|unit| unit.key().to_owned()).collect(),
            more_is_better: unit.more_is_better(),
            spans: shown,
            unused: unused.iter().map(|unused| self.unused(*kind, unused)).collect(),
            figures: figures_view(spans, unit),
            years: years(spans, unit),
            helped,
            watch,
        }
    }

    fn span(&self, span: &Span, unit: ConsumptionUnit) -> Option<FuelSpanView> {
        let shown = self.car.track.shown_on(span.to, span.end);
        Some(FuelSpanView {
            from: span.from.to_string(),
            to: span.to.to_string(),
            reading: reading_of(shown, self.car.unit()),
            distance: self.distance(span.used.distance()),
            amount: self.fills.amount(span.kind, span.to, span.used.amount()),
            fills: span.fills,
            used: use_view(span.used, unit)?,
        })
    }

    fn unused(&self, kind: FuelKind, unused: &Unused) -> UnusedSpanView {
        let why = match unused.why {
            Apart::Missed => "missed",
            Apart::NoDistance => "no-distance",
            Apart::TooLittle => "too-little",
            Apart::TooMuch => "too-much",
        };
        UnusedSpanView {
            from: unused.from.to_string(),
            to: unused.to.to_string(),
            distance: self.distance(unused.distance),
            amount: self.fills.amount(kind, unused.to, unused.amount),
            why: why.to_owned(),
        }
    }

    fn distance(&self, distance: units::Distance) -> Reading {
        Reading { count: distance.round(self.car.unit()), unit: unit_key(self.car.unit()) }
    }

    fn watch(&self, watched: &Watched) -> WatchView {
        WatchView {
            learnt: watched.learnt,
            alarms: watched.alarms.iter().map(alarm_view).collect(),
            standing: watched.standing().map(|alarm| self.standing(&alarm)),
        }
    }

    /// Where a shift that stands leads: what is due and could explain it, what else to look at, which symptom.
    fn standing(&self, alarm: &Alarm) -> StandingView {
        let lines = self.car.due(self.today);
        let could = lines.iter().filter(|line| line.state != State::Ahead && explains(&line.item));
        StandingView {
            alarm: alarm_view(alarm),
            due: could.map(|line| due_view(line, self.car, self.catalogue)).collect(),
            look_at: look_at(&self.car.vehicle).into_iter().map(str::to_owned).collect(),
            symptoms: rules::fuel::SYMPTOMS.map(str::to_owned).to_vec(),
        }
    }

    /// The visits at which something was done to the car, and not only to its papers.
    fn marks(&self) -> Vec<MarkView> {
        let visits = self.car.visits.iter().filter(|visit| !is_office(visit, self.catalogue));
        visits.map(|visit| self.mark(visit)).collect()
    }

    fn mark(&self, visit: &Visit) -> MarkView {
        let content = &visit.content;
        MarkView {
            subject: visit.subject.to_string(),
            day: content.day.to_string(),
            reading: content.shown.map(|shown| reading_of(shown, self.car.unit())),
            items: content.items.iter().map(|item| item_view(item, self.catalogue)).collect(),
        }
    }

    fn warning(&self, warning: &Warning) -> FuelWarningView {
        match *warning {
            Warning::LargerThanEver { kind, day, amount, before } => FuelWarningView::LargerThanEver {
                day: day.to_string(),
                amount: self.fills.amount(kind, day, amount),
                before: self.fills.amount(kind, day, before),
            },
            Warning::ReadingFalls { day } => FuelWarningView::ReadingFalls { day: day.to_string() },
        }
    }
}

/// Whether a visit was made for papers alone.
pub(super) fn is_office(visit: &Visit, catalogue: &Catalogue) -> bool {
    let office = |item| catalogue.row(item).is_some_and(|row| row.site() == Site::Office);
    !visit.content.items.is_empty() && visit.content.items.iter().all(office)
}

fn figures_view(spans: &[Span], unit: ConsumptionUnit) -> Option<FiguresView> {
    let figures = figures(spans)?;
    let view = |used: Consumption| use_view(used, unit);
    let dated = |span: Span| Some(DatedUseView { to: span.to.to_string(), used: view(span.used)? });
    Some(FiguresView {
        last: dated(figures.last)?,
        overall: view(figures.overall)?,
        last_year: view(figures.last_year)?,
        least: dated(figures.least)?,
        most: dated(figures.most)?,
    })
}

/// The rise of consumption that stands, of the first kind that has one.
pub(super) fn standing_alarm(series: &[Series]) -> Option<AlarmView> {
    series.iter().find_map(|series| watch(&series.spans).standing().map(|alarm| alarm_view(&alarm)))
}

fn alarm_view(alarm: &Alarm) -> AlarmView {
    AlarmView {
        since: alarm.since.to_string(),
        raised: alarm.raised.to_string(),
        likely: alarm.likely.to_string(),
        size: change_view(alarm.size),
    }
}

pub(super) fn change_view(share: Share) -> ChangeView {
    ChangeView { low: share.low.to_string(), high: share.high.to_string() }
}

fn effect_view(effect: &Effect) -> EffectView {
    let (how, percent, to) = match effect.change {
        Change::By(percent) => ("by", Some(percent), None),
        Change::UpTo(percent) => ("up-to", Some(percent), None),
        Change::Between(low, high) => ("between", Some(low), Some(high)),
        Change::None => ("none", None, None),
    };
    EffectView {
        key: effect.key.to_owned(),
        how: how.to_owned(),
        percent,
        to,
        source: effect.source.to_owned(),
    }
}
