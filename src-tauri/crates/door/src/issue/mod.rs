//! The history card: what it claims, how it looks, and how it is read back.

mod claims;
mod compare;
mod reading;
mod sheet;

use card::{Fitted, PlainFitted, SheetModel, SheetOptions, SheetSize, ViewerAddress};
use words::Words;

use crate::car::{Car, Visit};
use crate::{CardOptions, CardView, Door, Refusal};

const VIEWER_SETTING: &str = "viewer-address";

/// A card ready to be set.
struct Issue {
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
            shown: issue.shown,
            left_out: issue.left_out,
            viewer_address: issue.viewer.map(|viewer| viewer.to_string()),
            text: issue.text,
            fingerprint: crate::screens::fingerprint(self.shelf.writer().key()),
        })
    }

    /// The card as PDF/A, ready to print.
    pub fn card_pdf(&self, book: &str, options: &CardOptions) -> Result<Vec<u8>, Refusal> {
        let issue = self.issue(&self.car(book)?, options)?;
        Ok(card::pdf(&issue.model, &issue.options)?)
    }

    fn issue(&self, car: &Car, options: &CardOptions) -> Result<Issue, Refusal> {
        let today = self.clock.today();
        let words = Words::load(words::ENGLISH);
        let viewer = match &options.viewer {
            Some(address) => Some(address.parse::<ViewerAddress>()?),
            None => self.viewer_address()?,
        };
        let due = car.due(today);
        let head = self.shelf.head(car.book)?;
        let claims = claims::claims(car, &car.visits, &due, options, head, today)?;
        let size = SheetSize::A5Folded;
        let (content, text, left_out) = if let Some(address) = &viewer {
            let key = self.shelf.writer().signing_key();
            let fitted = card::fit(&claims, key, address, size.square_limit())?;
            let (text, left_out) = (fitted.message.text(address), fitted.claims.left_out);
            (Content::Signed(Box::new(fitted)), text, left_out)
        } else {
            let lines = sheet::plain_lines(&claims, self.catalogue, &words);
            let fitted = card::fit_plain(&lines, size.square_limit())?;
            let text = fitted.text.clone();
            (Content::Plain(fitted), text, 0)
        };
        let left_out = usize::try_from(left_out).unwrap_or(usize::MAX);
        let sheet = sheet::Sheet { car, visits: &car.visits, catalogue: self.catalogue, words: &words };
        let fingerprint = crate::screens::fingerprint(self.shelf.writer().key());
        let model = sheet.model(&claims, options, content, left_out, &fingerprint);
        let options = SheetOptions {
            size,
            made_at: i64::from(today.epoch()) * 86_400,
            ident: format!("{} {head}", car.book),
        };
        Ok(Issue {
            shown: car.visits.len() - left_out.min(car.visits.len()),
            model,
            options,
            text,
            left_out,
            viewer,
        })
    }
}

/// Reads the squares of a printed card: a PDF, or a photo of it.
pub fn scan_card(bytes: &[u8]) -> Result<Vec<String>, Refusal> {
    Ok(card::scan(bytes)?)
}

/// What a visit's flags are worked out from.
fn flags(visit: &Visit) -> card::Flags {
    claims::flags(visit)
}
