//! # card: the history card, from claims to paper and back
//!
//! [`Claims`] are what a car's history says of itself. [`sign`] puts them into a message that anyone can check
//! with standard parts, [`fit()`] leaves out the oldest visits until that message fits a printed [`Square`],
//! [`pdf`] and [`svg`] set the sheet around it, and [`scan`] with [`read`] take a photographed or printed card
//! back to its claims. [`questions()`] says what those give cause to ask, and [`report_pdf`] sets the whole history.
//!
//! This room knows quantities and the trade's rules. It must never read a clock, a setting or a file, never
//! make a key, never ask the network, and never put a word on paper that was not handed in: every text of a
//! sheet comes with its model. Whatever it prints is a pure function of what it is given, and whatever it reads
//! from outside is read within a stated bound and refused at the first fault.

mod code;
mod compare;
mod error;
mod fit;
mod questions;
mod scan;
mod sheets;
mod square;

pub use code::{
    Claims, CodeError, Engine, Fingerprint, Flags, HeadPrefix, INFLATED_MAX, InstrumentChange, Item, Message,
    NEXT_MAX, NextDue, OdometerReading, Vehicle, Verified, ViewerAddress, Visit, read, sign,
};
pub use compare::{Comparison, Difference, compare, same_items, same_reading, same_visit};
pub use error::CardError;
pub use fit::{Fitted, PlainFitted, fit, fit_plain};
pub use questions::{
    GapBound, Place, QUESTIONS_MAX, Question, QuestionValues, Timeline, questions, timeline,
};
pub use scan::scan;
pub use sheets::{
    Bar, Bars, Brief, BriefPart, CarLines, Extent, ILLEGIBLE_PHOTO_SIDE, Mark, NextLine, Plot, PlotPoint,
    PlotTick, REPORT_PHOTO_SIDE, REPORT_PHOTOS_MAX, ReadingLine, RecordLines, Report, ReportPart,
    ReportPhoto, ReportVisit, ReportWords, ReportYear, SheetLayout, SheetModel, SheetOptions, SheetPaper,
    SheetSize, SheetSquare, SheetWords, Thumbnail, Turn, VisitLine, WorkGroup, WorkLine, WriterLine,
    brief_pdf, pdf, report_pdf, svg,
};
pub use square::{Level, MODULE_MIN_UM, QUIET_ZONE, Square, SquareLimit};
