//! Papers that were filed, the PDF of one, and what was read on one: offered, never believed before the owner says so.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{MoneyView, WarnedView};

/// Papers that were filed.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct FiledView {
    /// Their lines: one for a photo, one a page for a document.
    pub papers: Vec<String>,
    /// `paper-known` for each that the book had already.
    pub warnings: Vec<String>,
}

/// The PDF of which a paper is a page.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct DocumentView {
    /// Which page of it the paper is, from 1.
    pub page: u32,
    /// How many pages it has; nothing where that cannot be told.
    pub pages: Option<u32>,
}

/// Everything read on a photo.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct ReceiptView {
    /// The rows of text, from top to bottom.
    pub rows: Vec<RowView>,
    /// What they mean.
    pub fields: FieldsView,
    /// The sums that could be checked.
    pub checks: Vec<CheckedView>,
    /// The numbers that the car's notes warn of, whether they stand on the photo or not: the owner may correct one.
    pub warned: Vec<WarnedView>,
}

/// A row of text.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct RowView {
    /// All of it.
    pub text: String,
    /// How sure its letters are, from 0 to 1: no proof.
    pub sure: f32,
    /// Its stretches from left to right.
    pub stretches: Vec<StretchView>,
}

/// Words that stand close together.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct StretchView {
    /// What was read.
    pub text: String,
    /// How sure its letters are, from 0 to 1.
    pub sure: f32,
    /// Where it stands.
    pub area: AreaView,
}

/// Left, top, width and height in shares of the photo's width and height, each from 0 to 1.
pub type AreaView = [f32; 4];

/// A value that was read.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct FieldView {
    /// The value, as a form takes it.
    pub value: String,
    /// `sure`: two things printed apart agree; `likely`: its place or label says so; `doubtful`: a guess.
    pub sure: String,
    /// Where it stands.
    pub area: AreaView,
}

/// What the rows mean. What was not found is left out.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct FieldsView {
    /// The shop.
    pub shop: Option<FieldView>,
    /// The day of the sale.
    pub day: Option<DayReadView>,
    /// The currency of every amount.
    pub currency: Option<FieldView>,
    /// What there was to pay.
    pub total: Option<AmountView>,
    /// The taxes, one a rate.
    pub tax: Vec<AmountView>,
    /// What was bought.
    pub lines: Vec<ReceiptLineView>,
    /// All part numbers.
    pub numbers: Vec<FieldView>,
    /// The fill, on a pump receipt.
    pub fuel: Option<FuelReadView>,
    /// The odometer reading.
    pub odometer: Option<OdometerReadView>,
}

/// A day that was read.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct DayReadView {
    /// The likelier reading.
    pub value: String,
    /// The other one, where day and month can change places and nothing says which is which.
    pub or: Option<String>,
    /// As in [`FieldView`].
    pub sure: String,
    /// Where it stands.
    pub area: AreaView,
}

/// An amount that was read.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct AmountView {
    /// The amount, as a form takes it.
    pub value: String,
    /// Its currency.
    pub currency: String,
    /// As in [`FieldView`].
    pub sure: String,
    /// Where it stands.
    pub area: AreaView,
}

/// Something that was bought.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct ReceiptLineView {
    /// How it is described.
    pub text: String,
    /// How many or how much; empty when it is not printed.
    pub quantity: String,
    /// `piece`, `litre`, `set`, `kilogram` or `metre`; empty when no quantity is printed.
    pub measure: String,
    /// The price of the line.
    pub price: String,
    /// The number of the part, with its own place and certainty: what bears out a price says nothing of it.
    pub number: Option<FieldView>,
    /// How sure the price is, as in [`FieldView`].
    pub sure: String,
    /// Where it stands.
    pub area: AreaView,
}

/// A fill that was read.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct FuelReadView {
    /// How much; empty when it was not found.
    pub volume: String,
    /// `litre`, `us-gallon` or `imperial-gallon`; empty when no volume was found.
    pub unit: String,
    /// The price of one litre or gallon, with its three decimals; empty when it was not found.
    pub price: String,
    /// What the fuel cost; empty when it was not found.
    pub total: String,
    /// As in [`FieldView`]: as sure as the least sure of the three.
    pub sure: String,
    /// Where they stand.
    pub area: AreaView,
    /// The same of each figure alone.
    pub figures: FuelFiguresView,
}

/// How sure each figure of a fill is and where it stands; nothing for one that was not found.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct FuelFiguresView {
    /// How much.
    pub volume: Option<FigureReadView>,
    /// The price of one litre or gallon.
    pub price: Option<FigureReadView>,
    /// What the fuel cost.
    pub total: Option<FigureReadView>,
}

/// How sure a figure is and where it stands.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct FigureReadView {
    /// As in [`FieldView`].
    pub sure: String,
    /// Where it stands.
    pub area: AreaView,
}

/// An odometer reading that was read.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct OdometerReadView {
    /// The reading in whole units.
    #[ts(type = "number")]
    pub value: i64,
    /// `km` or `mi`.
    pub unit: String,
    /// As in [`FieldView`].
    pub sure: String,
    /// Where it stands.
    pub area: AreaView,
}

/// A sum that was checked.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CheckedView {
    /// `lines`, `net-and-tax`, `paid` or `fuel`.
    pub kind: String,
    /// What the other figures come to.
    pub worked_out: MoneyView,
    /// What is printed.
    pub printed: MoneyView,
    /// Both agree, within what rounding explains.
    pub agrees: bool,
}
