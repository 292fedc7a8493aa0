//! A change of the plan.

use rules::upkeep::{Interval, Pin, PlanChange, PrintedDistance, Schedule, Setting, Stakes};
use units::HalfMonths;
use units::cbor::{Cbor, CborError, CborValue, MapReader, MapWriter};

use super::visit::{item_from_cbor, item_to_cbor};

/// What the owner settled for one item.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlanContent(pub PlanChange);

/// What key 2 holds: 0 as the catalogue has it, 1 the interval under key 3, 2 not counted, 3 next on the day
/// under key 5, chosen on the day under key 6, or on no chosen day where they are left out. Key 7 says of an
/// interval what ignoring the item costs, from 0 for comfort to 5 for safety; left out, the owner did not say.
const CATALOGUE: u8 = 0;
const INTERVAL: u8 = 1;
const OFF: u8 = 2;
const PINNED: u8 = 3;

impl Cbor for PlanContent {
    fn to_cbor(&self) -> CborValue {
        let (number, schedule, stakes, pin) = match self.0.setting {
            Setting::Catalogue => (CATALOGUE, None, None, None),
            Setting::Interval(schedule) => (INTERVAL, Some(schedule), None, None),
            Setting::Own(schedule, stakes) => (INTERVAL, Some(schedule), Some(stakes.number()), None),
            Setting::Off => (OFF, None, None, None),
            Setting::Pinned(pin) => (PINNED, None, None, pin),
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
            .put_some(7, stakes.as_ref())
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
                let schedule = Schedule { first: interval(4)?, every };
                // A number that this version does not know says no more than one that was left out.
                match map.get::<u8>(7)?.and_then(Stakes::from_number) {
                    Some(stakes) => Setting::Own(schedule, stakes),
                    None => Setting::Interval(schedule),
                }
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

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]

    use rules::upkeep::{ItemRef, OwnName};
    use units::cbor;

    use super::*;

    fn own(setting: Setting) -> PlanContent {
        PlanContent(PlanChange { item: ItemRef::Own(OwnName::parse("Roof rack, bolts").unwrap()), setting })
    }

    fn yearly() -> Schedule {
        Schedule::every(Interval::new(None, Some(HalfMonths::months(12))).unwrap())
    }

    #[test]
    fn what_neglect_costs_is_kept_where_the_owner_said_it() {
        for stakes in Stakes::ALL {
            let said = own(Setting::Own(yearly(), stakes));
            assert_eq!(PlanContent::from_cbor(&said.to_cbor()).unwrap(), said);
        }
    }

    /// RFC 8949: a map of three pairs, the item `[1, text]` or the like under 1, 1 under 2, and under 3 a map that has
    /// 24 half months under 3; with the stakes a fourth pair, 7 and the number.
    #[test]
    fn an_interval_without_it_has_the_bytes_that_it_always_had() {
        let (plain, said) = (own(Setting::Interval(yearly())), own(Setting::Own(yearly(), Stakes::Safety)));
        let (plain, said) = (cbor::encode(&plain.to_cbor()), cbor::encode(&said.to_cbor()));
        assert_eq!(plain[0], 0xa3);
        assert!(plain.ends_with(&[0x02, 0x01, 0x03, 0xa1, 0x03, 0x18, 0x18]), "{plain:02x?}");
        assert_eq!(said, [&[0xa4], &plain[1..], &[0x07, 0x05]].concat());
        let newer = [&[0xa4], &plain[1..], &[0x07, 0x09]].concat();
        let read = PlanContent::from_cbor(&cbor::decode(&newer).unwrap()).unwrap();
        assert_eq!(read, own(Setting::Interval(yearly())), "a number of a newer version");
    }
}
