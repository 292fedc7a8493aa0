//! What the door answers: one whole screen, or what a change has touched.
//!
//! Nothing here is a sentence. Names of items, states and reasons are keys that the face puts into words;
//! days are `YYYY-MM-DD`; a reading carries its unit; money carries its currency and its decimals.

mod bay;
mod card;
mod check;
mod codes;
mod costs;
mod counter;
mod due;
mod fuel;
mod guide;
mod handover;
mod lines;
mod measured;
mod pump;
mod receipt;
mod sheet;
mod shelf;
mod today;
mod trouble;
mod value;
mod visits;

use serde::{Deserialize, Serialize};
use ts_rs::TS;

pub use bay::*;
pub use card::*;
pub use check::*;
pub use codes::*;
pub use costs::*;
pub use counter::*;
pub use due::*;
pub use fuel::*;
pub use guide::*;
pub use handover::*;
pub use lines::*;
pub use measured::*;
pub use pump::*;
pub use receipt::*;
pub use sheet::*;
pub use shelf::*;
pub use today::*;
pub use trouble::*;
pub use value::*;
pub use visits::*;

/// An answer, as JSON with the kind under `answer`.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(tag = "answer", rename_all = "kebab-case")]
pub enum Response {
    /// The vehicles and the settings.
    Shelf(ShelfView),
    /// The Today screen.
    Today(TodayView),
    /// The visits that the plan proposes.
    Visits(VisitsView),
    /// What moving an item costs.
    Moved(MovedView),
    /// The Pump screen.
    Pump(PumpView),
    /// What the car uses, and how far it goes.
    Fuel(Box<ConsumptionView>),
    /// What the car costs.
    Costs(CostsView),
    /// What was measured.
    Measured(MeasurementsView),
    /// What pasted lines say.
    MeasuredRead(MeasuredReadView),
    /// The Counter screen.
    Counter(CounterView),
    /// The parts that were fitted.
    Parts(PartsView),
    /// The Bay screen.
    Bay(BayView),
    /// The Book screen.
    Lines(LinesView),
    /// One line with its versions.
    Line(LineView),
    /// The car's sheet.
    Sheet(SheetView),
    /// The card as it would print.
    Card(CardView),
    /// What a VIN says.
    Vin(VinView),
    /// What a card says.
    CardRead(CardReadView),
    /// What would be handed over.
    Handover(HandoverView),
    /// A file for the next owner was written.
    Packed(PackedView),
    /// A book was taken in.
    Received(Box<ReceivedView>),
    /// An old card was held against a book or a newer card.
    Compared(Box<CompareView>),
    /// What the check found.
    Check(CheckView),
    /// What a scan tool's text says.
    Codes(CodesView),
    /// One trouble.
    Trouble(Box<TroubleView>),
    /// The troubles of a car.
    Troubles(TroublesView),
    /// What a workshop should know of a trouble.
    Brief(Box<BriefView>),
    /// The guides of a car.
    Guides(GuidesView),
    /// One guide.
    Guide(GuideView),
    /// The pages were worked out again.
    Rebuilt(RebuiltView),
    /// Papers were filed.
    Filed(FiledView),
    /// The PDF of a paper.
    Document(DocumentView),
    /// What a paper says.
    Receipt(Box<ReceiptView>),
    /// A change was written.
    Written(WrittenView),
}

/// Why the door does not do what was asked; the face puts it into one sentence by `code`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Refusal {
    /// The key of the sentence, such as `reading-lower`.
    pub code: String,
    /// The field of the form that is meant, as a path such as `visit.parts.0.price`; nothing when none is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub field: Option<String>,
    /// What the sentence names.
    pub values: std::collections::BTreeMap<String, String>,
    /// Asking again with `keep` will be accepted.
    pub can_keep: bool,
}

/// A change was written.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct WrittenView {
    /// The book in which it stands; of the demo, the first.
    pub book: String,
    /// The line.
    pub subject: String,
    /// Warnings that did not keep it from being written, as keys: `vin-check-digit`, or
    /// `part-wrong` and `part-superseded` for a part that a note warns of.
    pub warnings: Vec<String>,
}
