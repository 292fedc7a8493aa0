//! Histories drawn from a seed, untidy ones too: for two readers to agree on, not for a person to judge.

use card::{Claims, Engine, Flags, InstrumentChange, Item, NextDue, OdometerReading, Visit};
use units::{Day, DistanceUnit};

use super::{History, well_kept};

const HISTORIES: u32 = 40;

pub fn histories() -> Vec<History> {
    (0..HISTORIES).map(drawn).collect()
}

/// A linear congruential generator (Numerical Recipes' constants, from memory); good enough to be untidy.
struct Dice(u32);

impl Dice {
    fn below(&mut self, bound: i32) -> i32 {
        self.0 = self.0.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        i32::try_from(self.0 >> 8).unwrap() % bound
    }

    fn one_in(&mut self, many: i32) -> bool {
        self.below(many) == 0
    }
}

fn drawn(seed: u32) -> History {
    let mut dice = Dice(seed.wrapping_mul(0x9E37_79B9));
    let visits = visits(&mut dice);
    let issued = Day::from_epoch(20_500 + dice.below(400)).unwrap();
    let last = visits.last().map_or((20_000, 5_000), |visit| (visit.day.epoch(), visit.reading));
    let latest = OdometerReading {
        day: Day::from_epoch(last.0 + dice.below(500) - 30).unwrap(),
        reading: last.1 + dice.below(20_000) - 1_000,
    };
    let claims = Claims {
        issued,
        unit: if dice.one_in(2) { DistanceUnit::Mile } else { DistanceUnit::Kilometre },
        latest,
        left_out: if dice.one_in(3) { u32::try_from(dice.below(40)).unwrap() } else { 0 },
        next: next(&mut dice),
        instruments: instruments(&mut dice),
        vehicle: card::Vehicle {
            engine: ENGINES.get(usize::try_from(dice.below(9)).unwrap()).copied(),
            first_use: dice.one_in(2).then(|| Day::from_epoch(13_000 + dice.below(5_000)).unwrap()),
            ..well_kept().vehicle
        },
        visits,
        head: None,
    };
    let today = issued.plus_days(dice.below(200) - 20);
    History { name: format!("drawn {seed}"), claims, today, asked: None }
}

const ENGINES: [Engine; 7] = [
    Engine::Petrol,
    Engine::Diesel,
    Engine::PetrolHybrid,
    Engine::DieselHybrid,
    Engine::Gas,
    Engine::Electric,
    Engine::Other,
];

fn visits(dice: &mut Dice) -> Vec<Visit> {
    let (mut day, mut reading) = (15_000 + dice.below(2_000), dice.below(60_000));
    let visits = (0..dice.below(24)).map(|_| {
        day += if dice.one_in(9) { dice.below(1_500) } else { dice.below(400) };
        reading += if dice.one_in(12) { dice.below(90_000) - 45_000 } else { dice.below(15_000) };
        let items = (0..dice.below(4)).map(|_| Item::Catalogue(u32::try_from(1 + dice.below(45)).unwrap()));
        let items = items.collect();
        let flags = Flags::from_bits(u32::try_from(dice.below(64)).unwrap());
        Visit { day: Day::from_epoch(day).unwrap(), reading, flags, items }
    });
    visits.collect()
}

fn next(dice: &mut Dice) -> Vec<NextDue> {
    let next = (0..dice.below(5)).map(|_| NextDue {
        item: Item::Catalogue(u32::try_from(1 + dice.below(45)).unwrap()),
        day: dice.one_in(2).then(|| Day::from_epoch(20_400 + dice.below(700)).unwrap()),
        reading: dice.one_in(2).then(|| dice.below(300_000)),
    });
    next.collect()
}

fn instruments(dice: &mut Dice) -> Vec<InstrumentChange> {
    let many = if dice.one_in(3) { dice.below(4) } else { 0 };
    let change = |_| InstrumentChange {
        day: Day::from_epoch(15_000 + dice.below(5_500)).unwrap(),
        old: dice.below(200_000),
        new: dice.below(100),
    };
    (0..many).map(change).collect()
}
