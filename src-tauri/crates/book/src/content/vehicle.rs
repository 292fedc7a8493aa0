//! What is known of a vehicle.

use std::collections::BTreeMap;

use rules::vehicle::{Condition, Conditions, EngineKind, Equipment, Vin};
use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};
use units::{Day, Distance, DistanceUnit};

/// Identity, instrument and use of a vehicle.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct VehicleContent {
    /// What the household calls it.
    pub name: String,
    /// Make, model and year as one text; may be empty.
    pub make_model: String,
    /// The vehicle identification number.
    pub vin: Option<Vin>,
    /// What drives it.
    pub engine: EngineKind,
    /// The unit of its instrument.
    pub unit: DistanceUnit,
    /// The day of first use.
    pub first_use: Option<Day>,
    /// The book goes back to the first use.
    pub from_new: bool,
    /// What the owner expects to drive in a year.
    pub yearly: Option<Distance>,
    /// How it is driven.
    pub conditions: Conditions,
    /// What it has and what it lacks.
    pub equipment: Equipment,
    /// What the owner knows of its torques, pressures and fluids, as he typed it, by the numbers of the guides'
    /// values; one that this version does not know is kept.
    pub values: BTreeMap<u32, String>,
}

impl VehicleContent {
    /// What the rules need to know of it, but for the day on which its book was begun.
    pub fn facts(&self) -> rules::vehicle::Vehicle {
        rules::vehicle::Vehicle {
            engine: self.engine,
            first_use: self.first_use,
            known_from_new: self.from_new,
            kept_since: None,
            unit: self.unit,
            equipment: self.equipment,
            conditions: self.conditions,
            yearly: self.yearly,
        }
    }
}

impl Cbor for VehicleContent {
    fn to_cbor(&self) -> CborValue {
        let (present, absent) = self.equipment.sums();
        MapWriter::new()
            .put(1, &self.name)
            .put_some(2, some_text(&self.make_model))
            .put_some(3, self.vin.map(|vin| vin.to_string()).as_ref())
            .put(4, &self.engine.number())
            .put(5, &self.unit)
            .put_some(6, self.first_use.as_ref())
            .put_some(7, self.from_new.then_some(&true))
            .put_some(8, self.yearly.as_ref())
            .put(9, &conditions_sum(self.conditions))
            .put_some(10, Some(present).filter(|sum| *sum > 0).map(u32::from).as_ref())
            .put_some(11, Some(absent).filter(|sum| *sum > 0).map(u32::from).as_ref())
            .put_list(12, &own_values(&self.values))
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<VehicleContent, CborError> {
        let map = MapReader::new(value)?;
        let vin: Option<String> = map.get(3)?;
        Ok(VehicleContent {
            name: map.need(1)?,
            make_model: map.get(2)?.unwrap_or_default(),
            vin: vin.map(|vin| Vin::parse(&vin)).transpose().map_err(|_| CborError::Wrong(3))?,
            engine: EngineKind::from_number(map.need(4)?).ok_or(CborError::Wrong(4))?,
            unit: map.need(5)?,
            first_use: map.get(6)?,
            from_new: map.get(7)?.unwrap_or(false),
            yearly: map.get(8)?,
            conditions: conditions_from(map.need(9)?).ok_or(CborError::Wrong(9))?,
            equipment: Equipment::from_sums(fitting_sum(&map, 10)?, fitting_sum(&map, 11)?)
                .ok_or(CborError::Wrong(11))?,
            values: map.list(12)?.into_iter().map(|OwnValue(number, text)| (number, text)).collect(),
        })
    }
}

/// `[number, text]`: a value of the car's own.
struct OwnValue(u32, String);

impl Cbor for OwnValue {
    fn to_cbor(&self) -> CborValue {
        CborValue::Array(vec![self.0.to_cbor(), self.1.to_cbor()])
    }

    fn from_cbor(value: &CborValue) -> Result<OwnValue, CborError> {
        match value.as_array().map(Vec::as_slice) {
            Some([number, text]) => Ok(OwnValue(Cbor::from_cbor(number)?, Cbor::from_cbor(text)?)),
            _ => Err(CborError::Type),
        }
    }
}

fn own_values(values: &BTreeMap<u32, String>) -> Vec<OwnValue> {
    values.iter().map(|(&number, text)| OwnValue(number, text.clone())).collect()
}

/// A sum of powers of two by the numbers of the fittings; 0 when it is left out.
fn fitting_sum(map: &MapReader<'_>, key: u64) -> Result<u16, CborError> {
    let sum: u32 = map.get(key)?.unwrap_or(0);
    u16::try_from(sum).map_err(|_| CborError::Wrong(key))
}

/// A text that has something to say.
pub(super) fn some_text(text: &String) -> Option<&String> {
    Some(text).filter(|text| !text.is_empty())
}

/// A sum: 1 short trips, 2 towing, 4 dust, 8 standing traffic.
fn conditions_sum(conditions: Conditions) -> u8 {
    let bits = Condition::ALL.iter().enumerate();
    bits.filter(|&(_, &condition)| conditions.has(condition)).map(|(bit, _)| 1 << bit).sum()
}

fn conditions_from(sum: u8) -> Option<Conditions> {
    let bits = Condition::ALL.iter().enumerate();
    (sum < 16)
        .then(|| bits.filter(|&(bit, _)| sum & (1 << bit) != 0).map(|(_, &condition)| condition).collect())
}
