//! Consumption in every unit, against published and exact values.
#![allow(clippy::unwrap_used)]

use proptest::prelude::*;

use super::*;
use ConsumptionUnit::{
    KmPerLitre, KwhPer100Km, LitresPer100Km, MilesPerImperialGallon, MilesPerKwh, MilesPerUsGallon,
};

fn fuel(text: &str, unit: VolumeUnit, count: i64, of: DistanceUnit) -> Consumption {
    let volume = Volume::parse(text, unit).unwrap();
    Consumption::new(Amount::Volume(volume), Distance::whole(count, of)).unwrap()
}

fn litres(text: &str, kilometres: i64) -> Consumption {
    fuel(text, VolumeUnit::Litre, kilometres, DistanceUnit::Kilometre)
}

fn shown(consumption: Consumption, unit: ConsumptionUnit, decimals: u32) -> String {
    consumption.number(unit, decimals).unwrap()
}

/// unitpedia.com's calculator page and uk.ask.com: 60 L over 800 km are 7.5 L/100 km and 13.3 km/L; 600 km on
/// 40 L are 15 km/L.
#[test]
fn published_examples_come_out() {
    assert_eq!(shown(litres("60", 800), LitresPer100Km, 1), "7.5");
    assert_eq!(shown(litres("60", 800), KmPerLitre, 1), "13.3");
    assert_eq!(shown(litres("40", 600), KmPerLitre, 1), "15.0");
}

/// minus40.info: the mile and both gallons are exact, so that 1 mpg (US) is 112903/480 L/100 km and 1 mpg
/// (imperial) 56826125/201168. The table is worked out from these fractions; 25 mpg and the first fraction also
/// stand at aqua-calc.com.
#[test]
fn gallons_and_litres_meet_to_the_last_digit() {
    for (miles, per_us, per_imperial) in [
        (1, "235.214583", "282.480936"),
        (10, "23.521458", "28.248094"),
        (15, "15.680972", "18.832062"),
        (20, "11.760729", "14.124047"),
        (25, "9.408583", "11.299237"),
        (30, "7.840486", "9.416031"),
        (40, "5.880365", "7.062023"),
        (50, "4.704292", "5.649619"),
    ] {
        let of = |unit| shown(fuel("1", unit, miles, DistanceUnit::Mile), LitresPer100Km, 6);
        assert_eq!(of(VolumeUnit::UsGallon), per_us, "{miles} mpg (US)");
        assert_eq!(of(VolumeUnit::ImperialGallon), per_imperial, "{miles} mpg (imperial)");
    }
    for (typed, us, imperial) in
        [("5", "47.042917", "56.496187"), ("7.5", "31.361944", "37.664125"), ("10", "23.521458", "28.248094")]
    {
        assert_eq!(shown(litres(typed, 100), MilesPerUsGallon, 6), us, "{typed} L/100 km");
        assert_eq!(shown(litres(typed, 100), MilesPerImperialGallon, 6), imperial, "{typed} L/100 km");
    }
}

/// aqua-calc.com: 1 mpg (US) is 0.425143707 km/L, and 1 km/L is 2.35214584 mpg (US). NIST SP 811 (2008), appendix
/// B.8: an imperial gallon is 1.20095 US gallons.
#[test]
fn published_factors_come_out() {
    assert_eq!(shown(fuel("1", VolumeUnit::UsGallon, 1, DistanceUnit::Mile), KmPerLitre, 6), "0.425144");
    assert_eq!(shown(litres("1", 1), MilesPerUsGallon, 6), "2.352146");
    let one = fuel("1", VolumeUnit::UsGallon, 1, DistanceUnit::Mile);
    assert_eq!(shown(one, MilesPerImperialGallon, 5), "1.20095");
}

/// A page at calculconversion.com prints 22.5 L for 560 km at 10 L/100 km; 56 L is right, and 22.5 L would be
/// 4.0 L/100 km.
#[test]
fn the_page_with_the_wrong_litres_is_wrong() {
    assert_eq!(shown(litres("56", 560), LitresPer100Km, 3), "10.000");
    assert_ne!(shown(litres("22.5", 560), LitresPer100Km, 1), "10.0");
    assert_eq!(shown(litres("22.5", 560), LitresPer100Km, 1), "4.0");
}

/// Some pages have an old imperial gallon of 4.5460902819948 L; the exact one shows in the seventh digit.
#[test]
fn the_imperial_gallon_is_the_exact_one() {
    assert_eq!(VolumeUnit::ImperialGallon.picolitres(), 4_546_090_000_000);
}

/// 20 and 40 mpg over equal distances are 26.67 mpg, the harmonic mean, and not 30.
#[test]
fn a_mean_goes_over_the_distance() {
    let thirsty = fuel("5", VolumeUnit::UsGallon, 100, DistanceUnit::Mile);
    let frugal = fuel("2.5", VolumeUnit::UsGallon, 100, DistanceUnit::Mile);
    let mean = Consumption::mean([thirsty, frugal]).unwrap();
    assert_eq!(shown(mean, MilesPerUsGallon, 2), "26.67");
    assert_eq!(Consumption::mean([]), None);
}

#[test]
fn electricity_has_units_of_its_own() {
    let energy = Energy::parse("45.3").unwrap();
    let used =
        Consumption::new(Amount::Energy(energy), Distance::whole(250, DistanceUnit::Kilometre)).unwrap();
    assert_eq!(shown(used, KwhPer100Km, 2), "18.12");
    // 250 km are 155.342798 mi.
    assert_eq!(shown(used, MilesPerKwh, 4), "3.4292");
    assert_eq!(used.number(LitresPer100Km, 1), None);
    assert_eq!(litres("1", 1).number(KwhPer100Km, 1), None);
    assert_eq!(used.plus(litres("1", 1)), None);
}

#[test]
fn halves_are_rounded_up() {
    assert_eq!(shown(litres("7.25", 100), LitresPer100Km, 1), "7.3");
    assert_eq!(shown(litres("7.249", 100), LitresPer100Km, 1), "7.2");
}

#[test]
fn nothing_over_nothing_is_no_consumption() {
    let some = Amount::Volume(Volume::from_picolitres(1));
    assert_eq!(Consumption::new(some.none(), Distance::whole(1, DistanceUnit::Mile)), None);
    assert_eq!(Consumption::new(some, Distance::ZERO), None);
    assert_eq!(Consumption::new(some, Distance::from_millimetres(-1)), None);
}

proptest! {
    #[test]
    fn no_amount_and_no_distance_overflows(amount in 1..=i64::MAX, distance in 1..=i64::MAX, decimals in 0_u32..9) {
        let distance = Distance::from_millimetres(distance);
        for amount in [Amount::Volume(Volume::from_picolitres(amount)), Amount::Energy(Energy::from_watt_hours(amount))] {
            let used = Consumption::new(amount, distance).unwrap();
            for unit in ConsumptionUnit::ALL {
                let _ = used.number(unit, decimals);
            }
            prop_assert!(used.per_100_km() > 0.0);
        }
    }
}
