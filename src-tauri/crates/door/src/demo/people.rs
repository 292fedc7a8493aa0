//! Who the household is, where it buys, and what it drives.
//!
//! Tamsin and Oskar Fennimore live in Port Senna, where cars count kilometres and bills are in euros. Oskar has
//! driven the small petrol car there since it was new. Tamsin's diesel estate came with her from Ellerwick, across
//! the water, four years into this story: it counts miles, and its older bills are in pounds.

use std::collections::BTreeMap;

use units::{Day, Distance, DistanceUnit, HalfMonths};

use super::jobs::Job;
use super::plans::Settled;
use super::receipt::Shop;
use super::{barge, pip, plans};
use crate::{DrivenForm, VehicleForm};

/// How many months of history the demo has.
const MONTHS: u16 = 9 * 12;
/// How many months before today Tamsin moved.
const MOVED: u16 = 5 * 12;

pub(super) const TOLLHOUSE: Shop =
    Shop { name: "Tollhouse Motors", street: "12 Harbour Road", town: "Port Senna" };
pub(super) const ROUND_BARN: Shop =
    Shop { name: "The Round Barn, Tyres", street: "3 Saltmarsh Way", town: "Port Senna" };
const NUTS: Shop = Shop { name: "Nuts & Washers", street: "9 Canal Street", town: "Port Senna" };
const BIRCH: Shop = Shop { name: "Birch & Daughters Garage", street: "4 Mill Lane", town: "Ellerwick" };
const FAIRLEAD: Shop = Shop { name: "Fairlead Motor Parts", street: "71 Tanner Row", town: "Ellerwick" };
const HERON: Shop = Shop { name: "Saltmarsh & Heron Mutual", street: "1 Lantern Square", town: "Port Senna" };
const OFFICE: Shop = Shop { name: "Port Senna Vehicle Office", street: "2 Town Steps", town: "Port Senna" };
const TANNER: Shop = Shop { name: "Tanner Row Mutual", street: "40 Tanner Row", town: "Ellerwick" };
const DESK: Shop = Shop { name: "Ellerwick Vehicle Desk", street: "6 Corn Hall", town: "Ellerwick" };

/// A car of the household, and how it is kept.
pub(super) struct Car {
    pub(super) vehicle: VehicleForm,
    pub(super) begins: Day,
    pub(super) start: Distance,
    pub(super) unit: DistanceUnit,
    pub(super) habits: Habits,
    pub(super) jobs: &'static [Job],
    /// What was settled for its plan.
    pub(super) plan: Vec<Settled>,
    /// The day on which its instrument was replaced.
    pub(super) replaced: Option<Day>,
    /// A reading was mistyped once, and struck out.
    pub(super) mistyped: bool,
    /// Its trims are read off now and then.
    pub(super) scanned: bool,
    /// A brake drags.
    pub(super) drags: Option<Drag>,
    /// The day from which it is kept in Port Senna.
    pub(super) moved: Day,
}

/// A time in which a car drank more than it should.
#[derive(Debug, Clone, Copy)]
pub(super) struct Drag {
    /// From this day ...
    pub(super) from: Day,
    /// ... up to the day on which it was put right.
    pub(super) mended: Day,
    /// Thousandths of what it drinks otherwise.
    pub(super) thirst: i64,
}

/// How a car is driven and what it drinks.
pub(super) struct Habits {
    /// Metres on an ordinary day.
    pub(super) daily: i64,
    /// Metres on a day of the summer holidays.
    pub(super) holiday: i64,
    /// Millilitres of fuel for 100 km in summer.
    pub(super) thirst: i64,
    /// Litres in a full tank.
    pub(super) tank: i64,
    /// Thousandths of the currency for a litre in the first year.
    pub(super) litre: i64,
}

/// A place with its shops and its money.
pub(super) struct Place {
    pub(super) currency: &'static str,
    pub(super) workshop: Shop,
    pub(super) counter: Shop,
    pub(super) insurer: Shop,
    pub(super) office: Shop,
}

impl Car {
    /// Where the car is kept on a day.
    pub(super) fn place(&self, day: Day) -> Place {
        if day < self.moved {
            Place { currency: "GBP", workshop: BIRCH, counter: FAIRLEAD, insurer: TANNER, office: DESK }
        } else {
            Place { currency: "EUR", workshop: TOLLHOUSE, counter: NUTS, insurer: HERON, office: OFFICE }
        }
    }
}

/// The day this many months before another, or as near to it as the calendar allows.
pub(super) fn months_before(day: Day, months: u16) -> Day {
    let latest = day.plus_days(-(i32::from(months) * 304) / 10);
    (-9..9)
        .map(|off| latest.plus_days(off))
        .find(|from| from.plus(HalfMonths::months(months)) >= day)
        .unwrap_or(latest)
}

/// The household's cars.
pub(super) fn cars(today: Day) -> [Car; 2] {
    [petrol(today), diesel(today)]
}

fn petrol(today: Day) -> Car {
    let begins = months_before(today, MONTHS);
    Car {
        vehicle: VehicleForm {
            name: "Pip".to_owned(),
            make_model: format!("Larkspur Pippin 1.2, {}", begins.ymd().0),
            vin: "ZZ9PPN120HL000417".to_owned(),
            engine: "petrol".to_owned(),
            unit: "km".to_owned(),
            first_use: begins.to_string(),
            bought_new: true,
            yearly: "8000".to_owned(),
            driven: DrivenForm { short_trips: true, ..DrivenForm::default() },
            fitted: fitted(pip::HAS, pip::LACKS),
            values: values(pip::VALUES),
            reading: "8".to_owned(),
        },
        begins,
        start: Distance::whole(8, DistanceUnit::Kilometre),
        unit: DistanceUnit::Kilometre,
        habits: Habits { daily: 20_000, holiday: 95_000, thirst: 6_600, tank: 42, litre: 1_389 },
        jobs: pip::JOBS,
        plan: plans::pip(begins, today),
        replaced: Some(today.plus_days(-1_003)),
        mistyped: false,
        scanned: true,
        drags: None,
        moved: begins,
    }
}

fn diesel(today: Day) -> Car {
    let begins = months_before(today, MONTHS).plus_days(17);
    let first_use = begins.plus_days(-1_180);
    Car {
        vehicle: VehicleForm {
            name: "The Barge".to_owned(),
            make_model: format!("Corvane Estuary 2.0 D, {}", first_use.ymd().0),
            vin: "ZZ9ESTZZZE1204773".to_owned(),
            engine: "diesel".to_owned(),
            unit: "mi".to_owned(),
            first_use: first_use.to_string(),
            bought_new: false,
            yearly: "11000".to_owned(),
            driven: DrivenForm { towing: true, ..DrivenForm::default() },
            fitted: fitted(barge::HAS, barge::LACKS),
            values: BTreeMap::new(),
            reading: "41386".to_owned(),
        },
        begins,
        start: Distance::whole(41_386, DistanceUnit::Mile),
        unit: DistanceUnit::Mile,
        habits: Habits { daily: 44_500, holiday: 210_000, thirst: 5_600, tank: 60, litre: 1_219 },
        jobs: barge::JOBS,
        plan: plans::barge(begins),
        replaced: None,
        mistyped: true,
        scanned: false,
        drags: Some(Drag {
            from: today.plus_days(-barge::DRAGS_SINCE),
            mended: today.plus_days(-barge::FREED),
            thirst: 1_120,
        }),
        moved: months_before(today, MOVED),
    }
}

/// The numbers of a car that its guides ask for.
fn values(known: &[(&str, &str)]) -> BTreeMap<String, String> {
    known.iter().map(|&(key, text)| (key.to_owned(), text.to_owned())).collect()
}

/// What a car has and what it lacks.
fn fitted(has: &[&str], lacks: &[&str]) -> BTreeMap<String, bool> {
    let said = |keys: &[&str], has| keys.iter().map(|&key| (key.to_owned(), has)).collect::<Vec<_>>();
    said(has, true).into_iter().chain(said(lacks, false)).collect()
}
