//! The household hangs together on any day: order, readings, sums, states, papers.
#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;

use rules::upkeep::Catalogue;
use rules::vehicle::{CheckDigit, Vin};
use units::{Distance, DistanceUnit, Money};

use super::*;

/// Ordinary days, a leap day, the day after one, and the turn of a year.
const DAYS: [&str; 6] = ["2026-11-25", "2024-02-29", "2025-03-01", "2031-01-01", "2027-07-15", "2026-04-20"];

fn each(mut check: impl FnMut(Day, &DemoCar)) {
    for today in DAYS {
        let today = today.parse().unwrap();
        for car in &household(today) {
            check(today, car);
        }
    }
}

fn visits(car: &DemoCar) -> impl Iterator<Item = (&Step, &VisitForm, Option<&Receipt>)> {
    car.steps.iter().filter_map(|step| match &step.what {
        What::Visit { form, receipt } => Some((step, form, receipt.as_ref())),
        _ => None,
    })
}

fn receipts(car: &DemoCar) -> impl Iterator<Item = &Receipt> {
    car.steps.iter().filter_map(|step| match &step.what {
        What::Visit { receipt, .. } => receipt.as_ref(),
        What::Tray(receipt) => Some(receipt),
        _ => None,
    })
}

fn unit(car: &DemoCar) -> DistanceUnit {
    if car.vehicle.unit == "km" { DistanceUnit::Kilometre } else { DistanceUnit::Mile }
}

#[test]
fn steps_are_in_the_order_of_writing_and_nothing_lies_ahead() {
    each(|today, car| {
        assert!(car.steps.is_sorted_by_key(|step| step.written));
        assert!(car.steps.iter().all(|step| car.begins < step.written && step.written <= today));
        for (step, form, receipt) in visits(car) {
            let day: Day = form.day.parse().unwrap();
            assert!(car.begins < day && day <= step.written, "{day}");
            assert!(receipt.is_none_or(|receipt| receipt.day == day));
        }
    });
}

#[test]
fn the_same_day_gives_the_same_household() {
    let today = DAYS[0].parse().unwrap();
    assert_eq!(format!("{:?}", household(today)), format!("{:?}", household(today)));
    let receipt = household(today).iter().flat_map(receipts).next().unwrap().clone();
    assert_eq!(draw(&receipt), draw(&receipt));
}

/// What the odometer showed: the day, the reading, and whether it was struck out.
fn readings(car: &DemoCar) -> Vec<(Day, i64)> {
    let struck: BTreeSet<usize> = car.steps.iter().filter_map(|step| struck(&step.what)).collect();
    let read = car.steps.iter().enumerate().filter(|(at, _)| !struck.contains(at)).filter_map(|(_, step)| {
        let (day, reading) = match &step.what {
            What::Reading(form) => (&form.day, &form.reading),
            What::Visit { form, .. } if !form.reading.is_empty() => (&form.day, &form.reading),
            _ => return None,
        };
        Some((day.parse().unwrap(), Distance::parse_reading(reading, unit(car)).unwrap().floor(unit(car))))
    });
    let mut read: Vec<_> = read.collect();
    read.sort_unstable();
    read
}

fn struck(what: &What) -> Option<usize> {
    if let What::StrikeOut { of, .. } = what { Some(*of) } else { None }
}

#[test]
fn the_odometer_falls_only_where_its_instrument_was_replaced() {
    each(|_, car| {
        let replaced = car.steps.iter().find_map(|step| match &step.what {
            What::Instrument { day, old, new } => {
                Some((day.parse::<Day>().unwrap(), old.parse::<i64>().unwrap(), new.parse::<i64>().unwrap()))
            }
            _ => None,
        });
        let read = readings(car);
        let mut falls = 0;
        for pair in read.windows(2) {
            let [(from, before), (to, after)] = [pair[0], pair[1]];
            if after >= before {
                assert!(
                    after - before <= 320 * i64::from(to.days_since(from)),
                    "{before} to {after} by {to}"
                );
                continue;
            }
            falls += 1;
            let (day, old, new) = replaced.unwrap();
            assert!(from < day && day < to && before <= old && new <= after, "{before} to {after} by {to}");
        }
        assert_eq!(falls, usize::from(replaced.is_some()));
    });
}

#[test]
fn costs_and_receipts_are_the_sum_of_their_lines() {
    each(|_, car| {
        for (_, form, receipt) in visits(car).filter(|(_, form, _)| !form.cost.is_empty()) {
            let money = |text: &str| Money::parse(text, form.currency.parse().unwrap()).unwrap().minor;
            let parts: i64 = form.parts.iter().map(|part| money(&part.price)).sum();
            assert!(parts <= money(&form.cost) && (form.workshop.is_empty() == (parts == money(&form.cost))));
            if let Some(receipt) = receipt {
                assert_eq!(receipt.total().number(), form.cost);
                assert_eq!(receipt.currency.code(), form.currency);
            }
        }
        assert!(receipts(car).all(|receipt| receipt.total().minor > 0 && !receipt.lines.is_empty()));
    });
}

#[test]
fn items_exist_and_suit_the_engine() {
    let catalogue = Catalogue::shipped().unwrap();
    let known = |item: &ItemForm| match item {
        ItemForm::Catalogue(number) => assert!(catalogue.item(*number).is_some(), "{number}"),
        ItemForm::Own(name) => assert!((1..=60).contains(&name.chars().count()), "{name}"),
    };
    each(|_, car| {
        for step in &car.steps {
            match &step.what {
                What::Visit { form, .. } | What::AmendVisit { form, .. } => {
                    assert!(!form.items.is_empty());
                    form.items.iter().for_each(known);
                    for item in form.parts.iter().filter_map(|part| part.item.as_ref()) {
                        let same = |other: &ItemForm| format!("{other:?}") == format!("{item:?}");
                        assert!(form.items.iter().any(same), "{item:?}");
                    }
                }
                What::Plan { item, .. } => known(item),
                _ => {}
            }
        }
    });
}

#[test]
fn nothing_has_an_empty_name() {
    each(|_, car| {
        assert!(!car.vehicle.name.is_empty() && !car.vehicle.make_model.is_empty());
        for part in visits(car).flat_map(|(_, form, _)| &form.parts) {
            assert!(
                [&part.name, &part.maker, &part.number, &part.quantity].iter().all(|text| !text.is_empty())
            );
        }
        for receipt in receipts(car) {
            assert!(!receipt.shop.name.is_empty() && !receipt.number.is_empty());
            assert!(receipt.lines.iter().all(|line| !line.name.is_empty()));
        }
    });
}

#[test]
fn one_check_digit_is_right_and_one_is_not() {
    let cars = household(DAYS[0].parse().unwrap());
    let digit = |car: &DemoCar| Vin::parse(&car.vehicle.vin).unwrap().check_digit();
    assert_eq!(digit(&cars[0]), CheckDigit::Right);
    assert!(matches!(digit(&cars[1]), CheckDigit::Wrong { .. }));
}

#[test]
fn the_book_is_as_long_and_as_messy_as_a_real_one() {
    for today in DAYS {
        let cars = household(today.parse().unwrap());
        let count = |wanted: fn(&What) -> bool| {
            cars.iter().flat_map(|car| &car.steps).filter(|step| wanted(&step.what)).count()
        };
        let visits_in_all = count(|what| matches!(what, What::Visit { .. }));
        let fills = count(|what| matches!(what, What::Reading(_)));
        let kept: usize = cars.iter().map(|car| receipts(car).count()).sum();
        assert!((185..=225).contains(&visits_in_all), "{today}: {visits_in_all} visits");
        assert!((380..=480).contains(&fills), "{today}: {fills} fills");
        assert!((25..=35).contains(&kept), "{today}: {kept} receipts");
        assert_eq!(count(|what| matches!(what, What::Tray(_))), 2, "{today}");
        assert_eq!(count(|what| matches!(what, What::AmendVisit { .. })), 1, "{today}");
        assert_eq!(count(|what| matches!(what, What::StrikeOut { .. })), 1, "{today}");
        assert_eq!(count(|what| matches!(what, What::Instrument { .. })), 1, "{today}");
        let late = cars
            .iter()
            .flat_map(visits)
            .filter(|(step, form, _)| step.written.days_since(form.day.parse().unwrap()) > 30);
        assert!((3..=9).contains(&late.count()), "{today}");
    }
}

#[test]
fn what_refers_to_an_earlier_step_finds_it() {
    each(|_, car| {
        for (at, step) in car.steps.iter().enumerate() {
            match &step.what {
                What::AmendVisit { of, form, .. } => {
                    assert!(*of < at);
                    let What::Visit { form: wrong, .. } = &car.steps[*of].what else { panic!("no visit") };
                    assert_eq!((&wrong.day, &wrong.cost), (&form.day, &form.cost));
                    assert_ne!(format!("{wrong:?}"), format!("{form:?}"));
                }
                What::StrikeOut { of, .. } => {
                    assert!(*of < at && matches!(car.steps[*of].what, What::Reading(_)));
                }
                _ => {}
            }
        }
    });
}

/// From full tank to full tank without a missed fill (the method of Quebec's Ministry of Energy), in L/100 km.
#[test]
fn consumption_is_plausible_and_higher_in_winter() {
    for car in household(DAYS[0].parse().unwrap()) {
        let mut litres = [0.0, 0.0];
        let mut distance = [0.0, 0.0];
        let mut since: Option<(f64, f64)> = None;
        let scale = if car.vehicle.unit == "km" { 1.0 } else { 1.609_344 };
        for step in &car.steps {
            let What::Reading(ReadingForm { day, reading, fuel: Some(fuel), .. }) = &step.what else {
                continue;
            };
            let (at, taken) = (reading.parse::<f64>().unwrap() * scale, fuel.amount.parse::<f64>().unwrap());
            since = match (fuel.fill.as_str(), since) {
                ("part", Some((from, sum))) => Some((from, sum + taken)),
                ("part", None) => None,
                ("full", Some((from, sum))) if at > from && at - from < 3_000.0 => {
                    let winter = usize::from(matches!(&day[5..7], "12" | "01" | "02"));
                    let each = (sum + taken) / (at - from) * 100.0;
                    assert!((4.0..9.5).contains(&each), "{day}: {each} L/100 km");
                    litres[winter] += sum + taken;
                    distance[winter] += at - from;
                    Some((at, 0.0))
                }
                _ => Some((at, 0.0)),
            };
        }
        let [summer, winter] = [litres[0] / distance[0], litres[1] / distance[1]];
        assert!((1.04..1.15).contains(&(winter / summer)), "{summer} and {winter}");
    }
}

#[test]
fn a_receipt_is_a_photo_of_moderate_size() {
    let car = &household(DAYS[0].parse().unwrap())[1];
    let receipt = receipts(car).max_by_key(|receipt| receipt.lines.len()).unwrap();
    let bytes = draw(receipt);
    let photo = image::load_from_memory(&bytes).unwrap().to_rgb8();
    assert_eq!(photo.dimensions(), (900, 1_400));
    assert!((20_000..400_000).contains(&bytes.len()), "{} bytes", bytes.len());
    // Ink on the paper, and the paper lighter than the table around it.
    let dark = photo
        .enumerate_pixels()
        .filter(|(x, y, pixel)| (150..750).contains(x) && (120..700).contains(y) && pixel.0[0] < 90);
    assert!(dark.count() > 4_000);
    assert!(photo.get_pixel(772, 500).0[0] > photo.get_pixel(20, 700).0[0] + 60);
}
