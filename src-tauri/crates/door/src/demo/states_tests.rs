//! How the household's items stand, by the rules themselves: something of every state, on any day.
#![allow(clippy::unwrap_used)]

use rules::running::{Instrument, OdometerStatus, Pace, Reading, Track};
use rules::upkeep::{
    Catalogue, Done, DueLine, Facts, Interval, ItemRef, OwnName, Plan, PlanChange, PrintedDistance, Schedule,
    Setting, State, due,
};
use rules::vehicle::{Conditions, EngineKind, Vehicle};
use units::{Distance, DistanceUnit, HalfMonths};

use super::*;

const MILES: DistanceUnit = DistanceUnit::Mile;

fn item(form: &ItemForm) -> ItemRef {
    match form {
        ItemForm::Catalogue(number) => ItemRef::Catalogue(*number),
        ItemForm::Own(name) => ItemRef::Own(OwnName::parse(name).unwrap()),
    }
}

fn setting(form: &PlanForm) -> Setting {
    match form {
        PlanForm::Handbook { then, .. } => {
            let distance =
                then.distance.parse().ok().map(|count| PrintedDistance::new(count, MILES).unwrap());
            let time = then.months.parse().ok().map(HalfMonths::months);
            Setting::Interval(Schedule::every(Interval::new(distance, time).unwrap()))
        }
        PlanForm::Off => Setting::Off,
        PlanForm::Catalogue => Setting::Catalogue,
    }
}

/// A car's book as the rules see it.
struct Book {
    vehicle: Vehicle,
    changes: Vec<PlanChange>,
    readings: Vec<Reading>,
    instruments: Vec<Instrument>,
    done: Vec<(ItemRef, Day)>,
}

impl Book {
    fn of(car: &DemoCar) -> Book {
        let petrol = car.vehicle.engine == "petrol";
        let unit = if petrol { DistanceUnit::Kilometre } else { MILES };
        let driven = car.vehicle.driven;
        let vehicle = Vehicle {
            engine: if petrol { EngineKind::Petrol } else { EngineKind::Diesel },
            first_use: car.vehicle.first_use.parse().ok(),
            known_from_new: car.vehicle.bought_new,
            unit,
            conditions: Conditions {
                short_trips: driven.short_trips,
                towing: driven.towing,
                dust: driven.dust,
                standing_traffic: driven.standing,
            },
            yearly: Some(Distance::whole(car.vehicle.yearly.parse().unwrap(), unit)),
        };
        let mut book = Book { vehicle, changes: vec![], readings: vec![], instruments: vec![], done: vec![] };
        book.read(&car.begins.to_string(), &car.vehicle.reading);
        car.steps.iter().for_each(|step| book.take(&step.what));
        book
    }

    fn take(&mut self, what: &What) {
        match what {
            What::Reading(form) => self.read(&form.day, &form.reading),
            What::Visit { form, .. } => {
                self.read(&form.day, &form.reading);
                self.done
                    .extend(form.items.iter().map(|form_item| (item(form_item), form.day.parse().unwrap())));
            }
            // What is struck out is always what was written just before.
            What::StrikeOut { .. } => drop(self.readings.pop()),
            What::Plan { item: of, change } => {
                self.changes.push(PlanChange { item: item(of), setting: setting(change) });
            }
            What::Instrument { day, old, new } => {
                let shown = |text: &str| Distance::parse_reading(text, self.vehicle.unit).unwrap();
                self.instruments.push(Instrument {
                    day: day.parse().unwrap(),
                    old: shown(old),
                    new: shown(new),
                });
            }
            What::Tray(_) | What::AmendVisit { .. } => {}
        }
    }

    fn read(&mut self, day: &str, shown: &str) {
        let shown = Distance::parse_reading(shown, self.vehicle.unit);
        let reading = |shown| Reading { day: day.parse().unwrap(), shown, status: OdometerStatus::Actual };
        self.readings.extend(shown.ok().map(reading));
    }

    fn due(&self, today: Day) -> Vec<DueLine> {
        let track = Track::new(&self.vehicle, &self.readings, &self.instruments);
        let done = self.done.iter().map(|(item, day)| Done {
            item: item.clone(),
            day: *day,
            travelled: track.on(*day),
        });
        due(&Facts {
            vehicle: &self.vehicle,
            plan: &Plan::new(Catalogue::shipped().unwrap(), &self.vehicle, &self.changes),
            done: &done.collect::<Vec<_>>(),
            track: &track,
            pace: &Pace::new(&self.vehicle, &track),
            today,
        })
    }
}

#[test]
fn something_is_overdue_due_soon_ahead_and_without_record() {
    for today in ["2026-11-25", "2024-02-29", "2025-03-01", "2031-01-01", "2027-07-15", "2026-04-20"] {
        let today: Day = today.parse().unwrap();
        let [petrol, diesel] = household(today).try_into().unwrap();
        let count =
            |car: &DemoCar, state| Book::of(car).due(today).iter().filter(|line| line.state == state).count();
        assert!(
            (1..=8).contains(&count(&petrol, State::Overdue)),
            "{today}: {}",
            count(&petrol, State::Overdue)
        );
        // No day lies a whole number of months before the leap day of a year after a common one.
        let leap_day = today.to_string().ends_with("02-29");
        assert!(leap_day || count(&petrol, State::Due) >= 1, "{today}");
        assert!(count(&petrol, State::Soon) >= 1, "{today}");
        assert!(count(&petrol, State::Ahead) >= 6, "{today}");
        assert_eq!(count(&petrol, State::NoRecord), 0, "{today}");
        assert!(
            (1..=8).contains(&count(&diesel, State::Overdue)),
            "{today}: {}",
            count(&diesel, State::Overdue)
        );
        assert!(count(&diesel, State::Soon) >= 1, "{today}");
        assert!(count(&diesel, State::Ahead) >= 6, "{today}");
        assert_eq!(count(&diesel, State::NoRecord), 4, "{today}");
    }
}
