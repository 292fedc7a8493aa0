//! What a symptom, a cause and a check are.

use units::Distance;

use super::{Danger, Opening, Openings};
use crate::upkeep::{Catalogue, Caution, Engines};
use crate::vehicle::{EngineKind, Fitting, Vehicle};

/// Something that an owner sees, hears, smells or feels.
#[derive(Debug, Clone, PartialEq)]
pub struct Symptom {
    /// Its name in files, commands and the words (`symptom-KEY`), which never changes.
    pub key: String,
    /// Under which heading it is asked for.
    pub about: About,
    /// Which cars can show it.
    pub engines: Engines,
    /// What else the car must have for it.
    pub only_if: Vec<Fitting>,
    /// The chance, above 0 and below 1, that a car with some other fault shows it too.
    pub anyway: f64,
    /// What must be read before any list when it shows.
    pub danger: Option<Danger>,
}

/// The headings under which symptoms are asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(missing_docs)]
pub enum About {
    Starting,
    Running,
    Smoke,
    Fluids,
    Temperature,
    Lamps,
    Noises,
    Vibration,
    Steering,
    Brakes,
    Gears,
    Smells,
    Electrics,
    Cabin,
    ElectricDrive,
}

/// What can be at fault.
#[derive(Debug, Clone, PartialEq)]
pub struct Cause {
    /// Its name in files, commands and the words (`cause-KEY`), which never changes.
    pub key: String,
    /// How often it turns up.
    pub rates: Rates,
    /// What else the car must have for it.
    pub only_if: Vec<Fitting>,
    /// What makes it more likely.
    pub growth: Growth,
    /// How likely it alone brings about each symptom, by the symptom's place in the table: above 0 and below
    /// 1.
    pub(super) shows: Vec<(usize, f64)>,
    /// The numbers of the catalogue items that raise it when overdue.
    pub overdue: Vec<u32>,
    /// The numbers of the catalogue items that raise it when done lately.
    pub touched: Vec<u32>,
    /// The checks that can find it, by their places in the table, with the chance that they do: above 0 and
    /// below 1.
    pub(super) found_by: Vec<(usize, f64)>,
    /// What mends it.
    pub mend: Mend,
}

/// In how many of a thousand cars of middle age a cause turns up in a year; `None` where cars of that kind
/// cannot have it.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Rates {
    /// Petrol and gas.
    pub petrol: Option<f64>,
    /// Diesel.
    pub diesel: Option<f64>,
    /// Hybrids, as far as they have what the engine under their bonnet has.
    pub hybrid: Option<f64>,
    /// Electric cars.
    pub electric: Option<f64>,
}

/// What makes a cause more likely.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Growth {
    /// Nothing.
    Steady,
    /// The years.
    Age,
    /// The distance.
    Distance,
    /// Both: the geometric mean of the two.
    Both,
}

/// What mends a cause.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Mend {
    /// Any of these catalogue items, by their numbers.
    Items(Vec<u32>),
    /// The owner, without an item of the catalogue.
    Owner,
    /// A workshop.
    Workshop,
}

/// How to find out what is wrong.
#[derive(Debug, Clone, PartialEq)]
pub struct Check {
    /// Its name in files, commands and the words (`check-KEY`, `check-KEY-how`), which never changes.
    pub key: String,
    /// How long it takes a practised amateur once everything is open, in minutes, 1 to 240.
    pub minutes: u16,
    /// What it costs in money, put in minutes of the owner's time.
    pub money: u16,
    /// The keys of the tools it needs.
    pub tools: Vec<String>,
    /// What has to be opened first.
    pub opens: Openings,
    /// Whether the engine has to run or to be cranked for it.
    pub runs: bool,
    /// What can hurt someone at it.
    pub cautions: Vec<Caution>,
}

/// A tool that checks need.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Tool {
    /// Its name in files, commands and the words (`check-tool-KEY`).
    pub key: String,
    /// What getting hold of one is worth to someone who has none, in minutes.
    pub minutes: u16,
    /// Whether an amateur usually has it.
    pub usual: bool,
}

impl About {
    /// Every heading, in the order in which they are asked.
    pub const ALL: [About; 15] = [
        About::Starting,
        About::Running,
        About::Smoke,
        About::Fluids,
        About::Temperature,
        About::Lamps,
        About::Noises,
        About::Vibration,
        About::Steering,
        About::Brakes,
        About::Gears,
        About::Smells,
        About::Electrics,
        About::Cabin,
        About::ElectricDrive,
    ];

    /// Its name in the words (`about-KEY`).
    pub const fn key(self) -> &'static str {
        match self {
            About::Starting => "starting",
            About::Running => "running",
            About::Smoke => "smoke",
            About::Fluids => "fluids",
            About::Temperature => "temperature",
            About::Lamps => "lamps",
            About::Noises => "noises",
            About::Vibration => "vibration",
            About::Steering => "steering",
            About::Brakes => "brakes",
            About::Gears => "gears",
            About::Smells => "smells",
            About::Electrics => "electrics",
            About::Cabin => "cabin",
            About::ElectricDrive => "electric-drive",
        }
    }
}

impl Symptom {
    /// Whether this car can show it; what is not known of its equipment counts as fitted.
    pub fn is_for(&self, vehicle: &Vehicle) -> bool {
        self.engines.include(vehicle.engine) && fitted(&self.only_if, vehicle)
    }
}

impl Cause {
    /// In how many of a thousand such cars of middle age it turns up in a year; `None` where this car cannot
    /// have it.
    pub fn rate(&self, vehicle: &Vehicle) -> Option<f64> {
        self.rates.of(vehicle.engine).filter(|_| fitted(&self.only_if, vehicle))
    }

    /// What mends it on this car: catalogue items that the car does not have are passed over, and where none
    /// is left, a workshop mends it.
    pub fn mend_for(&self, vehicle: &Vehicle, catalogue: &Catalogue) -> Mend {
        let Mend::Items(items) = &self.mend else { return self.mend.clone() };
        let has = |number: &&u32| {
            catalogue.item(**number).is_some_and(|item| item.is_for(vehicle.engine, vehicle.equipment))
        };
        let items: Vec<_> = items.iter().filter(has).copied().collect();
        if items.is_empty() { Mend::Workshop } else { Mend::Items(items) }
    }
}

impl Rates {
    /// The rate for an engine. One of an unknown kind is taken to have what petrol and diesel engines both
    /// have, as often as the one that has it oftener.
    pub fn of(&self, engine: EngineKind) -> Option<f64> {
        let burns = self.petrol.is_some() || self.diesel.is_some();
        let hybrid = |own: Option<f64>| if burns { own.and(self.hybrid) } else { self.hybrid };
        match engine {
            EngineKind::Petrol | EngineKind::Gas => self.petrol,
            EngineKind::Diesel => self.diesel,
            EngineKind::PetrolHybrid => hybrid(self.petrol),
            EngineKind::DieselHybrid => hybrid(self.diesel),
            EngineKind::Electric => self.electric,
            EngineKind::Other => self.petrol.zip(self.diesel).map(|(petrol, diesel)| petrol.max(diesel)),
        }
    }
}

impl Growth {
    /// The bands that make up its factor, given those of age and of distance.
    pub(super) fn times(self, age: f64, distance: f64) -> f64 {
        match self {
            Growth::Steady => 1.0,
            Growth::Age => age,
            Growth::Distance => distance,
            Growth::Both => (age * distance).sqrt(),
        }
    }
}

impl Check {
    /// Whether it is done in a workshop.
    pub fn is_for_a_workshop(&self) -> bool {
        self.opens.contain(Opening::Workshop)
    }

    /// Whether the car has to be driven for it.
    pub fn is_a_drive(&self) -> bool {
        self.opens.contain(Opening::Drive)
    }
}

/// Whether a car has all of these, as far as is known.
fn fitted(fittings: &[Fitting], vehicle: &Vehicle) -> bool {
    fittings.iter().all(|&fitting| vehicle.equipment.has(fitting) != Some(false))
}

/// A band: below its end, the rate is multiplied by so much.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Band {
    pub to: Option<f64>,
    pub times: f64,
}

/// The bands of age, in years, and of distance, in thousands of kilometres; each ends with one that has no
/// end.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Bands {
    pub age: Vec<Band>,
    pub distance: Vec<Band>,
}

impl Bands {
    /// The factors of age and of distance; 1 for what is not known.
    pub fn times(&self, years: Option<f64>, distance: Option<Distance>) -> (f64, f64) {
        let within = |bands: &[Band], value: f64| {
            let band = bands.iter().find(|band| band.to.is_none_or(|to| value < to));
            band.map_or(1.0, |band| band.times)
        };
        let age = years.map_or(1.0, |years| within(&self.age, years));
        let gone = distance.map_or(1.0, |distance| within(&self.distance, thousands(distance)));
        (age, gone)
    }
}

/// A distance in thousands of kilometres; what is lost in the last digits is far below the width of a band.
#[allow(clippy::cast_precision_loss)]
fn thousands(distance: Distance) -> f64 {
    distance.millimetres() as f64 / 1e9
}
