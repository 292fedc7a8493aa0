//! A receipt: which shop, which day, which lines, how much.

use units::{Currency, Day, Money};

/// A shop or workshop.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Shop {
    pub(super) name: &'static str,
    pub(super) street: &'static str,
    pub(super) town: &'static str,
}

/// A receipt.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Receipt {
    pub(super) shop: Shop,
    pub(super) day: Day,
    pub(super) number: String,
    pub(super) lines: Vec<Line>,
    pub(super) currency: Currency,
}

/// A line of a receipt.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Line {
    /// What was bought.
    pub(super) name: String,
    /// Maker and number, or how much; may be empty.
    pub(super) detail: String,
    /// Minor units for all of it.
    pub(super) minor: i64,
}

impl Receipt {
    /// What all lines cost together.
    pub(super) fn total(&self) -> Money {
        self.money(self.lines.iter().map(|line| line.minor).sum())
    }

    /// An amount in the receipt's currency.
    pub(super) fn money(&self, minor: i64) -> Money {
        Money { minor, currency: self.currency }
    }
}

/// The currency with this code; nothing if the code is none.
pub(super) fn currency(code: &str) -> Option<Currency> {
    code.parse().ok()
}
