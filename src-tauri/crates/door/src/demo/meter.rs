//! What Oskar reads off his scan tool and his meter: a long-term trim that creeps up over more than a year.

use units::Day;

use super::What;
use super::people::Car;
use super::tell::Draft;
use crate::{MeasuredForm, MeasuredValueForm};

/// Days between two readings, and before today that of the last one.
const EVERY: i32 = 47;
const LAST: i32 = 19;

/// Short and long trim of the first bank in percent, the coolant in degrees Celsius, the battery at rest in volts;
/// oldest first. Trims come in steps of 100/128 (SAE J1979), shown to a tenth.
const VALUES: [[&str; 4]; 11] = [
    ["0.8", "0.0", "89", "12.68"],
    ["-1.6", "0.8", "90", "12.66"],
    ["2.3", "0.8", "89", "12.65"],
    ["0.0", "1.6", "88", "12.67"],
    ["1.6", "1.6", "90", "12.62"],
    ["-0.8", "2.3", "91", "12.63"],
    ["3.1", "3.1", "89", "12.60"],
    ["0.8", "3.9", "90", "12.61"],
    ["1.6", "3.9", "88", "12.58"],
    ["-0.8", "4.7", "89", "12.57"],
    ["2.3", "5.5", "90", "12.58"],
];

const PARAMETERS: [&str; 4] = ["short-trim-1", "long-trim-1", "coolant", "rest-voltage"];

/// Everything that was measured on a car, oldest first.
pub(super) fn measured(car: &Car, today: Day) -> Vec<Draft> {
    if !car.scanned {
        return Vec::new();
    }
    let days = (0_i32..).map(|time| today.plus_days(-LAST - time * EVERY));
    days.zip(VALUES.iter().rev())
        .map(|(day, values)| Draft::new(day, What::Measured(form(day, values))))
        .collect()
}

fn form(day: Day, values: &[&str; 4]) -> MeasuredForm {
    let values = PARAMETERS.iter().zip(values).map(|(parameter, value)| MeasuredValueForm {
        parameter: (*parameter).to_owned(),
        value: (*value).to_owned(),
    });
    MeasuredForm { day: day.to_string(), values: values.collect(), pasted: false }
}
