//! What is offered: every field with how sure it is and where it stands. The owner decides.

use units::{Currency, Day, Distance, DistanceUnit, Money, Quantity, UnitError, Volume, VolumeUnit};

use crate::text::Area;

/// How far a field can be believed before the owner has looked at it.
///
/// The levels say what speaks for a value, not how likely it is; the letters' own confidence is no proof, because a
/// reader of letters is as confident of a wrong one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Sure {
    /// A guess: nothing names the field, letters were mended to read it, or something speaks against it.
    Doubtful,
    /// Its place or its label says so, and nothing speaks against it, but nothing else confirms it.
    Likely,
    /// Confirmed twice: two things printed apart from each other agree, or it was known before.
    Sure,
}

/// A value that was read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Field<T> {
    /// The value.
    pub value: T,
    /// How far it can be believed.
    pub sure: Sure,
    /// Where it stands. For a value that was concluded, what it was concluded from.
    pub area: Area,
}

/// A country by its two letters of ISO 3166-1.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Country([u8; 2]);

impl Country {
    /// The country with these two letters, in either case; `None` when they are not two letters.
    pub fn new(code: &str) -> Option<Country> {
        let upper = code.trim().to_ascii_uppercase();
        let two = <[u8; 2]>::try_from(upper.as_bytes()).ok()?;
        two.iter().all(u8::is_ascii_uppercase).then_some(Country(two))
    }

    /// The two letters, in capitals.
    pub fn code(&self) -> &str {
        std::str::from_utf8(&self.0).unwrap_or_default()
    }
}

/// A shop that the household has bought from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct KnownShop<'a> {
    /// Its name, as the owner writes it.
    pub name: &'a str,
    /// Where it stands, which decides in what order it prints day and month.
    pub country: Option<Country>,
}

/// What is known before the receipt is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Known<'a> {
    /// The day on which it is read: no receipt is from a later one, but for a day's difference of time zones.
    pub today: Day,
    /// The household's currency, for a receipt that prints none.
    pub currency: Option<Currency>,
    /// The household's country: of two readings of a day, its own order is offered first.
    pub country: Option<Country>,
    /// Shops that the household knows.
    pub shops: &'a [KnownShop<'a>],
    /// Numbers of parts that this car has had, or that its sheet names.
    pub numbers: &'a [&'a str],
}

impl Known<'_> {
    /// Nothing but the day on which it is read.
    pub const fn nothing(today: Day) -> Known<'static> {
        Known { today, currency: None, country: None, shops: &[], numbers: &[] }
    }
}

/// The day of the sale.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DayRead {
    /// There is one way to read it.
    One(Day),
    /// Day and month can change places, and nothing says which is which: the owner is asked.
    Either {
        /// The reading to offer first.
        likelier: Day,
        /// The other.
        other: Day,
    },
}

/// A tax on the sale.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tax {
    /// Its rate in hundredths of a percent, if printed: 1900 is 19 %.
    pub rate: Option<u32>,
    /// The tax itself.
    pub amount: Money,
    /// What it was worked out from, if printed.
    pub net: Option<Money>,
}

/// The price of a litre or a gallon.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PerVolume {
    /// In thousandths of the currency's main unit, as a pump prints it: 1789 and EUR is 1.789 EUR.
    pub thousandths: i64,
    /// The currency.
    pub currency: Currency,
    /// What it is the price of one of.
    pub per: VolumeUnit,
}

/// What was bought, one by one.
#[derive(Debug, Clone, PartialEq)]
pub struct Item {
    /// How it is described, as printed, without the figures of the columns.
    pub text: String,
    /// How many or how much.
    pub quantity: Option<Quantity>,
    /// The price of one.
    pub unit_price: Option<Money>,
    /// The price of the line; negative for what is taken off.
    pub price: Money,
    /// The number of the part.
    pub number: Option<Field<String>>,
    /// How far its price can be believed; its number has a certainty of its own.
    pub sure: Sure,
    /// Where the line stands: one row, or the two or three that belong together.
    pub area: Area,
}

/// What kind of fuel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum FuelKind {
    /// Petrol of any octane number.
    Petrol,
    /// Diesel.
    Diesel,
    /// Petrol that is mostly ethanol, as E85.
    Ethanol,
    /// Liquefied petroleum gas.
    Lpg,
    /// Natural gas.
    NaturalGas,
}

/// A fill at a pump.
#[derive(Debug, Clone, PartialEq)]
pub struct Fuel {
    /// How much went in, and the unit in which the pump counted.
    pub volume: Option<Field<(Volume, VolumeUnit)>>,
    /// The price of one litre or gallon.
    pub price: Option<Field<PerVolume>>,
    /// What the fuel cost.
    pub total: Option<Field<Money>>,
    /// What kind of fuel.
    pub kind: Option<Field<FuelKind>>,
    /// The product as printed.
    pub product: Option<Field<String>>,
}

/// What was compared with what.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum CheckKind {
    /// The sum of the lines, with the total or with the sum printed before tax.
    Lines,
    /// Net and tax together, with the total.
    NetAndTax,
    /// What was paid, less the change, with the total.
    Paid,
    /// Volume times price, with what the fuel cost.
    Fuel,
}

/// A sum that was checked. A mismatch is shown, and never put right silently.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Check {
    /// What was compared.
    pub kind: CheckKind,
    /// What the other figures come to.
    pub worked_out: Money,
    /// What is printed.
    pub printed: Money,
    /// Whether both agree, within what rounding explains.
    pub agrees: bool,
    /// Where the printed figure stands.
    pub area: Area,
}

/// What was read on a receipt: nothing in it has been confirmed by the owner.
#[derive(Debug, Clone, PartialEq)]
pub struct Receipt {
    /// The shop's name: as the household knows it, else as printed.
    pub shop: Option<Field<String>>,
    /// The day of the sale.
    pub day: Option<Field<DayRead>>,
    /// The currency of every amount. Printed, or concluded from the country, or the household's own.
    pub currency: Option<Field<Currency>>,
    /// What there was to pay.
    pub total: Option<Field<Money>>,
    /// The taxes on it, one a rate.
    pub taxes: Vec<Field<Tax>>,
    /// What was bought.
    pub items: Vec<Item>,
    /// All numbers of parts, those of the items among them, from top to bottom.
    pub numbers: Vec<Field<String>>,
    /// The fill, on a pump receipt.
    pub fuel: Option<Fuel>,
    /// The odometer reading, and the unit in which it is printed or probably meant.
    pub odometer: Option<Field<(Distance, DistanceUnit)>>,
    /// The sums that could be checked.
    pub checks: Vec<Check>,
}

/// An amount in hundredths as an amount of a currency with other decimals.
pub(super) fn money(hundredths: i64, currency: Currency) -> Money {
    let minor = match currency.decimals() {
        0 => hundredths / 100,
        3 => hundredths.saturating_mul(10),
        _ => hundredths,
    };
    Money { minor, currency }
}

/// A currency by its letters, where the table of letters is written here.
pub(super) fn currency(code: &str) -> Result<Currency, UnitError> {
    code.parse()
}
