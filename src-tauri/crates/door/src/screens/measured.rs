//! Values read off the engine's computer or a meter.

use book::MeasuredRow;
use rules::measured::{Drift, Jump, Measurement, Parameter, watch};

use super::places::vehicle_line;
use super::show::judgement_key;
use crate::{Door, DriftView, JumpView, LimitsView, MeasuredPoint, MeasurementsView, ParameterView, Refusal};

impl Door {
    pub(crate) fn measurements_view(&self, book: &str) -> Result<MeasurementsView, Refusal> {
        let car = self.car(book)?;
        let rows = self.shelf.measured(car.book)?;
        let of = |parameter| {
            let own = rows.iter().filter(move |row| row.parameter == parameter);
            parameter_view(parameter, &own.collect::<Vec<_>>())
        };
        Ok(MeasurementsView {
            vehicle: vehicle_line(&car),
            today: self.clock.today().to_string(),
            parameters: Parameter::ALL.into_iter().map(of).collect(),
        })
    }
}

fn parameter_view(parameter: Parameter, rows: &[&MeasuredRow]) -> ParameterView {
    let values: Vec<Measurement> = rows.iter().map(|row| row.measurement).collect();
    let watched = watch(parameter, &values);
    let limits = parameter.limits();
    ParameterView {
        key: parameter.key().to_owned(),
        unit: parameter.unit().to_owned(),
        limits: LimitsView {
            low: limits.low.map(|low| low.to_string()),
            high: limits.high.map(|high| high.to_string()),
            source: limits.source.to_owned(),
        },
        points: rows.iter().map(|row| point(row)).collect(),
        jumps: watched.jumps.iter().map(jump_view).collect(),
        drift: watched.drift.map(drift_view),
        learnt: watched.learnt,
    }
}

fn point(row: &MeasuredRow) -> MeasuredPoint {
    let Measurement { day, value } = row.measurement;
    MeasuredPoint {
        subject: row.subject.to_string(),
        day: day.to_string(),
        value: value.to_string(),
        milli: value.0,
        judgement: judgement_key(row.parameter.judge(value)).to_owned(),
    }
}

fn jump_view(jump: &Jump) -> JumpView {
    JumpView { since: jump.since.to_string(), raised: jump.raised.to_string(), size: jump.size.to_string() }
}

fn drift_view(drift: Drift) -> DriftView {
    DriftView { low: drift.low.to_string(), high: drift.high.to_string() }
}
