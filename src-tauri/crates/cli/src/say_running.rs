//! Consumption, costs and measured values in words.

use door::{
    AlarmView, BillView, ConsumptionView, CostsView, FiguresView, HelpedView, KindUseView, MeasurementsView,
    ParameterView, PerDistanceView, UnusedSpanView, UseView, VerdictView,
};
use words::{Arg, Words};

use crate::say::item;

/// What the car uses, a paragraph for each kind.
pub fn consumption(words: &Words, view: &ConsumptionView) -> Vec<String> {
    if view.kinds.is_empty() {
        return vec![words.say("cli-no-fuel", &[])];
    }
    view.kinds.iter().flat_map(|kind| self::kind(words, kind)).collect()
}

fn kind(words: &Words, kind: &KindUseView) -> Vec<String> {
    let name = words.say(&format!("cli-fuel-{}", kind.kind), &[]);
    let number = |used: &UseView| format!("{} {}", used.number, symbol(&kind.unit));
    let mut lines = vec![match &kind.figures {
        Some(figures) => self::figures(words, &name, figures, number),
        None => words.say("cli-no-span", &[("kind", name.into())]),
    }];
    let year = |year: &door::YearUseView| format!("  {}  {}", year.year, number(&year.used));
    lines.extend(kind.years.iter().map(year));
    lines.extend(kind.unused.iter().map(|unused| self::unused(words, unused)));
    lines.extend(kind.watch.standing.iter().map(|standing| alarm(words, &standing.alarm)));
    lines.extend(kind.helped.iter().map(|helped| self::helped(words, helped)));
    lines
}

fn figures(words: &Words, name: &str, figures: &FiguresView, number: impl Fn(&UseView) -> String) -> String {
    let args = [
        ("kind", Arg::from(name)),
        ("last", number(&figures.last.used).into()),
        ("day", (&figures.last.to).into()),
        ("year", number(&figures.last_year).into()),
        ("overall", number(&figures.overall).into()),
        ("least", number(&figures.least.used).into()),
        ("most", number(&figures.most.used).into()),
    ];
    words.say("cli-figures", &args)
}

/// The symbol of a unit of consumption.
fn symbol(unit: &str) -> &'static str {
    match unit {
        "litres-per-100-km" => "L/100 km",
        "km-per-litre" => "km/L",
        "miles-per-us-gallon" => "mpg (US)",
        "miles-per-imperial-gallon" => "mpg (imp)",
        "kwh-per-100-km" => "kWh/100 km",
        "miles-per-kwh" => "mi/kWh",
        _ => "",
    }
}

fn unused(words: &Words, unused: &UnusedSpanView) -> String {
    let why = words.say(&format!("cli-apart-{}", unused.why), &[]);
    let args = [("from", Arg::from(&unused.from)), ("to", (&unused.to).into()), ("why", why.into())];
    words.say("cli-unused", &args)
}

fn alarm(words: &Words, alarm: &AlarmView) -> String {
    let args = [
        ("since", Arg::from(&alarm.since)),
        ("likely", (&alarm.likely).into()),
        ("low", (&alarm.size.low).into()),
        ("high", (&alarm.size.high).into()),
    ];
    words.say("cli-uses-more", &args)
}

/// Whether a visit helped, or what let codes be cleared, never as a bare percentage.
fn helped(words: &Words, helped: &HelpedView) -> String {
    let items: Vec<_> = helped.items.iter().map(|one| item(words, one)).collect();
    let verdict = match &helped.verdict {
        VerdictView::Better { low, high } => {
            words.say("cli-better", &[("low", low.into()), ("high", high.into())])
        }
        VerdictView::Worse { low, high } => {
            words.say("cli-worse", &[("low", low.into()), ("high", high.into())])
        }
        VerdictView::NoLargerThan { percent } => words.say("cli-no-larger", &[("percent", percent.into())]),
        VerdictView::CannotTellYet { more: Some(more) } => {
            words.say("cli-cannot-tell", &[("more", (*more).into())])
        }
        VerdictView::CannotTellYet { more: None } => words.say("cli-can-never-tell", &[]),
    };
    let near = match helped.others_near {
        0 => String::new(),
        others => words.say("cli-others-near", &[("others", others.into())]),
    };
    let told: Vec<_> = [verdict, near].into_iter().filter(|text| !text.is_empty()).collect();
    let what = match &helped.cleared {
        None => items.join(", "),
        Some(codes) => {
            words.say("cli-cleared", &[("codes", codes.join(", ").into()), ("count", codes.len().into())])
        }
    };
    format!("{}  {what}: {}", helped.day, told.join("; "))
}

/// The bills, then what the distance cost.
pub fn costs(words: &Words, view: &CostsView, bills: &[BillView]) -> Vec<String> {
    if bills.is_empty() {
        return vec![words.say("cli-no-costs", &[])];
    }
    let bills = bills.iter().map(|bill| self::bill(words, bill));
    bills.chain(view.distance.iter().map(|each| per_distance(words, each))).collect()
}

fn bill(words: &Words, bill: &BillView) -> String {
    let part = |part: &door::BillPartView| {
        format!("{} {}", words.say(&format!("cli-cost-{}", part.class), &[]), part.money.number)
    };
    let parts: Vec<_> = bill.parts.iter().filter(|part| part.minor != 0).map(part).collect();
    format!("{:<8}{:>12} {}  {}", bill.period, bill.total.number, bill.currency, parts.join(", "))
}

fn per_distance(words: &Words, each: &PerDistanceView) -> String {
    let unit = match each.distance.unit {
        door::UnitKey::Km => "km",
        door::UnitKey::Mi => "mi",
    };
    let price = format!("{} {}/{unit}", each.total, each.currency);
    let args = [
        ("price", Arg::from(price)),
        ("distance", crate::say::reading(each.distance).into()),
        ("from", (&each.from).into()),
        ("to", (&each.to).into()),
    ];
    words.say("cli-per-distance", &args)
}

/// Every value that was ever measured, with its limits.
pub fn measured(words: &Words, view: &MeasurementsView) -> Vec<String> {
    let known = view.parameters.iter().filter(|parameter| !parameter.points.is_empty());
    let lines: Vec<_> = known.flat_map(|known| parameter(words, known)).collect();
    if lines.is_empty() { vec![words.say("cli-no-measured", &[])] } else { lines }
}

fn parameter(words: &Words, parameter: &ParameterView) -> Vec<String> {
    let ParameterView { key, unit, limits, points, drift, .. } = parameter;
    let name = words.say(&format!("cli-parameter-{key}"), &[]);
    let usual = match (&limits.low, &limits.high) {
        (Some(low), Some(high)) => Some(format!("{low} … {high} {unit}")),
        (Some(low), None) => Some(format!("≥ {low} {unit}")),
        (None, Some(high)) => Some(format!("≤ {high} {unit}")),
        (None, None) => None,
    };
    let head = match usual {
        Some(usual) => {
            let args =
                [("name", Arg::from(name)), ("usual", usual.into()), ("source", (&limits.source).into())];
            words.say("cli-parameter", &args)
        }
        None => name,
    };
    let point = |point: &door::MeasuredPoint| {
        let judgement = words.say(&format!("cli-judged-{}", point.judgement), &[]);
        format!("  {}  {:>8} {unit}  {judgement}", point.day, point.value)
    };
    let drift = drift.as_ref().map(|drift| {
        let args = [("low", Arg::from(&drift.low)), ("high", (&drift.high).into()), ("unit", unit.into())];
        words.say("cli-drift", &args)
    });
    [head].into_iter().chain(points.iter().map(point)).chain(drift).collect()
}
