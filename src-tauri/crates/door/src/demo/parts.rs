//! The parts that were fitted. Makers and numbers are invented.

/// A part as the counter sells it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Part {
    pub(super) name: &'static str,
    pub(super) maker: &'static str,
    pub(super) number: &'static str,
    pub(super) quantity: &'static str,
    /// As the form names it.
    pub(super) measure: &'static str,
    /// Minor units for all of it in the first year.
    pub(super) price: i64,
    /// The catalogue item that it serves, where the job has several.
    pub(super) serves: Option<u32>,
}

const fn part(name: &'static str, maker: &'static str, number: &'static str, price: i64) -> Part {
    Part { name, maker, number, quantity: "1", measure: "piece", price, serves: None }
}

const fn several(quantity: &'static str, measure: &'static str, part: Part) -> Part {
    Part { quantity, measure, ..part }
}

const fn serving(item: u32, part: Part) -> Part {
    Part { serves: Some(item), ..part }
}

const KESTREL: &str = "Kestrel & Moor";
const QUILLANE: &str = "Quillane";
const VOSSWICK: &str = "Vosswick";
const MARROWBY: &str = "Marrowby";
const PELLAMY: &str = "Pellamy";
const HADDERLEY: &str = "Hadderley";
const OXMERE: &str = "Oxmere";

pub(super) const PETROL_OIL: &[Part] = &[
    serving(1, part("Oil filter", KESTREL, "KM 4471-B", 780)),
    serving(1, several("4.2", "litre", part("Engine oil 5W-30", QUILLANE, "QL 530-F4", 3_690))),
    serving(1, part("Drain plug washer", KESTREL, "KM 0016", 90)),
];
pub(super) const PETROL_AIR: &[Part] = &[part("Engine air filter", KESTREL, "KM 2208-A", 1_490)];
pub(super) const PETROL_CABIN: &[Part] = &[part("Cabin filter, charcoal", KESTREL, "KM 7719-C", 1_890)];
pub(super) const PETROL_PLUGS: &[Part] =
    &[several("3", "piece", part("Spark plug", VOSSWICK, "VW-S 311", 2_640))];
pub(super) const PETROL_WIPERS: &[Part] = &[
    part("Wiper blade 600 mm", PELLAMY, "P600 R", 1_350),
    part("Wiper blade 400 mm", PELLAMY, "P400 L", 1_120),
];
pub(super) const PETROL_BATTERY: &[Part] = &[part("Battery 12 V 52 Ah", HADDERLEY, "HB 52-470", 8_950)];
pub(super) const PETROL_PADS: &[Part] = &[
    several("1", "set", part("Brake pads, front", MARROWBY, "MB 1180-F", 3_980)),
    several("2", "piece", part("Brake disc, front", MARROWBY, "MB 2260-F", 8_420)),
];
pub(super) const PETROL_GEARBOX: &[Part] =
    &[several("2.1", "litre", part("Gearbox oil 75W", QUILLANE, "QL G75", 4_150))];
pub(super) const COOLANT: &[Part] =
    &[several("5.5", "litre", part("Coolant, ready mixed", QUILLANE, "QL K-5", 3_300))];
pub(super) const BRAKE_FLUID: &[Part] =
    &[several("1", "litre", part("Brake fluid DOT 4", MARROWBY, "MB F4-1", 1_290))];

pub(super) const DIESEL_OIL: &[Part] = &[
    serving(1, part("Oil filter element", KESTREL, "KM 5530-D", 1_190)),
    serving(1, several("5.6", "litre", part("Engine oil 5W-30, low ash", QUILLANE, "QL 530-D5", 5_480))),
    serving(1, part("Drain plug washer", KESTREL, "KM 0021", 110)),
];
pub(super) const DIESEL_AIR_WIPERS: &[Part] = &[
    serving(2, part("Engine air filter", KESTREL, "KM 2341-A", 1_760)),
    serving(18, part("Wiper blade 650 mm", PELLAMY, "P650 R", 1_480)),
    serving(18, part("Wiper blade 500 mm", PELLAMY, "P500 L", 1_260)),
];
pub(super) const DIESEL_CABIN: &[Part] = &[part("Cabin filter", KESTREL, "KM 7802-C", 1_680)];
pub(super) const DIESEL_FUEL: &[Part] = &[part("Fuel filter with drain", KESTREL, "KM 6604-D", 3_870)];
pub(super) const DIESEL_GLOW: &[Part] =
    &[several("4", "piece", part("Glow plug", VOSSWICK, "VW-G 204", 6_760))];
pub(super) const DIESEL_BELT: &[Part] = &[
    several("1", "set", part("Timing belt kit with rollers", KESTREL, "KM 9917-T", 14_900)),
    part("Water pump", KESTREL, "KM 3305-W", 8_750),
];
pub(super) const DIESEL_TYRES: &[Part] =
    &[several("4", "piece", part("All-season tyre 205/60 R 16", OXMERE, "OX-4S 2060", 39_600))];
pub(super) const DIESEL_BATTERY: &[Part] = &[part("Battery 12 V 74 Ah", HADDERLEY, "HB 74-680", 11_800)];
pub(super) const DIESEL_PADS: &[Part] =
    &[several("1", "set", part("Brake pads, front", MARROWBY, "MB 1322-F", 4_760))];
pub(super) const DIESEL_BRAKES: &[Part] = &[
    serving(10, several("1", "litre", part("Brake fluid DOT 4", MARROWBY, "MB F4-1", 1_290))),
    serving(9, several("7", "litre", part("Coolant, ready mixed", QUILLANE, "QL K-7", 4_200))),
];
