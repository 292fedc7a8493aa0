//! The commands and their options.

use std::path::PathBuf;

use clap::{Parser, Subcommand};
use door::{CardLang, CardOptions, CardPaper, CardSize, ReportOptions, VinShown};

/// Keeps a car's service book in ink.
#[derive(Debug, Parser)]
#[command(name = "wellkept", version, about)]
pub struct Args {
    /// The folder in which the books stand
    #[arg(long, global = true, value_name = "DIR")]
    pub shelf: Option<PathBuf>,
    /// The day that counts as today
    #[arg(long, global = true, value_name = "YYYY-MM-DD")]
    pub today: Option<door::Day>,
    /// Answer in JSON
    #[arg(long, global = true)]
    pub json: bool,
    /// The vehicle by its name, where the shelf holds several
    #[arg(long, global = true, value_name = "NAME")]
    pub vehicle: Option<String>,
    /// What to do
    #[command(subcommand)]
    pub command: Command,
}

/// What to do.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Fill an empty shelf with the invented household
    Demo,
    /// List the vehicles
    Vehicles,
    /// Say what is due, and why
    Due {
        /// List what is not for this car as well, and why
        #[arg(long)]
        all: bool,
    },
    /// Say which visits to make in the next 24 months
    Visits,
    /// Write a reading
    Reading {
        /// The digits that the instrument shows
        value: String,
        /// The day; today when left out
        #[arg(long, value_name = "DAY", default_value = "")]
        on: String,
        /// The fuel taken at it
        #[command(flatten)]
        fuel: FuelArgs,
        /// Keep it even if it can hardly be
        #[arg(long)]
        keep: bool,
    },
    /// Say what the car uses, whether work helped, and whether it uses more than it did
    Fuel {
        /// The unit of consumption, such as litres-per-100-km or miles-per-us-gallon
        #[arg(long, value_name = "UNIT-KEY")]
        unit: Option<String>,
    },
    /// Say what the car costs, by year and by distance
    Costs {
        /// By month in place of by year
        #[arg(long)]
        months: bool,
    },
    /// Say what was read off the engine's computer or a meter
    Measured,
    /// Write what was read off the engine's computer or a meter
    Measure {
        /// Each value behind the key of what was measured: long-trim-1 -4.7 rest-voltage 12.48
        #[arg(allow_negative_numbers = true, value_name = "PARAMETER VALUE")]
        values: Vec<String>,
        /// Read lines of a scan tool from standard input
        #[arg(long, conflicts_with = "values")]
        stdin: bool,
        /// The day; today when left out
        #[arg(long, value_name = "DAY", default_value = "")]
        on: String,
    },
    /// Write a visit, from these options or as JSON from standard input
    Visit(VisitArgs),
    /// Take photos or documents into the tray
    Paper {
        /// JPEG, PNG, WebP or PDF files
        #[arg(required = true)]
        files: Vec<PathBuf>,
        /// The line to which they belong, by its id: a visit, a reading, or what was bought
        #[arg(long, value_name = "ID")]
        visit: Option<String>,
    },
    /// Write out the PDF of which a paper is a page, as it came in
    Document {
        /// The paper, by its id, which `paper --json` answers
        paper: String,
        /// The file to write, where nothing may stand yet
        #[arg(long, value_name = "FILE.pdf")]
        out: PathBuf,
    },
    /// Read what a receipt says, without writing anything
    Read {
        /// A JPEG, PNG, WebP or PDF file
        file: PathBuf,
        /// The folder with the models of the reader
        #[arg(long, value_name = "DIR")]
        models: Option<PathBuf>,
    },
    /// List the parts that were fitted, and how long they last
    Parts {
        /// Only those that served this item, by its key
        #[arg(long = "for", value_name = "ITEM-KEY")]
        item: Option<String>,
    },
    /// Say what the next visit needs
    Buy,
    /// Print the history card
    Card {
        /// The PDF to write
        #[arg(long, value_name = "FILE.pdf")]
        out: PathBuf,
        #[command(flatten)]
        looks: CardArgs,
    },
    /// Print the full report: every visit with its parts and receipts, for whoever wants to know all
    Report {
        /// The PDF to write
        #[arg(long, value_name = "FILE.pdf")]
        out: PathBuf,
        #[command(flatten)]
        tells: ReportArgs,
    },
    /// Read a card: its PDF, a photo of it, or the text of its square
    CardRead {
        /// A file, or the text itself
        card: String,
    },
    /// Write one file for the next owner; from then on the book is read-only here
    Handover(HandoverArgs),
    /// Take in the file that the last owner wrote, and go on writing in the same book
    Receive {
        /// The file
        file: PathBuf,
        /// A file that holds the passphrase; asked for when left out and needed
        #[arg(long, value_name = "FILE")]
        passphrase_file: Option<PathBuf>,
    },
    /// Say whether an old card still holds: against a newer card, or against the vehicle's book
    Compare {
        /// The old card: its PDF, a photo of it, or the text of its square
        old: String,
        /// The newer card; the book of the vehicle when left out
        new: Option<String>,
    },
    /// Say what a vehicle identification number says
    Vin {
        /// The number
        vin: String,
    },
    /// Explain trouble codes, from whatever text a scan tool gives, with their life in the vehicle's book where there is one
    Code {
        /// Codes or answers, each as it stands
        #[arg(required = true, value_name = "TEXT")]
        text: Vec<String>,
    },
    /// List the symptoms that the vehicle can show, by their keys
    Symptoms,
    /// Say what a trouble may be, and what to check first
    Trouble(TroubleArgs),
    /// Show the guide to a job, or list the guides
    Guide {
        /// The guide, by its key
        key: Option<String>,
    },
    /// Verify every entry, chain, signature and photo
    Check,
    /// Work the pages out again from the entries
    Rebuild,
    /// Answer requests, one JSON a line, from standard input
    Ask,
    /// Serve the same ui to a browser on this machine alone
    Serve {
        /// The port; 0 takes a free one
        #[arg(long, default_value_t = 0)]
        port: u16,
    },
}

/// A handover, or its taking back.
#[derive(Debug, clap::Args)]
pub struct HandoverArgs {
    /// The file to write, where nothing may stand yet
    #[arg(long, value_name = "FILE", required_unless_present = "take_back")]
    pub out: Option<PathBuf>,
    /// A file that holds the passphrase with which to lock it; asked for when left out and somebody is there
    #[arg(long, value_name = "FILE")]
    pub passphrase_file: Option<PathBuf>,
    /// Keep the photos and documents here
    #[arg(long)]
    pub without_papers: bool,
    /// The day; today when left out
    #[arg(long, value_name = "DAY", default_value = "")]
    pub on: String,
    /// The digits that the instrument shows
    #[arg(long, default_value = "")]
    pub reading: String,
    /// To the next owner
    #[arg(long, value_name = "TEXT", default_value = "")]
    pub words: String,
    /// Keep the reading even if it can hardly be
    #[arg(long)]
    pub keep: bool,
    /// The sale fell through: strike the handover out and write in the book again
    #[arg(long, conflicts_with_all = ["out", "passphrase_file", "without_papers", "on", "reading", "words", "keep"])]
    pub take_back: bool,
    /// Why it is taken back
    #[arg(long, value_name = "TEXT", default_value = "", requires = "take_back")]
    pub why: String,
}

/// How a card looks, and what it is printed on.
#[derive(Debug, clap::Args)]
pub struct CardArgs {
    /// How large it is
    #[arg(long, value_enum, default_value = "a5")]
    pub size: Size,
    /// What lies in the printer; on a paper larger than the card, marks show where to cut
    #[arg(long, value_enum, default_value = "own")]
    pub paper: Paper,
    /// What to leave out, separated by commas
    #[arg(long, value_enum, value_delimiter = ',', value_name = "WHAT")]
    pub hide: Vec<Hide>,
    /// Tell what each visit cost
    #[arg(long)]
    pub prices: bool,
    /// In which language it is printed
    #[arg(long, value_enum, default_value = "en")]
    pub lang: Lang,
    /// The page on which a scanned card opens
    #[arg(long, value_name = "HTTPS-ADDRESS")]
    pub viewer: Option<String>,
}

/// What a full report tells.
#[derive(Debug, clap::Args)]
pub struct ReportArgs {
    /// What to leave out, separated by commas; photos of receipts go with it, which would show it
    #[arg(long, value_enum, value_delimiter = ',', value_name = "WHAT")]
    pub hide: Vec<Hide>,
    /// Tell what each visit and part cost, and what each year came to
    #[arg(long)]
    pub prices: bool,
    /// Leave the photos of receipts out; without prices they are too small to be read
    #[arg(long)]
    pub without_receipts: bool,
    /// In which language it is printed
    #[arg(long, value_enum, default_value = "en")]
    pub lang: Lang,
    /// The page on which a scanned card opens
    #[arg(long, value_name = "HTTPS-ADDRESS")]
    pub viewer: Option<String>,
}

impl ReportArgs {
    /// The same for the door.
    pub fn options(&self) -> ReportOptions {
        ReportOptions {
            vin: vin_shown(&self.hide),
            hide_names: self.hide.contains(&Hide::Names),
            prices: self.prices,
            without_receipts: self.without_receipts,
            lang: self.lang.into(),
            viewer: self.viewer.clone(),
        }
    }
}

/// Of two that concern the identification number, the one that hides more holds.
fn vin_shown(hide: &[Hide]) -> VinShown {
    match (hide.contains(&Hide::Vin), hide.contains(&Hide::VinHead)) {
        (true, _) => VinShown::Hidden,
        (false, true) => VinShown::LastSix,
        (false, false) => VinShown::Whole,
    }
}

/// The sizes of a card.
#[derive(Debug, Clone, Copy, clap::ValueEnum)]
pub enum Size {
    /// 85.60 mm by 53.98 mm, as a driving licence
    Id1,
    /// A6, two sides
    A6,
    /// A5, to be folded to A6
    A5,
    /// A full page
    A4,
}

/// The paper that a card is printed on.
#[derive(Debug, Clone, Copy, clap::ValueEnum)]
pub enum Paper {
    /// As large as the card
    Own,
    /// A4
    A4,
    /// US Letter
    Letter,
}

/// The languages of a card and a report.
#[derive(Debug, Clone, Copy, clap::ValueEnum)]
pub enum Lang {
    /// English
    En,
    /// German
    De,
    /// French
    Fr,
    /// Spanish
    Es,
}

impl From<Lang> for CardLang {
    fn from(lang: Lang) -> CardLang {
        match lang {
            Lang::En => CardLang::En,
            Lang::De => CardLang::De,
            Lang::Fr => CardLang::Fr,
            Lang::Es => CardLang::Es,
        }
    }
}

/// What a card may leave out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub enum Hide {
    /// The identification number
    Vin,
    /// All of the identification number but its last six characters
    VinHead,
    /// The names of workshops
    Names,
}

impl CardArgs {
    /// The same for the door.
    pub fn options(&self) -> CardOptions {
        CardOptions {
            size: match self.size {
                Size::Id1 => CardSize::Id1,
                Size::A6 => CardSize::A6,
                Size::A5 => CardSize::A5,
                Size::A4 => CardSize::A4,
            },
            paper: match self.paper {
                Paper::Own => CardPaper::Own,
                Paper::A4 => CardPaper::A4,
                Paper::Letter => CardPaper::Letter,
            },
            vin: vin_shown(&self.hide),
            hide_names: self.hide.contains(&Hide::Names),
            prices: self.prices,
            lang: self.lang.into(),
            viewer: self.viewer.clone(),
        }
    }
}

/// Fuel taken at a reading: of amount, price and total any two give the third.
#[derive(Debug, clap::Args)]
pub struct FuelArgs {
    /// How much
    #[arg(long, default_value = "")]
    pub amount: String,
    /// Its unit: litre, us-gallon, imperial-gallon or kilowatt-hour; the one used last when left out
    #[arg(long, value_name = "UNIT-KEY", default_value = "")]
    pub unit: String,
    /// What one unit cost
    #[arg(long, default_value = "")]
    pub price: String,
    /// What it cost in all
    #[arg(long, default_value = "")]
    pub total: String,
    /// The currency of price and total; the one used last when left out
    #[arg(long, default_value = "")]
    pub currency: String,
    /// What it was: petrol, diesel, gas or electric; what the car took last when left out
    #[arg(long, default_value = "")]
    pub kind: String,
    /// How far it was filled: full, part or missed
    #[arg(long, default_value = "")]
    pub fill: String,
}

impl FuelArgs {
    /// Whether any fuel was taken.
    pub fn is_any(&self) -> bool {
        [&self.amount, &self.price, &self.total].iter().any(|text| !text.is_empty())
    }
}

/// A trouble.
#[derive(Debug, Default, clap::Args)]
pub struct TroubleArgs {
    /// What shows, by its key
    #[arg(long, value_name = "KEY", num_args = 1..)]
    pub symptom: Vec<String>,
    /// What was looked for and does not show, by its key
    #[arg(long, value_name = "KEY", num_args = 1..)]
    pub absent: Vec<String>,
    /// A code, or an answer of a scan tool
    #[arg(long, value_name = "CODE", num_args = 1..)]
    pub code: Vec<String>,
    /// What a check said
    #[arg(long, value_name = "CHECK=found|not|skipped")]
    pub answer: Vec<String>,
    /// It is dark, or soon will be
    #[arg(long)]
    pub at_night: bool,
    /// A tool that is at hand beside the usual ones, by its key
    #[arg(long, value_name = "TOOL")]
    pub owned: Vec<String>,
    /// A usual tool that is not at hand, by its key
    #[arg(long, value_name = "TOOL")]
    pub lacking: Vec<String>,
}

/// A visit.
#[derive(Debug, clap::Args)]
pub struct VisitArgs {
    /// Read the whole visit as JSON from standard input
    #[arg(long, conflicts_with_all = ["on", "reading", "by", "item", "part", "found", "cost", "note"])]
    pub stdin: bool,
    /// The day; today when left out
    #[arg(long, value_name = "DAY", default_value = "")]
    pub on: String,
    /// The digits that the instrument showed
    #[arg(long, default_value = "")]
    pub reading: String,
    /// The workshop; the owner himself when left out
    #[arg(long, value_name = "WORKSHOP", default_value = "")]
    pub by: String,
    /// What was done: the key of a catalogue item, or words of your own
    #[arg(long)]
    pub item: Vec<String>,
    /// A part as MAKER;NUMBER;NAME;QUANTITY;PRICE;KIND, of which the last ones may be left out
    #[arg(long)]
    pub part: Vec<String>,
    /// What was found without being done: ITEM;FINDING;VALUE, of which the value may be left out
    #[arg(long)]
    pub found: Vec<String>,
    /// What it cost in all
    #[arg(long, default_value = "")]
    pub cost: String,
    /// The currency of the cost and the prices
    #[arg(long, default_value = "")]
    pub currency: String,
    /// Anything else worth keeping
    #[arg(long, default_value = "")]
    pub note: String,
    /// Photos of its papers
    #[arg(long, value_name = "FILE")]
    pub paper: Vec<PathBuf>,
    /// Keep its reading even if it can hardly be
    #[arg(long)]
    pub keep: bool,
}

impl Args {
    /// The folder given, else one in the user's data folder.
    pub fn shelf(&self) -> PathBuf {
        let data = || {
            let home = || std::env::var_os("HOME").map(|home| PathBuf::from(home).join(".local/share"));
            std::env::var_os("XDG_DATA_HOME").map(PathBuf::from).or_else(home).unwrap_or_default()
        };
        self.shelf.clone().unwrap_or_else(|| data().join("wellkept"))
    }
}
