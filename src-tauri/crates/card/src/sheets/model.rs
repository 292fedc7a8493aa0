//! What stands on a card, line by line, in the words and formats of the language it is printed in.
//!
//! Whoever fills the model has already put days, readings and sentences into words; the sheet only sets them.

use serde::Serialize;

use super::RecordLines;
use crate::Square;

/// Everything that a card shows.
#[derive(Debug, Clone, Serialize)]
pub struct SheetModel {
    /// The language of the texts as an IETF tag such as `en` or `de`; it decides where words may be hyphenated.
    pub lang: String,
    /// Which car.
    pub car: CarLines,
    /// The latest reading of the odometer.
    pub latest: ReadingLine,
    /// The visits, in the order in which they are to be printed.
    pub visits: Vec<VisitLine>,
    /// One sentence: how many visits are shown, and how many the square leaves out.
    pub visits_note: String,
    /// What the history comes to.
    pub record: RecordLines,
    /// What comes next, the most urgent first; at most six lines are printed.
    pub next: Vec<NextLine>,
    /// The day of issue.
    pub issued: String,
    /// One sentence for whoever prints: how to turn, cut and fold. Printed beside a card that has to be cut out.
    pub handling: String,
    /// The square and what stands beside it.
    pub square: SheetSquare,
    /// The labels.
    pub words: SheetWords,
}

/// Which car the card is of.
#[derive(Debug, Clone, Default, Serialize)]
pub struct CarLines {
    /// The owner's name for it.
    pub name: String,
    /// Make, model and year.
    pub description: Option<String>,
    /// The VIN, or a word that it is hidden.
    pub vin: Option<String>,
    /// What drives it.
    pub engine: Option<String>,
    /// The day of first use.
    pub first_use: Option<String>,
}

/// A reading of the odometer.
#[derive(Debug, Clone, Default, Serialize)]
pub struct ReadingLine {
    /// The day.
    pub day: String,
    /// The reading with its unit.
    pub reading: String,
}

/// One visit.
#[derive(Debug, Clone, Default, Serialize)]
pub struct VisitLine {
    /// The day.
    pub day: String,
    /// The reading, without its unit, which stands in the head of the column.
    pub reading: String,
    /// By whom it was done, such as `own work` or `workshop`.
    pub who: String,
    /// What was done, item by item.
    pub items: Vec<String>,
    /// What it cost, where that is to be told.
    pub cost: Option<String>,
    /// How well it is recorded.
    pub marks: Vec<Mark>,
}

/// How well a visit is recorded. Each mark is printed as a shape and its word.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Mark {
    /// A receipt is in the book.
    Receipt,
    /// A photo is in the book.
    Photo,
    /// Written down more than 30 days after the day it names.
    WrittenLate,
    /// Amended since it was written.
    Amended,
}

/// Something that comes next.
#[derive(Debug, Clone, Default, Serialize)]
pub struct NextLine {
    /// What will be due.
    pub item: String,
    /// The day and reading at which it falls due.
    pub when: String,
}

/// The square, with what may honestly be said of it.
#[derive(Debug, Clone, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum SheetSquare {
    /// A signed card code, to be opened at the viewer's address.
    Code {
        /// The square.
        #[serde(skip)]
        square: Square,
        /// One sentence: what to do with the square.
        scan: String,
        /// 'unchanged since it was signed on DAY with the key KEY', filled in.
        unchanged: String,
        /// One sentence: that a signature does not prove that the work was done.
        proves_not: String,
        /// The same behind `unchanged`, as short as it can be said.
        proves_not_short: String,
        /// The key's fingerprint.
        key: String,
    },
    /// A plain text that any camera app shows, for as long as no viewer's address is set. It is not signed.
    Plain {
        /// The square.
        #[serde(skip)]
        square: Square,
        /// One sentence: what to do with the square.
        scan: String,
        /// One sentence: that this square holds plain text and no signature.
        unsigned: String,
    },
}

/// The labels of a card in one language.
#[derive(Debug, Clone, Default, Serialize)]
pub struct SheetWords {
    /// What the card is: the title.
    pub title: String,
    /// Label of the vehicle identification number.
    pub vin: String,
    /// Label of what drives the car.
    pub engine: String,
    /// Label of the day of first use.
    pub first_use: String,
    /// Label of the latest reading.
    pub latest: String,
    /// Head of what comes next.
    pub next: String,
    /// Said where nothing comes next.
    pub nothing_next: String,
    /// Head of the visits.
    pub history: String,
    /// Said where the book holds no visit.
    pub no_visits: String,
    /// Head of the column of days.
    pub day: String,
    /// Head of the column of readings, with the unit.
    pub reading: String,
    /// Head of the column of what was done.
    pub work: String,
    /// A receipt is in the book.
    pub receipt: String,
    /// A photo is in the book.
    pub photo: String,
    /// Written down more than 30 days after the day it names.
    pub written_late: String,
    /// Amended since it was written.
    pub amended: String,
    /// Label of the day of issue.
    pub issued: String,
    /// Label of the key's fingerprint.
    pub key: String,
    /// Head of the plot of the readings, with the unit.
    pub plot: String,
    /// Head of the work as a buyer asks for it.
    pub record: String,
    /// Head of the columns of what was done last.
    pub last_done: String,
    /// Head of the column of when it is due next.
    pub next_due: String,
    /// Said of work that the book holds no record of.
    pub no_record: String,
    /// Head of who wrote in the book.
    pub writers: String,
}

impl SheetSquare {
    /// The square itself.
    pub fn square(&self) -> &Square {
        match self {
            SheetSquare::Code { square, .. } | SheetSquare::Plain { square, .. } => square,
        }
    }
}
