//! Values that were read off the engine's computer or a meter on a day.

use rules::measured::Parameter;
use rules::upkeep::Milli;
use units::Day;
use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};

/// What was measured on a day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MeasuredContent {
    /// When.
    pub day: Day,
    /// The values, in the order in which they were put in.
    pub values: Vec<MeasuredValue>,
    /// How they came in.
    pub came: Came,
}

/// A value of one parameter.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct MeasuredValue {
    /// What was measured.
    pub parameter: Parameter,
    /// In thousandths of the parameter's unit.
    pub value: Milli,
}

/// How values came in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Came {
    /// Someone typed them.
    Typed,
    /// They were pasted from a scan tool's lines.
    Pasted,
}

units::cbor_numbers!(Came { Typed = 0, Pasted = 1 });

impl Cbor for MeasuredContent {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new().put(1, &self.day).put_list(2, &self.values).put(3, &self.came).finish()
    }

    fn from_cbor(value: &CborValue) -> Result<MeasuredContent, CborError> {
        let map = MapReader::new(value)?;
        Ok(MeasuredContent { day: map.need(1)?, values: map.list(2)?, came: map.need(3)? })
    }
}

/// A map: 1 the number of the parameter, 2 thousandths of its unit.
impl Cbor for MeasuredValue {
    fn to_cbor(&self) -> CborValue {
        MapWriter::new().put(1, &self.parameter.number()).put(2, &self.value.0).finish()
    }

    fn from_cbor(value: &CborValue) -> Result<MeasuredValue, CborError> {
        let map = MapReader::new(value)?;
        Ok(MeasuredValue {
            parameter: Parameter::from_number(map.need(1)?).ok_or(CborError::Wrong(1))?,
            value: super::visit::measured(map.need(2)?).map_err(|_| CborError::Wrong(2))?,
        })
    }
}
