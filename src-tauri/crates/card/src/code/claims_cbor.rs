//! The claims in deterministic CBOR, with the integer keys of the card code, version 1.

use units::cbor::{self, Cbor, CborError, CborValue as Value, MapReader, MapWriter};
use units::{Day, DistanceUnit};

use super::claims::{
    Claims, Engine, Flags, HeadPrefix, InstrumentChange, Item, NEXT_MAX, NextDue, OdometerReading, Vehicle,
    Visit,
};

mod key {
    //! The keys of the claims.
    pub const ISSUED: u64 = 1;
    pub const VEHICLE: u64 = 3;
    pub const UNIT: u64 = 4;
    pub const LATEST: u64 = 5;
    pub const VISITS: u64 = 6;
    pub const VISITS_IN_BOOK: u64 = 7;
    pub const HEAD: u64 = 8;
    pub const NEXT: u64 = 9;
    pub const INSTRUMENTS: u64 = 10;
}

impl Claims {
    /// The claims as deterministic CBOR.
    pub fn to_cbor(&self) -> Vec<u8> {
        let next = &self.next[..self.next.len().min(NEXT_MAX)];
        let map = MapWriter::new()
            .put(key::ISSUED, &self.issued)
            .put(key::VEHICLE, &self.vehicle)
            .put(key::UNIT, &self.unit)
            .put(key::LATEST, &self.latest)
            .put(key::VISITS, &visits_to_cbor(&self.visits))
            .put(key::VISITS_IN_BOOK, &self.visits_in_book())
            .put_some(key::HEAD, self.head.as_ref())
            .put_list(key::NEXT, next)
            .put_list(key::INSTRUMENTS, &self.instruments);
        cbor::encode(&map.finish())
    }

    /// Reads claims; keys that this version does not know are ignored.
    ///
    /// An absent unit is the kilometre, and an absent number of visits the number carried.
    pub fn from_cbor(bytes: &[u8]) -> Result<Claims, CborError> {
        let value = cbor::decode(bytes)?;
        let map = MapReader::new(&value)?;
        let issued: Day = map.need(key::ISSUED)?;
        if issued.epoch() < 0 {
            return Err(CborError::Wrong(key::ISSUED));
        }
        let vehicle = map.need(key::VEHICLE)?;
        let unit = map.get(key::UNIT)?.unwrap_or(DistanceUnit::Kilometre);
        let latest = map.need(key::LATEST)?;
        let visits = visits_from_cbor(&map.need(key::VISITS)?).map_err(|_| CborError::Wrong(key::VISITS))?;
        let left_out = left_out(&map, visits.len())?;
        let next: Vec<NextDue> = map.list(key::NEXT)?;
        if next.len() > NEXT_MAX {
            return Err(CborError::Wrong(key::NEXT));
        }
        let head = map.get(key::HEAD)?;
        let instruments = map.list(key::INSTRUMENTS)?;
        Ok(Claims { issued, vehicle, unit, latest, visits, left_out, head, next, instruments })
    }
}

fn left_out(map: &MapReader<'_>, carried: usize) -> Result<u32, CborError> {
    let wrong = CborError::Wrong(key::VISITS_IN_BOOK);
    let Some(in_book) = map.get::<u32>(key::VISITS_IN_BOOK)? else { return Ok(0) };
    let carried = u32::try_from(carried).map_err(|_| wrong.clone())?;
    in_book.checked_sub(carried).ok_or(wrong)
}

/// Each visit as the difference to the one before it, the first as the difference to 1970-01-01 and 0.
fn visits_to_cbor(visits: &[Visit]) -> Value {
    let mut ordered: Vec<&Visit> = visits.iter().collect();
    ordered.sort_by_key(|visit| visit.day);
    let (mut day, mut reading) = (0, 0);
    let rows = ordered.into_iter().map(|visit| {
        let days = i64::from(visit.day.epoch()) - day;
        let distance = i64::from(visit.reading) - reading;
        (day, reading) = (i64::from(visit.day.epoch()), i64::from(visit.reading));
        let head = [Value::from(days), Value::from(distance), Value::from(visit.flags.bits())];
        Value::Array(head.into_iter().chain(visit.items.iter().map(Cbor::to_cbor)).collect())
    });
    Value::Array(rows.collect())
}

fn visits_from_cbor(value: &Value) -> Result<Vec<Visit>, CborError> {
    let rows = value.as_array().ok_or(CborError::Type)?;
    let mut visits: Vec<Visit> = Vec::with_capacity(rows.len());
    for row in rows {
        visits.push(visit_after(visits.last(), row)?);
    }
    Ok(visits)
}

fn visit_after(before: Option<&Visit>, row: &Value) -> Result<Visit, CborError> {
    let [days, distance, flags, items @ ..] = row.as_array().ok_or(CborError::Type)?.as_slice() else {
        return Err(CborError::Type);
    };
    let days = i32::from_cbor(days)?;
    if before.is_some() && days < 0 {
        return Err(CborError::Type);
    }
    let (day, reading) = before.map_or((0, 0), |visit| (visit.day.epoch(), visit.reading));
    let day = day.checked_add(days).ok_or(CborError::Type)?;
    Ok(Visit {
        day: Day::from_epoch(day).map_err(|_| CborError::Type)?,
        reading: reading.checked_add(i32::from_cbor(distance)?).ok_or(CborError::Type)?,
        flags: Flags::from_bits(u32::from_cbor(flags)?),
        items: items.iter().map(Item::from_cbor).collect::<Result<_, _>>()?,
    })
}

units::cbor_numbers!(Engine {
    Petrol = 0,
    Diesel = 1,
    PetrolHybrid = 2,
    DieselHybrid = 3,
    Gas = 4,
    Electric = 5,
    Other = 6,
});

impl Cbor for Vehicle {
    fn to_cbor(&self) -> Value {
        MapWriter::new()
            .put(1, &self.name)
            .put_some(2, self.vin.as_ref())
            .put_some(3, self.engine.as_ref())
            .put_some(4, self.description.as_ref())
            .put_some(5, self.first_use.as_ref())
            .finish()
    }
    fn from_cbor(value: &Value) -> Result<Vehicle, CborError> {
        let map = MapReader::new(value)?;
        Ok(Vehicle {
            name: map.need(1)?,
            vin: map.get(2)?,
            engine: map.get(3)?,
            description: map.get(4)?,
            first_use: map.get(5)?,
        })
    }
}

/// `[day, reading]`.
impl Cbor for OdometerReading {
    fn to_cbor(&self) -> Value {
        Value::Array(vec![self.day.to_cbor(), self.reading.to_cbor()])
    }
    fn from_cbor(value: &Value) -> Result<OdometerReading, CborError> {
        let [day, reading] = array(value)?;
        Ok(OdometerReading { day: Day::from_cbor(day)?, reading: i32::from_cbor(reading)? })
    }
}

/// The number of a catalogue item, or a text.
impl Cbor for Item {
    fn to_cbor(&self) -> Value {
        match self {
            Item::Catalogue(number) => Value::from(*number),
            Item::Own(name) => Value::from(name.as_str()),
        }
    }
    fn from_cbor(value: &Value) -> Result<Item, CborError> {
        match value.as_text() {
            Some(name) => Ok(Item::Own(name.to_owned())),
            None => u32::from_cbor(value).map(Item::Catalogue),
        }
    }
}

/// `[item, day or null, reading or null]`.
impl Cbor for NextDue {
    fn to_cbor(&self) -> Value {
        Value::Array(vec![self.item.to_cbor(), or_null(self.day.as_ref()), or_null(self.reading.as_ref())])
    }
    fn from_cbor(value: &Value) -> Result<NextDue, CborError> {
        let [item, day, reading] = array(value)?;
        Ok(NextDue { item: Item::from_cbor(item)?, day: unless_null(day)?, reading: unless_null(reading)? })
    }
}

/// `[day, old reading, new reading]`.
impl Cbor for InstrumentChange {
    fn to_cbor(&self) -> Value {
        Value::Array(vec![self.day.to_cbor(), self.old.to_cbor(), self.new.to_cbor()])
    }
    fn from_cbor(value: &Value) -> Result<InstrumentChange, CborError> {
        let [day, old, new] = array(value)?;
        Ok(InstrumentChange {
            day: Day::from_cbor(day)?,
            old: i32::from_cbor(old)?,
            new: i32::from_cbor(new)?,
        })
    }
}

impl Cbor for HeadPrefix {
    fn to_cbor(&self) -> Value {
        Value::Bytes(self.0.to_vec())
    }
    fn from_cbor(value: &Value) -> Result<HeadPrefix, CborError> {
        let bytes = value.as_bytes().ok_or(CborError::Type)?;
        bytes.as_slice().try_into().map(HeadPrefix).map_err(|_| CborError::Type)
    }
}

fn array<const N: usize>(value: &Value) -> Result<&[Value; N], CborError> {
    value.as_array().and_then(|items| items.as_slice().try_into().ok()).ok_or(CborError::Type)
}

fn or_null<T: Cbor>(value: Option<&T>) -> Value {
    value.map_or(Value::Null, Cbor::to_cbor)
}

fn unless_null<T: Cbor>(value: &Value) -> Result<Option<T>, CborError> {
    if value.is_null() { Ok(None) } else { T::from_cbor(value).map(Some) }
}
