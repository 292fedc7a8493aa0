//! A sheet of which the book has said all it has to say: setting it takes the time, and needs no door.

use card::{Brief, Report, SheetModel, SheetOptions};

use crate::Refusal;

/// A sheet that can be set as PDF while the door goes on to serve others.
#[derive(Debug)]
pub struct Gathered(Sheet);

#[derive(Debug)]
enum Sheet {
    Card {
        model: Box<SheetModel>,
        print: SheetOptions,
    },
    /// With the second since 1970 at which it says it was made.
    Brief {
        brief: Brief,
        made_at: i64,
    },
    Report {
        report: Box<Report>,
        print: SheetOptions,
    },
}

impl Gathered {
    pub(super) fn card(model: SheetModel, print: SheetOptions) -> Gathered {
        Gathered(Sheet::Card { model: Box::new(model), print })
    }

    pub(super) fn brief(brief: Brief, made_at: i64) -> Gathered {
        Gathered(Sheet::Brief { brief, made_at })
    }

    pub(super) fn report(report: Report, print: SheetOptions) -> Gathered {
        Gathered(Sheet::Report { report: Box::new(report), print })
    }

    /// The sheet as PDF/A, ready to print.
    pub fn pdf(&self) -> Result<Vec<u8>, Refusal> {
        let set = match &self.0 {
            Sheet::Card { model, print } => card::pdf(model, print),
            Sheet::Brief { brief, made_at } => card::brief_pdf(brief, *made_at),
            Sheet::Report { report, print } => card::report_pdf(report, print),
        };
        Ok(set?)
    }
}
