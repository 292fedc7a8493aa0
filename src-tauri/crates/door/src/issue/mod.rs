//! The history card: what it claims, how it looks, and how it is read back.

mod brief;
mod claims;
mod compare;
mod gathered;
mod numbers;
mod plot;
mod reading;
mod record;
mod report;
mod sheet;

use card::{
    Claims, Fitted, PlainFitted, SheetModel, SheetOptions, SheetPaper, SheetSize, Turn, ViewerAddress,
};
use rules::upkeep::DueLine;
use words::{Face, Words};

use crate::car::{Car, Visit};
use crate::{CardOptions, CardPaper, CardSize, CardView, Door, Refusal};

pub use gathered::Gathered;

const VIEWER_SETTING: &str = "viewer-address";

/// A card ready to be set.
struct Issue {
    /// With all visits of the book.
    claims: Claims,
    due: Vec<DueLine>,
    model: SheetModel,
    options: SheetOptions,
    text: String,
    shown: usize,
    left_out: usize,
    viewer: Option<ViewerAddress>,
}

/// What stands in the square.
enum Content {
    Signed(Box<Fitted>),
    Plain(PlainFitted),
}

impl Door {
    /// The page on which a scanned card opens, if the owner has set one.
    pub(crate) fn viewer_address(&self) -> Result<Option<ViewerAddress>, Refusal> {
        let address = self.shelf.setting(VIEWER_SETTING)?;
        Ok(address.map(|address| address.parse()).transpose()?)
    }

    pub(crate) fn set_viewer_address(
        &mut self,
        address: Option<&str>,
    ) -> Result<crate::WrittenView, Refusal> {
        let address = address.map(str::trim).filter(|address| !address.is_empty());
        let parsed: Option<ViewerAddress> =
            address.map(str::parse).transpose().map_err(|error| Refusal::from(error).at("address"))?;
        self.shelf.set_setting(VIEWER_SETTING, parsed.as_ref().map(ViewerAddress::as_str))?;
        Ok(crate::WrittenView { book: String::new(), subject: String::new(), warnings: Vec::new() })
    }

    pub(crate) fn card_view(&self, book: &str, options: &CardOptions) -> Result<CardView, Refusal> {
        let car = self.car(book)?;
        let issue = self.issue(&car, options)?;
        Ok(CardView {
            vehicle: crate::screens::vehicle_line(&car),
            pages: card::svg(&issue.model, &issue.options)?,
            turn: turn_key(issue.options.layout().turn()).to_owned(),
            shown: issue.shown,
            left_out: issue.left_out,
            viewer_address: issue.viewer.map(|viewer| viewer.to_string()),
            text: issue.text,
            fingerprint: crate::screens::fingerprint(self.shelf.writer().key()),
        })
    }

    /// Gathers the card of a book.
    pub fn card(&self, book: &str, options: &CardOptions) -> Result<Gathered, Refusal> {
        let issue = self.issue(&*self.car(book)?, options)?;
        Ok(Gathered::card(issue.model, issue.options))
    }

    fn issue(&self, car: &Car, options: &CardOptions) -> Result<Issue, Refusal> {
        let today = self.clock.today();
        let words = Words::load_for(Face::Card, options.lang.tag());
        let viewer = match &options.viewer {
            Some(address) => Some(address.parse::<ViewerAddress>()?),
            None => self.viewer_address()?,
        };
        let due = car.due(today);
        let head = self.shelf.head(car.book)?;
        let claims = claims::claims(car, &car.visits, &due, options, head, today)?;
        let print = SheetOptions {
            size: size(options.size),
            paper: paper(options.paper),
            made_at: i64::from(today.epoch()) * 86_400,
            ident: format!("{} {head}", car.book),
        };
        let limit = print.size.square_limit();
        let (content, text, left_out) = if let Some(address) = &viewer {
            let key = self.shelf.writer().signing_key();
            let fitted = card::fit(&claims, key, address, limit)?;
            let (text, left_out) = (fitted.message.text(address), fitted.claims.left_out);
            (Content::Signed(Box::new(fitted)), text, left_out)
        } else {
            let lines = sheet::plain_lines(&claims, self.catalogue, &words);
            // The visits are its last lines.
            let visits = |left_out: usize| left_out.min(claims.visits.len());
            let note = |left_out| sheet::visits_note(claims.visits.len(), visits(left_out), &words);
            let fitted = card::fit_plain(&lines, note, limit)?;
            let left_out = u32::try_from(visits(fitted.left_out)).unwrap_or(u32::MAX);
            let text = fitted.text.clone();
            (Content::Plain(fitted), text, left_out)
        };
        let left_out = usize::try_from(left_out).unwrap_or(usize::MAX);
        let writers = self.writers(car.book)?;
        let sheet = sheet::Sheet {
            car,
            due: &due,
            writers: &writers,
            catalogue: self.catalogue,
            words: &words,
            options,
            print: &print,
        };
        let fingerprint = crate::screens::fingerprint(self.shelf.writer().key());
        let signed = sheet::Signed { content, left_out, fingerprint: &fingerprint };
        let model = sheet.model(&claims, signed);
        Ok(Issue {
            shown: car.visits.len() - left_out.min(car.visits.len()),
            model,
            options: print,
            text,
            left_out,
            viewer,
            claims,
            due,
        })
    }
}

const fn size(size: CardSize) -> SheetSize {
    match size {
        CardSize::Id1 => SheetSize::Id1,
        CardSize::A6 => SheetSize::A6,
        CardSize::A5 => SheetSize::A5,
        CardSize::A4 => SheetSize::A4,
    }
}

const fn paper(paper: CardPaper) -> SheetPaper {
    match paper {
        CardPaper::Own => SheetPaper::Own,
        CardPaper::A4 => SheetPaper::A4,
        CardPaper::Letter => SheetPaper::Letter,
    }
}

const fn turn_key(turn: Turn) -> &'static str {
    match turn {
        Turn::LongEdge => "long-edge",
        Turn::ShortEdge => "short-edge",
    }
}

/// The texts of the squares in a picture or a PDF, a card's first: a photo may show other squares too.
pub fn scan_card(bytes: &[u8]) -> Result<Vec<String>, Refusal> {
    let mut texts = card::scan(bytes)?;
    texts.sort_by_key(|text| match reading::read_code(text) {
        Ok(_) => 0,
        Err(refusal) if refusal.code == "card-digits" => 2,
        Err(_) => 1,
    });
    Ok(texts)
}

/// What a visit's flags are worked out from.
fn flags(visit: &Visit) -> card::Flags {
    claims::flags(visit)
}
