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
    /// Its kind, where the item tells kinds apart; empty otherwise.
    pub(super) kind: &'static str,
}

const fn part(name: &'static str, maker: &'static str, number: &'static str, price: i64) -> Part {
    Part { name, maker, number, quantity: "1", measure: "piece", price, serves: None, kind: "" }
}

const fn several(quantity: &'static str, measure: &'static str, part: Part) -> Part {
    Part { quantity, measure, ..part }
}

const fn serving(item: u32, part: Part) -> Part {
    Part { serves: Some(item), ..part }
}

const fn of_kind(kind: &'static str, part: Part) -> Part {
    Part { kind, ..part }
}

const KESTREL: &str = "Kestrel & Moor";
const QUILLANE: &str = "Quillane";
const VOSSWICK: &str = "Vosswick";
const MARROWBY: &str = "Marrowby";
const PELLAMY: &str = "Pellamy";
const HADDERLEY: &str = "Hadderley";
const OXMERE: &str = "Oxmere";

pub(super) const PETROL_OIL_WIPERS: &[Part] = &[
    serving(1, part("Oil filter", KESTREL, "KM 4471-B", 780)),
    serving(
        1,
        of_kind(
            "standard-oil",
            several("4.2", "litre", part("Engine oil 5W-30", QUILLANE, "QL 530-F4", 3_690)),
        ),
    ),
    serving(1, part("Drain plug washer", KESTREL, "KM 0016", 90)),
    serving(18, part("Wiper blade 600 mm", PELLAMY, "P600 R", 1_350)),
    serving(18, part("Wiper blade 400 mm", PELLAMY, "P400 L", 1_120)),
];
pub(super) const PETROL_AIR: &[Part] = &[
    serving(2, part("Engine air filter", KESTREL, "KM 2208-A", 1_490)),
    serving(36, part("Petrol system cleaner", QUILLANE, "QL P-30", 890)),
];
pub(super) const PETROL_CABIN: &[Part] = &[part("Cabin filter, charcoal", KESTREL, "KM 7719-C", 1_890)];
pub(super) const GREASE: &[Part] = &[part("Spray grease for hinges", QUILLANE, "QL H-40", 690)];
pub(super) const PETROL_PLUGS: &[Part] =
    &[of_kind("iridium", several("3", "piece", part("Spark plug, iridium", VOSSWICK, "VW-S 311", 4_140)))];
pub(super) const PETROL_BATTERY: &[Part] =
    &[of_kind("agm-battery", part("AGM battery 12 V 60 Ah", HADDERLEY, "HB 60-680 A", 13_950))];
pub(super) const PETROL_BRAKES: &[Part] = &[
    serving(51, several("1", "set", part("Brake pads, front", MARROWBY, "MB 1180-F", 3_980))),
    serving(52, several("2", "piece", part("Brake disc, front", MARROWBY, "MB 2260-F", 8_420))),
];
pub(super) const PETROL_TYRES: &[Part] = &[
    several("4", "piece", part("Summer tyre 185/60 R 15", OXMERE, "OX-S 1860", 26_400)),
    several("4", "piece", part("Winter tyre 185/60 R 15", OXMERE, "OX-W 1860", 28_400)),
];
pub(super) const PETROL_HOSE: &[Part] = &[part("Coolant hose, upper", KESTREL, "KM 3818-H", 2_180)];
pub(super) const PETROL_GEARBOX: &[Part] =
    &[several("2.1", "litre", part("Gearbox oil 75W", QUILLANE, "QL G75", 4_150))];
pub(super) const PETROL_COOLANT: &[Part] = &[of_kind(
    "long-life-coolant",
    several("5.5", "litre", part("Coolant, long life, ready mixed", QUILLANE, "QL K-5 L", 3_300)),
)];
pub(super) const BRAKE_FLUID: &[Part] =
    &[several("1", "litre", part("Brake fluid DOT 4", MARROWBY, "MB F4-1", 1_290))];

pub(super) const DIESEL_OIL: &[Part] = &[
    serving(1, part("Oil filter element", KESTREL, "KM 5530-D", 1_190)),
    serving(
        1,
        of_kind(
            "long-life-oil",
            several("5.6", "litre", part("Engine oil 5W-30, low ash", QUILLANE, "QL 530-D5", 5_480)),
        ),
    ),
    serving(1, part("Drain plug washer", KESTREL, "KM 0021", 110)),
    serving(37, part("Diesel system cleaner", QUILLANE, "QL D-30", 940)),
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
pub(super) const DIESEL_BELTS: &[Part] = &[
    serving(11, several("1", "set", part("Timing belt kit with rollers", KESTREL, "KM 9917-T", 14_900))),
    serving(11, part("Water pump", KESTREL, "KM 3305-W", 8_750)),
    serving(41, of_kind("ribbed-belt", part("Ribbed belt 6 PK", KESTREL, "KM 6151-R", 2_240))),
];
pub(super) const DIESEL_TYRES: &[Part] =
    &[several("4", "piece", part("All-season tyre 205/60 R 16", OXMERE, "OX-4S 2060", 39_600))];
pub(super) const DIESEL_BATTERY: &[Part] =
    &[of_kind("flooded-battery", part("Battery 12 V 74 Ah", HADDERLEY, "HB 74-680", 11_800))];
pub(super) const DIESEL_PADS_FRONT: &[Part] =
    &[several("1", "set", part("Brake pads, front", MARROWBY, "MB 1322-F", 4_760))];
pub(super) const DIESEL_PADS_REAR: &[Part] =
    &[several("1", "set", part("Brake pads, rear", MARROWBY, "MB 1323-R", 3_940))];
pub(super) const DIESEL_BRAKES_FRONT: &[Part] = &[
    serving(51, several("1", "set", part("Brake pads, front", MARROWBY, "MB 1322-F", 4_760))),
    serving(52, several("2", "piece", part("Brake disc, front", MARROWBY, "MB 2288-F", 10_300))),
];
pub(super) const DIESEL_BRAKES: &[Part] = &[
    serving(10, several("1", "litre", part("Brake fluid DOT 4", MARROWBY, "MB F4-1", 1_290))),
    serving(
        9,
        of_kind(
            "inorganic-coolant",
            several("7", "litre", part("Coolant, ready mixed", QUILLANE, "QL K-7", 4_200)),
        ),
    ),
];
pub(super) const DIESEL_STEERING: &[Part] = &[
    serving(49, several("1", "litre", part("Power steering fluid", QUILLANE, "QL S-1", 1_450))),
    serving(49, part("Return hose, steering", KESTREL, "KM 3944-H", 2_690)),
];
