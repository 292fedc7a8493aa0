//! Something is wrong: what it may be, what to look at first and why, and the brief for the workshop.
//!
//! A chance is in thousandths, rounded; a cost is in minutes of the owner's time, rounded to tenths.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

use super::{
    CautionView, CodeView, CodesView, DatedReading, FrameView, ItemView, ReadinessView, SeenAt, VehicleLine,
};
use crate::{AnswerForm, TroubleForm};

/// One trouble: what to read before anything else, what it may be, and the checks in their order.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct TroubleView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Today.
    pub today: String,
    /// Its line in the book; nothing while it is not written down.
    pub subject: Option<String>,
    /// All that is known of it, as a form can take it back.
    pub form: TroubleForm,
    /// What must be read before any list, the most pressing first.
    pub stop: Vec<StopView>,
    /// What its scans say, one a scan, in the order of the form.
    pub scans: Vec<CodesView>,
    /// Every cause that this car can have, the likeliest first. None of it is a diagnosis.
    pub suspects: Vec<SuspectView>,
    /// The chance that it is something else, in thousandths.
    pub other: u16,
    /// The checks still to make, first to last.
    pub checks: Vec<CheckRow>,
    /// What the cautions of the checks are, in the order in which they are read.
    pub cautions: Vec<CautionView>,
    /// The keys of checks that would stand among them, but must not be made as things are: see `stop`.
    pub held: Vec<String>,
    /// What this order of checks costs.
    pub costs: CheckCosts,
    /// Every symptom that this car can show, in the order in which they are asked, by headings.
    pub symptoms: Vec<SymptomLine>,
    /// Every tool that a check may need.
    pub tools: Vec<ToolLine>,
}

/// A danger that comes before any list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StopView {
    /// Its key; what to do now stands in the words under `stop-KEY`.
    pub danger: String,
    /// How pressing it is.
    pub urgency: StopUrgency,
    /// What shows it.
    pub sign: SignView,
}

/// What shows a danger.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "is", rename_all = "kebab-case")]
pub enum SignView {
    /// A symptom.
    Symptom {
        /// Its key.
        symptom: String,
    },
    /// A code.
    Code {
        /// The code: `P0524`.
        code: String,
    },
}

/// How pressing a danger is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum StopUrgency {
    /// Stop where it is safe, and do not drive on.
    Stop,
    /// Drive no farther than to help, and gently.
    Gently,
    /// Have it seen to soon.
    Soon,
}

/// A cause and how likely it is.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct SuspectView {
    /// The key of the cause (`cause-KEY`).
    pub cause: String,
    /// The chance that it is the one, in thousandths.
    pub chance: u16,
    /// This car has had it before.
    pub before: bool,
    /// What mends it.
    pub mend: MendView,
}

/// What mends a cause.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
#[serde(tag = "by", rename_all = "kebab-case")]
pub enum MendView {
    /// Any of these items.
    Items {
        /// The items.
        items: Vec<ItemView>,
    },
    /// The owner, without an item of the catalogue.
    Owner,
    /// A workshop.
    Workshop,
}

/// A check in its place.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct CheckRow {
    /// Its key (`check-KEY`, and how it is made under `check-KEY-how`).
    pub check: String,
    /// The chance that it finds the fault when nothing before it did, in thousandths.
    pub chance: u16,
    /// How long it takes a practised amateur once everything is open, in minutes.
    pub minutes: u16,
    /// What it costs here, in minutes: itself, its money, what it newly opens, and tools that the owner lacks.
    pub cost: f64,
    /// It costs money.
    pub costs_money: bool,
    /// It is done in a workshop.
    pub workshop: bool,
    /// The tools that it needs.
    pub tools: Vec<NeededTool>,
    /// What has to be open for it.
    pub opens: Vec<OpeningView>,
    /// The keys of what can hurt someone at it (`caution-KEY`).
    pub cautions: Vec<String>,
    /// What it would find, the likeliest first.
    pub finds: Vec<FindsView>,
    /// Which look it is: 1, or 2 when a first one found nothing.
    pub look: u8,
    /// Why it stands here; never empty.
    pub why: Vec<Because>,
}

/// A tool that a check needs.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NeededTool {
    /// Its key (`check-tool-KEY`).
    pub tool: String,
    /// The owner lacks it, as far as he said.
    pub lacking: bool,
}

/// What has to be open for a check.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OpeningView {
    /// Its id in the words: `access-bonnet`, `opening-drive`.
    pub word: String,
    /// It is opened for this check, and not for one before it.
    pub newly: bool,
}

/// A cause that a check would find.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FindsView {
    /// The key of the cause.
    pub cause: String,
    /// The chance that it does when nothing before it found anything, in thousandths.
    pub chance: u16,
}

/// Why a check stands where it stands.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "because", rename_all = "kebab-case")]
pub enum Because {
    /// It looks for a cause that is likely here.
    LooksFor {
        /// The cause.
        cause: String,
    },
    /// A symptom that shows points at that cause.
    Symptom {
        /// The symptom.
        symptom: String,
        /// The cause.
        cause: String,
    },
    /// A code points at that cause.
    Code {
        /// The code.
        code: String,
        /// The cause.
        cause: String,
    },
    /// An item is overdue, the neglect of which leads to that cause.
    Overdue {
        /// The item.
        item: ItemView,
        /// The cause.
        cause: String,
    },
    /// Work was done lately that can have upset what would be that cause.
    Touched {
        /// The item.
        item: ItemView,
        /// How many days ago.
        days: u32,
        /// The cause.
        cause: String,
    },
    /// The car has had that cause before.
    Before {
        /// The cause.
        cause: String,
    },
    /// What it needs open is open already for a check before it.
    Shares {
        /// The id of what is open, as in [`OpeningView`].
        word: String,
    },
    /// A first look found nothing, and can have overlooked it.
    SecondLook,
}

/// What an order of checks costs on the average until the fault is found, in minutes.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, TS)]
pub struct CheckCosts {
    /// This order.
    pub order: f64,
    /// No order of these checks costs less than this.
    pub at_least: f64,
    /// No order of these checks costs less than this one.
    pub exact: bool,
    /// The plain order by chance over cost, which takes each check by itself.
    pub by_ratio: f64,
    /// The chance that none of these checks finds the fault, in thousandths: then it is a workshop's.
    pub left: u16,
}

/// A symptom that can be ticked.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SymptomLine {
    /// Its key (`symptom-KEY`).
    pub key: String,
    /// The key of its heading (`about-KEY`).
    pub about: String,
    /// The key of the danger that it shows.
    pub danger: Option<String>,
}

/// A tool.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ToolLine {
    /// Its key (`check-tool-KEY`).
    pub key: String,
    /// An amateur usually has it.
    pub usual: bool,
}

/// The troubles that a car has or had.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct TroublesView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Those that have not ended first, and among them the newest.
    pub troubles: Vec<TroubleLine>,
    /// Every code that a scan of the book had, each with its life.
    pub codes: Vec<CodeView>,
}

/// A trouble in a list.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct TroubleLine {
    /// Its line.
    pub subject: String,
    /// The day on which it was noticed.
    pub day: String,
    /// The complaint in the owner's words.
    pub words: String,
    /// The keys of the symptoms.
    pub symptoms: Vec<String>,
    /// The codes of its scans, each once.
    pub codes: Vec<String>,
    /// How it ended; nothing while it has not.
    pub end: Option<EndView>,
}

/// How a trouble ended.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct EndView {
    /// The day.
    pub day: String,
    /// The line of the visit that ended it.
    pub visit: Option<String>,
    /// The key of what was the cause; nothing where nobody found out, or it is none of the table.
    pub cause: Option<String>,
}

/// What a workshop should know: one page, with no diagnosis on it.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct BriefView {
    /// The vehicle.
    pub vehicle: VehicleLine,
    /// Its identification number.
    pub vin: Option<String>,
    /// The day of its first use.
    pub first_use: Option<String>,
    /// The keys of what it is known to have.
    pub fitted: Vec<String>,
    /// Today.
    pub today: String,
    /// The day on which the trouble was noticed, with what the instrument showed.
    pub day: String,
    /// What the instrument showed then, or the newest reading before.
    pub reading: Option<DatedReading>,
    /// The complaint in the owner's words.
    pub words: String,
    /// When it happens, in the owner's words.
    pub when: String,
    /// The keys of the symptoms that show.
    pub symptoms: Vec<String>,
    /// The keys of those that were asked about and do not show.
    pub absent: Vec<String>,
    /// The codes of all its scans, each once a status, without causes.
    pub codes: Vec<CodeView>,
    /// What was frozen when a code set, each frame once, with its first scan.
    pub frames: Vec<BriefFrame>,
    /// The readiness of the last of its scans that told it; nothing where the codes of the car were cleared since.
    pub readiness: Option<BriefReadiness>,
    /// The day on which the codes of the car were last cleared since the trouble was noticed, or for it.
    pub cleared: Option<String>,
    /// What was checked, with what result.
    pub checked: Vec<AnswerForm>,
    /// The work of the last 90 days, newest first.
    pub work: Vec<WorkLine>,
    /// What is asked, in the owner's words; may be empty.
    pub asked: String,
}

/// A freeze frame of a scan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct BriefFrame {
    /// When the scan was made.
    pub seen: SeenAt,
    /// The frame.
    pub frame: FrameView,
}

/// The readiness that a scan told.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct BriefReadiness {
    /// When the scan was made.
    pub seen: SeenAt,
    /// One a control unit; at least one.
    pub units: Vec<ReadinessView>,
}

/// Work that was done.
#[derive(Debug, Clone, Serialize, Deserialize, TS)]
pub struct WorkLine {
    /// The day.
    pub day: String,
    /// What the instrument showed.
    pub reading: Option<super::Reading>,
    /// By whom; empty when the owner did it.
    pub workshop: String,
    /// What was done.
    pub items: Vec<ItemView>,
}
