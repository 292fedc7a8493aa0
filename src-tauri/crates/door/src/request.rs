//! What a face may ask: one request a screen, one request a change.
//!
//! Everything typed by a person travels as the text that he typed, so that the door alone decides what it
//! means and a refusal can name the field. Days are `YYYY-MM-DD`. Ids are those that a response gave.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use crate::{
    BoughtForm, HereForm, ItemForm, Keep, MeasuredForm, PartNoteForm, PlanForm, ReadingForm, TroubleForm,
    VehicleForm, VisitForm,
};

/// A question or a change, as JSON with the kind under `ask`.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(tag = "ask", rename_all = "kebab-case", deny_unknown_fields)]
pub enum Request {
    /// Which vehicles stand on the shelf, and the settings.
    Shelf,
    /// The Today screen of one vehicle.
    Today {
        /// The vehicle's book.
        book: String,
    },
    /// The visits that the plan proposes for one vehicle.
    Visits {
        /// The vehicle's book.
        book: String,
    },
    /// What it would cost to do an item on another day than the plan proposes.
    Moved {
        /// The vehicle's book.
        book: String,
        /// The item.
        item: ItemForm,
        /// The day, today or later.
        day: String,
    },
    /// The Pump screen: what stands on the pad before the first tap.
    Pump {
        /// The vehicle's book.
        book: String,
    },
    /// What the car uses, whether work helped, and how far it goes: figures and plots.
    Fuel {
        /// The vehicle's book.
        book: String,
        /// The unit of consumption, by its key, for the kinds that it fits; for the others, and when left out, the
        /// one that goes with the instrument and with the unit in which was filled up last.
        #[serde(default)]
        #[ts(optional)]
        unit: Option<String>,
    },
    /// What the car costs: by month and year, and by the kilometre or mile.
    Costs {
        /// The vehicle's book.
        book: String,
    },
    /// What was read off the engine's computer or a meter.
    Measured {
        /// The vehicle's book.
        book: String,
    },
    /// Reads lines pasted from a scan tool, without writing anything.
    ReadMeasured {
        /// The lines, at most 20 000 characters.
        text: String,
    },
    /// The Counter screen: what to get, and the papers in the tray.
    Counter {
        /// The vehicle's book.
        book: String,
    },
    /// The parts that were fitted, and how long they last.
    Parts {
        /// The vehicle's book.
        book: String,
        /// Only those that served this catalogue item.
        #[serde(default)]
        #[ts(optional)]
        item: Option<u32>,
    },
    /// The Bay screen: the jobs that can be chosen, and what a visit form starts with.
    Bay {
        /// The vehicle's book.
        book: String,
    },
    /// The Book screen: the lines of the book, newest first.
    Lines {
        /// The vehicle's book.
        book: String,
        /// Which lines; all when left out.
        #[serde(default)]
        filter: LineFilter,
    },
    /// One line with all its versions.
    Line {
        /// The vehicle's book.
        book: String,
        /// The line.
        subject: String,
    },
    /// The car's own sheet: identity and plan.
    Sheet {
        /// The vehicle's book.
        book: String,
    },
    /// The history card as it would print.
    Card {
        /// The vehicle's book.
        book: String,
        /// What the card shows.
        #[serde(default)]
        options: CardOptions,
    },
    /// What a vehicle identification number says.
    Vin {
        /// As typed.
        vin: String,
    },
    /// Reads the text of a card's square, or the plain text beside it.
    ReadCard {
        /// The text.
        text: String,
    },
    /// What handing the book over would give away, and who wrote in it.
    Handover {
        /// The vehicle's book.
        book: String,
    },
    /// Holds an old card against a book: was there a moment at which the book was what the card vouches for?
    CompareCard {
        /// The vehicle's book.
        book: String,
        /// The text of the card's square.
        card: String,
    },
    /// Holds an old card against a newer one of the same car.
    CompareCards {
        /// The text of the older card's square.
        old: String,
        /// The text of the newer card's square.
        new: String,
    },
    /// What the text of a scan tool says: codes, readiness, freeze frames.
    Codes {
        /// The text.
        text: String,
        /// The car whose book tells the life of each code; left out, no life is told.
        #[serde(default)]
        #[ts(optional)]
        book: Option<String>,
    },
    /// What a trouble may be and what to check first, without writing anything.
    Trouble {
        /// The vehicle's book.
        book: String,
        /// What is known of it.
        trouble: TroubleForm,
        /// Its line, when it is written down already.
        #[serde(default)]
        #[ts(optional)]
        subject: Option<String>,
        /// What the owner has to work with.
        #[serde(default)]
        here: HereForm,
    },
    /// The same for a trouble as it stands in the book.
    TroubleOf {
        /// The vehicle's book.
        book: String,
        /// The trouble's line.
        subject: String,
        /// What the owner has to work with.
        #[serde(default)]
        here: HereForm,
    },
    /// The troubles that a car has or had, and the life of its codes.
    Troubles {
        /// The vehicle's book.
        book: String,
    },
    /// What a workshop should know of a trouble.
    Brief {
        /// The vehicle's book.
        book: String,
        /// The trouble's line.
        subject: String,
    },
    /// The guides to the jobs that this car's owner can do.
    Guides {
        /// The vehicle's book.
        book: String,
    },
    /// One guide, with this car's own values.
    Guide {
        /// The vehicle's book.
        book: String,
        /// Its key.
        key: String,
    },
    /// Verifies every entry, chain, signature and photo on the shelf.
    Check,
    /// Throws the pages away and works them out again from the entries, and deletes photos that no entry names.
    Rebuild,
    /// Puts a new vehicle on the shelf.
    AddVehicle {
        /// What is known of it.
        vehicle: VehicleForm,
    },
    /// Corrects what is known of a vehicle.
    ChangeVehicle {
        /// The vehicle's book.
        book: String,
        /// All that is known of it now.
        vehicle: VehicleForm,
    },
    /// Writes a reading, with or without fuel.
    TakeReading {
        /// The vehicle's book.
        book: String,
        /// What was read.
        reading: ReadingForm,
        /// What the owner has been asked, about an implausible reading or fuel whose numbers disagree, and wants kept.
        #[serde(default)]
        keep: Keep,
    },
    /// Writes that the instrument was replaced.
    ReplaceInstrument {
        /// The vehicle's book.
        book: String,
        /// The day of the replacement.
        day: String,
        /// What the old instrument showed last.
        old: String,
        /// What the new one showed first.
        new: String,
    },
    /// Writes a visit.
    RecordVisit {
        /// The vehicle's book.
        book: String,
        /// What was done.
        visit: VisitForm,
        /// The owner has been asked about an implausible reading and wants it kept.
        #[serde(default)]
        keep: bool,
    },
    /// Writes what was read off the engine's computer or a meter.
    WriteMeasured {
        /// The vehicle's book.
        book: String,
        /// The values of one day.
        measured: MeasuredForm,
    },
    /// Puts a corrected reading in place of an earlier one, which stays readable.
    AmendReading {
        /// The vehicle's book.
        book: String,
        /// The line that is amended.
        subject: String,
        /// The whole reading as it should be.
        reading: ReadingForm,
        /// Why, in the owner's words; may be empty.
        #[serde(default)]
        why: String,
        /// What the owner has been asked, about an implausible reading or fuel whose numbers disagree, and wants kept.
        #[serde(default)]
        keep: Keep,
    },
    /// Puts a corrected visit in place of an earlier one, which stays readable.
    AmendVisit {
        /// The vehicle's book.
        book: String,
        /// The line that is amended.
        subject: String,
        /// The whole visit as it should be.
        visit: VisitForm,
        /// Why, in the owner's words; may be empty.
        #[serde(default)]
        why: String,
        /// The owner has been asked about an implausible reading and wants it kept.
        #[serde(default)]
        keep: bool,
    },
    /// Writes down a trouble.
    WriteTrouble {
        /// The vehicle's book.
        book: String,
        /// What is known of it.
        trouble: TroubleForm,
        /// The owner has been asked about an implausible reading and wants it kept.
        #[serde(default)]
        keep: bool,
    },
    /// Writes down how a trouble stands now, its end included; what stood there stays readable.
    AmendTrouble {
        /// The vehicle's book.
        book: String,
        /// The line that is amended.
        subject: String,
        /// The whole trouble as it should be.
        trouble: TroubleForm,
        /// Why, in the owner's words; may be empty.
        #[serde(default)]
        why: String,
        /// The owner has been asked about an implausible reading and wants it kept.
        #[serde(default)]
        keep: bool,
    },
    /// Strikes a line out; it stays readable. A paper is thrown away instead.
    StrikeOut {
        /// The vehicle's book.
        book: String,
        /// The line.
        subject: String,
        /// Why, in the owner's words; may be empty.
        #[serde(default)]
        why: String,
    },
    /// Writes what was bought to be fitted later.
    WriteBought {
        /// The vehicle's book.
        book: String,
        /// What was bought.
        bought: BoughtForm,
    },
    /// Puts a corrected purchase in place of an earlier one, which stays readable; what is at home follows it.
    AmendBought {
        /// The vehicle's book.
        book: String,
        /// The line that is amended.
        subject: String,
        /// The whole purchase as it should be.
        bought: BoughtForm,
        /// Why, in the owner's words; may be empty.
        #[serde(default)]
        why: String,
    },
    /// Notes other numbers for a part, or a warning of it; what was noted of this number before no longer holds.
    NotePart {
        /// The vehicle's book.
        book: String,
        /// The note.
        note: PartNoteForm,
    },
    /// Ties a paper to a visit, a reading, or what was bought.
    TiePaper {
        /// The vehicle's book.
        book: String,
        /// The paper's line.
        paper: String,
        /// The line to which it belongs.
        line: String,
    },
    /// Throws a paper away that belongs to no line: its line is struck out, and its photo is deleted for good.
    ThrowAway {
        /// The vehicle's book.
        book: String,
        /// The paper's line.
        paper: String,
        /// Why, in the owner's words; may be empty.
        #[serde(default)]
        why: String,
    },
    /// Changes the plan for one item.
    ChangePlan {
        /// The vehicle's book.
        book: String,
        /// The item.
        item: ItemForm,
        /// What holds for it from now on.
        change: PlanForm,
    },
    /// The car has what this item is for after all: what it was said to lack for it is there.
    HasAfterAll {
        /// The vehicle's book.
        book: String,
        /// An item that is not for this car.
        item: ItemForm,
    },
    /// Sets or clears the address of the page on which a scanned card opens.
    SetViewerAddress {
        /// An `https:` address without `#`; nothing clears it.
        address: Option<String>,
    },
    /// Fills an empty shelf with the invented household.
    Demo,
}

/// Which lines of the book are wanted.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct LineFilter {
    /// Only lines of this calendar year.
    #[ts(optional)]
    pub year: Option<i32>,
    /// Only visits with this catalogue item.
    #[ts(optional)]
    pub item: Option<u32>,
    /// Only lines in which this text stands, without regard to case.
    #[ts(optional)]
    pub text: Option<String>,
}

/// A brief as the ui shows it, to be set on paper.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct BriefPage {
    /// Its title.
    pub title: String,
    /// Its parts, top to bottom.
    pub parts: Vec<BriefPart>,
    /// What is said under all of them.
    pub foot: String,
}

/// A heading with its lines.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct BriefPart {
    /// The heading.
    pub title: String,
    /// The lines.
    pub lines: Vec<String>,
}

/// What a card shows, and what it is printed on.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct CardOptions {
    /// How large it is.
    pub size: CardSize,
    /// What lies in the printer.
    pub paper: CardPaper,
    /// How much of the identification number is shown.
    pub vin: VinShown,
    /// Leaves the workshops' names out.
    pub hide_names: bool,
    /// Tells what each visit cost.
    pub prices: bool,
    /// In which language it is printed. What is signed says nothing of it, so that the square is the same in each.
    pub lang: CardLang,
    /// The address to use in place of the one in the settings.
    #[ts(optional)]
    pub viewer: Option<String>,
}

/// What a full report tells.
#[derive(Debug, Clone, Default, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
pub struct ReportOptions {
    /// How much of the identification number is shown.
    pub vin: VinShown,
    /// Leaves the workshops' names out.
    pub hide_names: bool,
    /// Tells what each visit and each part cost, and what each year came to.
    pub prices: bool,
    /// Leaves the photos of receipts out. They go in any case where the number or names are left out, which they
    /// would show.
    pub without_receipts: bool,
    /// In which language it is printed; the owner's own words stay as he wrote them.
    pub lang: CardLang,
    /// The address to use in place of the one in the settings.
    #[ts(optional)]
    pub viewer: Option<String>,
}

/// The size of a card.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum CardSize {
    /// ISO/IEC 7810 ID-1, 85.60 mm by 53.98 mm.
    Id1,
    /// A6, two sides.
    A6,
    /// A5, folded to A6.
    #[default]
    A5,
    /// A full page.
    A4,
}

/// The paper on which a card is printed; on one larger than the card, marks show where to cut.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum CardPaper {
    /// As large as the card.
    #[default]
    Own,
    /// A4.
    A4,
    /// US Letter.
    Letter,
}

/// The languages in which a card and a report can be printed, as IETF tags.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum CardLang {
    /// English.
    #[default]
    En,
    /// German.
    De,
    /// French.
    Fr,
    /// Spanish.
    Es,
}

impl CardLang {
    /// All of them.
    pub const ALL: [CardLang; 4] = [CardLang::En, CardLang::De, CardLang::Fr, CardLang::Es];

    /// Its IETF tag.
    pub const fn tag(self) -> &'static str {
        match self {
            CardLang::En => "en",
            CardLang::De => "de",
            CardLang::Fr => "fr",
            CardLang::Es => "es",
        }
    }
}

/// How much of an identification number is shown.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum VinShown {
    /// All of it.
    #[default]
    Whole,
    /// Its last six characters, on paper alone: the square holds none of it.
    LastSix,
    /// Nothing.
    Hidden,
}
