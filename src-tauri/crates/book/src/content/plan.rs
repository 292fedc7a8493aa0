//! A change of the plan.

use rules::upkeep::{Interval, Pin, PlanChange, PrintedDistance, Schedule, Setting};
use units::HalfMonths;
use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};

use super::visit::{item_from_cbor, item_to_cbor};

/// What the owner settled for one item.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlanContent(pub PlanChange);

/// What key 2 holds: 0 as the catalogue has it, 1 the interval under key 3, 2 not counted, 3 next on the day
/// under key 5, chosen on the day under key 6, or on no chosen day where they are left out.
const CATALOGUE: u8 = 0;
const INTERVAL: u8 = 1;
const OFF: u8 = 2;
const PINNED: u8 = 3;

impl Cbor for PlanContent {
    fn to_cbor(&self) -> CborValue {
        let (number, schedule, pin) = match self.0.setting {
            Setting::Catalogue => (CATALOGUE, None, None),
            Setting::Interval(schedule) => (INTERVAL, Some(schedule), None),
            Setting::Off => (OFF, None, None),
            Setting::Pinned(pin) => (PINNED, None, pin),
        };
        let every = schedule.map(|schedule| interval_to_cbor(schedule.every));
        let first = schedule.and_then(|schedule| schedule.first).map(interval_to_cbor);
        MapWriter::new()
            .put(1, &item_to_cbor(&self.0.item))
            .put(2, &number)
            .put_some(3, every.as_ref())
            .put_some(4, first.as_ref())
            .put_some(5, pin.map(|pin| pin.day).as_ref())
            .put_some(6, pin.map(|pin| pin.set).as_ref())
            .finish()
    }

    fn from_cbor(value: &CborValue) -> Result<PlanContent, CborError> {
        let map = MapReader::new(value)?;
        let item = item_from_cbor(&map.need(1)?).map_err(|_| CborError::Wrong(1))?;
        let interval =
            |key| map.raw(key).map(interval_from_cbor).transpose().map_err(|_| CborError::Wrong(key));
        let setting = match map.need(2)? {
            CATALOGUE => Setting::Catalogue,
            INTERVAL => {
                let every = interval(3)?.ok_or(CborError::Missing(3))?;
                Setting::Interval(Schedule { first: interval(4)?, every })
            }
            OFF => Setting::Off,
            PINNED => {
                let pin = map.get(5)?.map(|day| Ok(Pin { day, set: map.need(6)? }));
                Setting::Pinned(pin.transpose()?)
            }
            _ => return Err(CborError::Wrong(2)),
        };
        Ok(PlanContent(PlanChange { item, setting }))
    }
}

/// A map: 1 the distance in whole units, 2 the unit in which it is printed, 3 half months.
fn interval_to_cbor(interval: Interval) -> CborValue {
    let distance = interval.distance();
    MapWriter::new()
        .put_some(1, distance.map(PrintedDistance::count).as_ref())
        .put_some(2, distance.map(PrintedDistance::unit).as_ref())
        .put_some(3, interval.time().map(|time| time.0).map(u32::from).as_ref())
        .finish()
}

fn interval_from_cbor(value: &CborValue) -> Result<Interval, CborError> {
    let map = MapReader::new(value)?;
    let distance = match map.get::<u32>(1)? {
        Some(count) => Some(PrintedDistance::new(count, map.need(2)?).map_err(|_| CborError::Wrong(1))?),
        None => None,
    };
    let time = map.get::<u32>(3)?.map(u16::try_from).transpose().map_err(|_| CborError::Wrong(3))?;
    Interval::new(distance, time.map(HalfMonths)).map_err(|_| CborError::Type)
}
