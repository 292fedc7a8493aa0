//! Measured values as typed, and as pasted from a scan tool.

use book::content::{Came, MeasuredContent, MeasuredValue};
use rules::RulesError;
use rules::measured::{Judgement, Parameter, read};
use rules::upkeep::Milli;
use units::Day;

use super::{MOST_ROWS, past_day, too_many};
use crate::{MeasuredForm, MeasuredReadView, MeasuredValueForm, Refusal};

/// The values of a day.
pub(crate) fn measured(form: &MeasuredForm, today: Day) -> Result<MeasuredContent, Refusal> {
    if form.values.is_empty() {
        return Err(Refusal::new("measured-missing").at("values"));
    }
    if form.values.len() > MOST_ROWS {
        return Err(too_many("values"));
    }
    let values = form.values.iter().enumerate();
    let values =
        values.map(|(row, typed)| value(typed).map_err(|refusal| refusal.within(&format!("values.{row}"))));
    Ok(MeasuredContent {
        day: past_day(&form.day, today, "day")?,
        values: values.collect::<Result<_, _>>()?,
        came: if form.pasted { Came::Pasted } else { Came::Typed },
    })
}

/// What pasted lines say; refused when they say nothing at all.
pub(crate) fn read_measured(text: &str) -> Result<MeasuredReadView, Refusal> {
    let pasted = read(text);
    if pasted.values.is_empty() {
        return Err(Refusal::new("measured-unread").at("text"));
    }
    let form = |(parameter, value): &(Parameter, Milli)| MeasuredValueForm {
        parameter: parameter.key().to_owned(),
        value: value.to_string(),
    };
    Ok(MeasuredReadView { values: pasted.values.iter().map(form).collect(), unread: pasted.unread })
}

fn value(form: &MeasuredValueForm) -> Result<MeasuredValue, Refusal> {
    let parameter = Parameter::from_key(form.parameter.trim())
        .ok_or_else(|| Refusal::new("parameter").with("text", &form.parameter).at("parameter"))?;
    let value: Milli =
        form.value.trim().parse().map_err(|error: RulesError| Refusal::from(error).at("value"))?;
    if parameter.judge(value) == Judgement::Implausible {
        let (least, most) = parameter.plausible();
        let refusal = Refusal::new("measurement-range").with("value", value).with("unit", parameter.unit());
        return Err(refusal.with("least", least).with("most", most).at("value"));
    }
    Ok(MeasuredValue { parameter, value })
}
