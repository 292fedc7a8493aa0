//! Fuel in entries: what was written before there were kinds and prices reads as before, byte for byte.
#![allow(clippy::unwrap_used)]

use units::cbor;

use super::*;

fn litres(number: &str) -> Volume {
    Volume::parse(number, VolumeUnit::Litre).unwrap()
}

/// The bytes of an entry as they were before kinds, prices and electricity: {1: 41.37 L, 2: 0, 4: 0}, by hand.
#[test]
fn what_the_first_entries_say_is_read_and_written_as_it_was() {
    let picolitres = 41_370_000_000_000_i64.to_be_bytes();
    let mut bytes = vec![0xa3, 0x01, 0x1b];
    bytes.extend(picolitres);
    bytes.extend([0x02, 0x00, 0x04, 0x00]);
    let fuel = Fuel::from_cbor(&cbor::decode(&bytes).unwrap()).unwrap();
    let filled = Filled::Volume { volume: litres("41.37"), unit: VolumeUnit::Litre, of: None };
    assert_eq!(fuel, Fuel { filled, price: None, total: None, fill: Fill::Full });
    assert_eq!(cbor::encode(&fuel.to_cbor()), bytes);
    assert_eq!(filled.taken(FuelKind::Diesel), Some(Taken::Diesel(litres("41.37"))));
    assert_eq!(filled.taken(FuelKind::Electric), None);
}

#[test]
fn every_kind_comes_back() {
    let currency = "EUR".parse().unwrap();
    let price = Some(UnitPrice::parse("1.749", currency).unwrap());
    let total = Some(Money::parse("72.36", currency).unwrap());
    let energy = Amount::Energy(Energy::parse("41.3").unwrap());
    for kind in FuelKind::ALL {
        let (amount, unit) = match kind {
            FuelKind::Electric => (energy, PumpUnit::KilowattHour),
            _ => (Amount::Volume(litres("41.37")), PumpUnit::Volume(VolumeUnit::ImperialGallon)),
        };
        let filled = Filled::new(Some(kind), amount, unit).unwrap();
        let fuel = Fuel { filled, price, total, fill: Fill::MissedBefore };
        assert_eq!(Fuel::from_cbor(&fuel.to_cbor()), Ok(fuel));
        assert_eq!((filled.kind(FuelKind::Petrol), filled.amount(), filled.unit()), (kind, amount, unit));
    }
}

#[test]
fn no_volume_is_electricity_and_no_energy_is_fuel() {
    let volume = Amount::Volume(litres("40"));
    let energy = Amount::Energy(Energy::parse("40").unwrap());
    let litre = PumpUnit::Volume(VolumeUnit::Litre);
    assert_eq!(Filled::new(Some(FuelKind::Electric), volume, litre), None);
    assert_eq!(Filled::new(Some(FuelKind::Diesel), energy, PumpUnit::KilowattHour), None);
    assert_eq!(Filled::new(None, volume, PumpUnit::KilowattHour), None);
    let electric = MapWriter::new().put(4, &Fill::Full).put(5, &FuelKind::Electric.number());
    assert_eq!(Fuel::from_cbor(&electric.finish()), Err(CborError::Missing(6)));
    let unknown = MapWriter::new().put(4, &Fill::Full).put(5, &9_u8);
    assert_eq!(Fuel::from_cbor(&unknown.finish()), Err(CborError::Wrong(5)));
}
