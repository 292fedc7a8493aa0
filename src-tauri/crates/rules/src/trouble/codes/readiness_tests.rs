//! Readiness bytes, against a maker's worked example.

use super::*;

use Monitor::{
    BoostPressure, Catalyst, Components, Evaporative, ExhaustRecirculation, ExhaustSensor, FuelSystem,
    Misfire, NitrogenOxides, OxidationCatalyst, OxygenHeater, OxygenSensor, ParticulateFilter, SecondaryAir,
};

/// A maker's service text for a car of 1999 prints these bytes bit by bit: lamp on, one code, the continuous
/// tests finished, five others supported and none of them finished.
#[test]
fn a_makers_worked_bytes_after_clearing() {
    let readiness = Readiness::from_bytes([0b1000_0001, 0b0000_0111, 0b0110_1101, 0b0110_1101]);
    assert_eq!(readiness.bytes(), [0x81, 0x07, 0x6D, 0x6D]);
    assert!(readiness.lamp());
    assert_eq!((readiness.codes(), readiness.ignition()), (1, Ignition::Spark));
    let five = [Catalyst, Evaporative, SecondaryAir, OxygenSensor, OxygenHeater];
    assert_eq!(readiness.unfinished(), five);
    assert_eq!(readiness.monitors()[..3], [(Misfire, true), (FuelSystem, true), (Components, true)]);
    assert_eq!(readiness.monitors().len(), 8);
}

/// The same car after its repair and a drive, computed.
#[test]
fn the_same_car_after_a_drive() {
    let readiness = Readiness::from_bytes([0x00, 0x07, 0x6D, 0x00]);
    assert!(!readiness.lamp() && readiness.is_complete());
    assert_eq!((readiness.codes(), readiness.monitors().len()), (0, 8));
}

/// SAE J1979, parameter 01: bits 4 to 6 of byte B say which continuous test is not finished, bit 3 that the
/// engine lights by compression.
#[test]
fn compression_ignition_has_tests_of_its_own() {
    let readiness = Readiness::from_bytes([0x02, 0b0101_1111, 0xFF, 0b0100_0001]);
    assert_eq!(readiness.ignition(), Ignition::Compression);
    assert_eq!((readiness.lamp(), readiness.codes()), (false, 2));
    let all = [
        (Misfire, false),
        (FuelSystem, true),
        (Components, false),
        (OxidationCatalyst, false),
        (NitrogenOxides, true),
        (BoostPressure, true),
        (ExhaustSensor, true),
        (ParticulateFilter, false),
        (ExhaustRecirculation, true),
    ];
    assert_eq!(readiness.monitors(), all);
}

#[test]
fn a_test_that_the_car_lacks_is_never_unfinished() {
    let readiness = Readiness::from_bytes([0x00, 0x70, 0x00, 0xFF]);
    assert!(readiness.monitors().is_empty() && readiness.is_complete());
}

/// 66 FR 18156, the numbers from memory.
#[test]
fn an_inspection_lets_one_or_two_pass() {
    let allowed = [1995, 1996, 2000, 2001, 2024].map(Readiness::unfinished_allowed);
    assert_eq!(allowed, [None, Some(2), Some(2), Some(1), Some(1)]);
}

#[test]
fn every_test_has_a_key_of_its_own() {
    let keys: std::collections::BTreeSet<_> = Monitor::ALL.into_iter().map(Monitor::key).collect();
    assert_eq!(keys.len(), Monitor::ALL.len());
}
