//! Handing a book over, taking one in, and holding an old card against what is there.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{CardVisit, DatedReading, VehicleLine};

/// The screen on which a book is handed over.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct HandoverView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Today, as the door sees it.
    pub today: String,
    /// How many entries the file will hold.
    pub entries: usize,
    /// How many photos and documents the book names and the store has.
    pub papers: usize,
    /// How many bytes those have.
    #[ts(type = "number")]
    pub papers_bytes: u64,
    /// How many it names that are not there, so that they can not go with it.
    pub missing: usize,
    /// The handover that holds here; nothing where the book can be written in.
    pub handed_over: Option<HandedOverView>,
    /// The name that the file may bear.
    pub file_name: String,
    /// Who wrote in the book.
    pub writers: Vec<WriterView>,
}

/// A handover by this device.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct HandedOverView {
    /// Its line.
    pub subject: String,
    /// The day that it names.
    pub day: String,
    /// To the next owner.
    pub words: String,
    /// The papers went with the book.
    pub papers: bool,
}

/// What one device has written in a book.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct WriterView {
    /// The fingerprint of its key.
    pub fingerprint: String,
    /// It is this device.
    pub own: bool,
    /// The day of its first entry.
    pub from: String,
    /// The day of its last entry.
    pub to: String,
    /// How many entries.
    pub entries: usize,
    /// The days on which it handed the book over, oldest first.
    pub handed_over: Vec<String>,
}

/// A file was written for the next owner.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct PackedView {
    /// Where it stands; empty where the browser fetches it.
    pub path: String,
    /// How many bytes it has.
    #[ts(type = "number")]
    pub bytes: u64,
    /// How many entries.
    pub entries: usize,
    /// How many photos and documents.
    pub papers: usize,
    /// It is locked with a passphrase.
    pub locked: bool,
    /// The hashes of the photos and documents that were missing or damaged.
    pub missing: Vec<String>,
}

/// A book was taken in.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct ReceivedView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// How many entries the file holds.
    pub entries: usize,
    /// How many of them were not on the shelf before.
    pub new: usize,
    /// The book stood on the shelf before.
    pub known: bool,
    /// How many photos and documents were not there before.
    pub papers: usize,
    /// The hashes of the photos and documents that the book names and that are not there.
    pub missing: Vec<String>,
    /// The last owner kept the papers.
    pub papers_stayed: bool,
    /// No line of the book hands it over, so that whoever gave the file may go on writing.
    pub never_handed_over: bool,
    /// What he had to say; may be empty.
    pub words: String,
    /// Who wrote in the book.
    pub writers: Vec<WriterView>,
}

/// What holding an old card against a book, or against a newer card, came to.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CompareView {
    /// What it was held against: `book` or `card`.
    pub against: String,
    /// Everything of the old card is there, unchanged.
    pub contains: bool,
    /// Whether both show the same identification number, so that they are surely of one car.
    pub car_known: bool,
    /// The old card.
    pub old: ComparedCard,
    /// The newer card, where it was one.
    pub new: Option<ComparedCard>,
    /// The moment at which the book had the head of the card, where it was held against a book.
    pub moment: Option<MomentView>,
    /// How many visits of the old card were found as they are printed.
    pub same: usize,
    /// How many of them the newer card left out so that it fits.
    pub left_out: usize,
    /// What differs.
    pub differences: Vec<DifferenceView>,
}

/// A card that was compared.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct ComparedCard {
    /// The day on which it was signed.
    pub signed: String,
    /// The fingerprint of the key.
    pub fingerprint: String,
    /// What the household called the vehicle.
    pub name: String,
    /// The latest reading.
    pub reading: DatedReading,
    /// How many visits the book held then.
    pub visits: u32,
    /// The key has written in the book that it is held against, or has signed the newer card too.
    pub key_known: bool,
}

/// The moment at which a book had the head that a card carries.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct MomentView {
    /// `found`, `not-found`, `no-head` (the card carries none) or `too-many` (too much was written at the same time by
    /// several devices for every combination to be tried).
    pub state: String,
    /// How many entries stood in the book then.
    pub entries: usize,
    /// The day on which the newest of them was written; empty where it was not found.
    pub newest: String,
    /// How many entries bear an earlier time and came in later.
    pub late: usize,
    /// How many entries were written since.
    pub since: usize,
}

/// One thing that differs.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
pub struct DifferenceView {
    /// `other-car`, `first-use`, `not-newer`, `latest-reading`, `instrument`, `fewer`, `missing`, `changed`; and,
    /// which are no breach, `amended`, `struck-out`, `added`.
    pub kind: String,
    /// It speaks against the newer one; a difference that does not is only worth knowing.
    pub breach: bool,
    /// The day in question.
    pub day: String,
    /// As the old card has it: a visit.
    pub then: Option<CardVisit>,
    /// As it stands now: a visit.
    pub now: Option<CardVisit>,
    /// As the old card has it: its latest reading, or the last one of an instrument that was replaced.
    pub reading_then: Option<DatedReading>,
    /// As it stands now: the latest reading; of an instrument, the first one that the old card gives the new one.
    pub reading_now: Option<DatedReading>,
    /// As the old card has it: a day of first use, or a number of visits.
    pub was: String,
    /// The same as it stands now.
    pub is: String,
}
