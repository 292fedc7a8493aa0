//! # door: the one way in and out
//!
//! A face (the window, the terminal, the local server) makes a [`Request`], and the door answers with a
//! [`Response`] that holds one whole screen, or with a [`Refusal`] that the face puts into words. Photos go in
//! as raw bytes through [`Door::take_in`] and come out through [`Door::photo`], and a PDF as it came through
//! [`Door::document`]; what is printed is gathered, as by [`Door::card`], and set as PDF by [`Gathered::pdf`],
//! which needs no door.
//!
//! This room composes all others: it reads what was typed (`forms`), lets the rules decide, has the book
//! write, and shows the pages (`screens`). It owns the clock and the randomness. It must never hold a rule of
//! the trade, a line of SQL or a sentence.

mod car;

mod clock;
mod demo;
mod forms;
mod handing;
mod household;
mod issue;
mod keep;
mod papers;
mod reading;
mod refusals;
mod refuse;
mod request;
mod response;
mod save;
mod screens;
mod troubles;
mod typed;
mod types;
mod write;

use std::cell::RefCell;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use book::Shelf;
use car::Cars;
use paper::PhotoStore;
use rules::upkeep::Catalogue;

pub use clock::Clock;
pub use handing::{BookFile, Packed, Packing, open_book_file};
pub use issue::{Gathered, scan_card};
pub use keep::Keep;
pub use papers::{
    Begun, Document, Intake, IntakeProgress, Intakes, PhotoSize, check_file_size, found_corners,
    prepare_paper, straighten_photo,
};
pub use reading::{PaperReader, ToRead, WantedFile};
pub use refusals::REFUSALS;
pub use refuse::refuse_request;
pub use request::{
    BriefPage, BriefPart, CardLang, CardOptions, CardPaper, CardSize, LineFilter, ReportOptions, Request,
    VinShown,
};
pub use response::*;
pub use save::{read_file, refuse_file, save, save_new};
pub use screens::{codes_of_text as read_codes, refuse_elsewhere, vin_view as read_vin};
pub use typed::{
    AnswerForm, AnswerKey, BoughtForm, DrivenForm, EndForm, FoundForm, FuelForm, HandoverForm, HereForm,
    IntervalForm, ItemForm, MeasuredForm, MeasuredValueForm, NumberForm, PartForm, PartNoteForm, PlanForm,
    ReadingForm, ScanForm, TroubleForm, VehicleForm, VisitForm,
};
pub use types::typescript;
pub use units::Day;

/// An open shelf with its photos, and everything that can be asked of it.
#[derive(Debug)]
pub struct Door {
    shelf: Shelf,
    photos: PhotoStore,
    folder: PathBuf,
    catalogue: &'static Catalogue,
    clock: Clock,
    cars: RefCell<Cars>,
}

impl Door {
    /// Opens the shelf in a folder, and lays one there if there is none.
    pub fn open(folder: &Path, clock: Clock) -> Result<Door, Refusal> {
        let mut secret = [0; 32];
        getrandom::fill(&mut secret).map_err(|_| refuse::randomness())?;
        let shelf = Shelf::open(folder, || secret)?;
        let photos = PhotoStore::open(&photo_folder(folder), SystemTime::now())?;
        let folder = folder.to_owned();
        let cars = RefCell::default();
        Ok(Door { shelf, photos, folder, catalogue: Catalogue::shipped()?, clock, cars })
    }

    /// The day that counts as today.
    pub fn today(&self) -> Day {
        self.clock.today()
    }

    /// Answers one request.
    pub fn ask(&mut self, request: Request) -> Result<Response, Refusal> {
        match request {
            Request::Shelf => self.shelf_view().map(Response::Shelf),
            Request::Today { book } => self.today_view(&book).map(Response::Today),
            Request::Visits { book } => self.visits_view(&book).map(Response::Visits),
            Request::Moved { book, item, day } => self.moved_view(&book, &item, &day).map(Response::Moved),
            Request::Pump { book } => self.pump_view(&book).map(Response::Pump),
            Request::Fuel { book, unit } => {
                self.consumption_view(&book, unit.as_deref()).map(|view| Response::Fuel(Box::new(view)))
            }
            Request::Costs { book } => self.costs_view(&book).map(Response::Costs),
            Request::Measured { book } => self.measurements_view(&book).map(Response::Measured),
            Request::ReadMeasured { text } => forms::read_measured(&text).map(Response::MeasuredRead),
            Request::Counter { book } => self.counter_view(&book).map(Response::Counter),
            Request::Parts { book, item } => self.parts_view(&book, item).map(Response::Parts),
            Request::Bay { book } => self.bay_view(&book).map(Response::Bay),
            Request::Lines { book, filter } => self.lines_view(&book, &filter).map(Response::Lines),
            Request::Line { book, subject } => self.line_view(&book, &subject).map(Response::Line),
            Request::Sheet { book } => self.sheet_view(&book).map(Response::Sheet),
            Request::Card { book, options } => self.card_view(&book, &options).map(Response::Card),
            Request::Vin { vin } => screens::vin_view(&vin).map(Response::Vin),
            Request::Handover { book } => self.handover_view(&book).map(Response::Handover),
            Request::CompareCard { book, card } => {
                self.compare_with_book(&book, &card).map(Box::new).map(Response::Compared)
            }
            Request::CompareCards { old, new } => {
                self.compare_cards(&old, &new).map(Box::new).map(Response::Compared)
            }
            Request::ReadCard { text } => self.card_read_view(&text).map(Response::CardRead),
            Request::Codes { text, book } => self.codes_view(&text, book.as_deref()).map(Response::Codes),
            Request::Trouble { book, trouble, subject, here } => {
                let view = self.trouble_view(&book, &trouble, subject.as_deref(), &here);
                view.map(Box::new).map(Response::Trouble)
            }
            Request::TroubleOf { book, subject, here } => {
                self.trouble_of_view(&book, &subject, &here).map(Box::new).map(Response::Trouble)
            }
            Request::Troubles { book } => self.troubles_view(&book).map(Response::Troubles),
            Request::Brief { book, subject } => {
                self.brief_view(&book, &subject).map(Box::new).map(Response::Brief)
            }
            Request::Guides { book } => self.guides_view(&book).map(Response::Guides),
            Request::Guide { book, key } => self.guide_view(&book, &key).map(Response::Guide),
            Request::Check => self.check_view().map(Response::Check),
            Request::Rebuild => self.rebuild().map(Response::Rebuilt),
            change => self.change(change).map(Response::Written),
        }
    }
}

fn photo_folder(folder: &Path) -> PathBuf {
    folder.join("photos")
}
