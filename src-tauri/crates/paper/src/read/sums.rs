//! The amounts of a receipt that a label names, and the taxes.

use units::Currency;

use super::figures::Figure;
use super::page::{Line, Page};
use super::receipt::{Field, Sure, Tax, money};
use super::words::Role;

/// More labels of a kind than this are no receipt.
const MOST: usize = 40;

/// An amount that a label names.
#[derive(Debug, Clone)]
pub(super) struct Named {
    /// What the label says.
    pub role: Role,
    /// In hundredths.
    pub cents: i64,
    /// The line of the amount.
    pub line: usize,
    /// Nothing else is said on the label's line.
    pub alone: bool,
    /// The amount.
    pub figure: Figure,
}

/// All of them, from top to bottom.
pub(super) struct Sums {
    named: Vec<Named>,
    /// The taxes, in hundredths.
    pub taxes: Vec<Taxed>,
    /// What is taxed at no rate, `0 %`, where that is printed.
    pub untaxed: i64,
}

/// A tax in hundredths.
#[derive(Debug, Clone)]
pub(super) struct Taxed {
    /// In hundredths of a percent.
    pub rate: Option<i64>,
    /// The tax.
    pub cents: i64,
    /// What it was worked out from.
    pub net: Option<i64>,
    /// Rate and amounts agree.
    pub agrees: bool,
    line: usize,
    figure: Figure,
}

impl Sums {
    /// Finds them on lines from `first`, which is where the goods end.
    pub fn of(page: &Page, first: usize) -> Sums {
        let mut named = Vec::new();
        for (index, line) in page.lines.iter().enumerate() {
            named.extend(on_line(index, line));
            named.extend(below(page, index));
        }
        let lines = page.lines.iter().enumerate();
        let found = lines.filter_map(|(index, line)| tax(index, line, index >= first, &named));
        let mut taxes: Vec<Taxed> = Vec::new();
        for tax in found {
            match taxes.iter_mut().find(|known| known.same(&tax)) {
                Some(known) if tax.agrees && !known.agrees => *known = tax,
                Some(_) => {}
                None => taxes.push(tax),
            }
        }
        taxes.truncate(MOST);
        let untaxed = page.lines.iter().filter_map(untaxed).fold(0_i64, i64::saturating_add);
        Sums { named, taxes, untaxed }
    }

    /// The amounts with this role.
    pub fn with(&self, role: Role) -> impl Iterator<Item = &Named> {
        self.named.iter().filter(move |named| named.role == role).take(MOST)
    }

    /// All taxes together.
    pub fn tax(&self) -> i64 {
        self.taxes.iter().map(|tax| tax.cents).sum()
    }

    /// The taxes as they are offered.
    pub fn offered(&self, page: &Page, currency: Currency) -> Vec<Field<Tax>> {
        let offer = |tax: &Taxed| {
            let line = page.line(tax.line)?;
            let sure = match (tax.agrees, tax.figure.mended) {
                (true, false) => Sure::Sure,
                (true, true) | (false, false) => Sure::Likely,
                (false, true) => Sure::Doubtful,
            };
            let value = Tax {
                rate: tax.rate.and_then(|rate| u32::try_from(rate).ok()),
                amount: money(tax.cents, currency),
                net: tax.net.map(|net| money(net, currency)),
            };
            Some(Field { value, sure, area: line.area(&tax.figure.at) })
        };
        self.taxes.iter().filter_map(offer).collect()
    }
}

impl Taxed {
    /// Whether both are one tax that is printed twice.
    fn same(&self, other: &Taxed) -> bool {
        let rates = self.rate.is_none() || other.rate.is_none() || self.rate == other.rate;
        self.cents == other.cents && rates
    }
}

/// The amounts of a line, each with the label that names it: one of those that stand between it and the amount before.
fn on_line(index: usize, line: &Line) -> Vec<Named> {
    let mut from = 0;
    let mut named = Vec::new();
    let mut role = None;
    for figure in line.amounts() {
        let between =
            line.labels.all.iter().filter(|label| (from..figure.at.start).contains(&label.at.start));
        let roles: Vec<Role> = between.map(|label| label.role).filter(|role| counts(*role)).collect();
        from = figure.at.end;
        role = decisive(&roles).or(role);
        if let Some(role) = role {
            let alone = line.labels.strange <= 2;
            named.push(Named { role, cents: figure.digits, line: index, alone, figure: figure.clone() });
        }
    }
    last_of_each(named)
}

/// Of several amounts behind one label the last is meant: `Total 3 x 15,00 45,00`.
fn last_of_each(named: Vec<Named>) -> Vec<Named> {
    let mut kept: Vec<Named> = Vec::new();
    for one in named {
        if kept.last().is_some_and(|last| last.role == one.role) {
            kept.pop();
        }
        kept.push(one);
    }
    kept
}

/// An amount that slipped to the row below its label.
fn below(page: &Page, index: usize) -> Option<Named> {
    let (line, below) = (page.line(index)?, page.line(index + 1)?);
    let bare = below.describes() == 0 && below.labels.all.iter().all(|label| label.role == Role::Filler);
    if !line.figures.is_empty() || line.labels.strange > 2 || !bare {
        return None;
    }
    let roles: Vec<Role> = line.labels.all.iter().map(|label| label.role).collect();
    // The head of a table names several columns, and none of them alone.
    if roles.iter().filter(|role| counts(**role) || matches!(role, Role::Heading | Role::Part)).count() > 1 {
        return None;
    }
    let mut amounts = below.amounts();
    let (figure, more) = (amounts.next()?, amounts.next());
    let role = decisive(&roles).filter(|_| more.is_none())?;
    Some(Named { role, cents: figure.digits, line: index + 1, alone: true, figure: figure.clone() })
}

/// Whether the role says what an amount is.
fn counts(role: Role) -> bool {
    use Role::{Change, Count, Discount, Net, Paid, Rounding, Saved, Subtotal, Sum, Tax, TaxNumber, Total};
    matches!(
        role,
        Total | Sum | Subtotal | Net | Tax | Paid | Change | Discount | Saved | Count | Rounding | TaxNumber
    )
}

/// Of several labels before an amount the one that decides: one that takes the amount out of the running wherever it
/// stands, else the first. How many things were bought says nothing about the amount behind it.
fn decisive(roles: &[Role]) -> Option<Role> {
    let strong = |role: &&Role| {
        matches!(role, Role::Change | Role::Saved | Role::Subtotal | Role::Net | Role::TaxNumber)
    };
    roles.iter().find(strong).or_else(|| roles.first()).copied().filter(|role| counts(*role))
}

/// The tax on a line: the amount that a printed rate confirms, else the one that the label names.
fn tax(index: usize, line: &Line, summary: bool, named: &[Named]) -> Option<Taxed> {
    let labelled =
        line.labels.has(Role::Tax) && !line.labels.has(Role::TaxNumber) && line.labels.strange <= 12;
    if !labelled && !summary && !is_tax_row(line) {
        return None;
    }
    let amounts: Vec<&Figure> = line.amounts().take(6).collect();
    let percent: Option<i64> = line.figures.iter().find(|figure| figure.is_percent()).and_then(hundredths);
    let by_rate = percent.and_then(|rate| by_rate(rate, &amounts).map(|(tax, net)| (rate, tax, net)));
    let by_rate = by_rate.or_else(|| without_sign(line, &amounts, percent));
    if let Some((rate, figure, net)) = by_rate {
        let taxed = Taxed {
            rate: Some(rate),
            cents: figure.digits,
            net: Some(net),
            agrees: true,
            line: index,
            figure: figure.clone(),
        };
        return Some(taxed);
    }
    let of_label = named.iter().filter(|named| named.role == Role::Tax);
    let named = of_label
        .filter(|named| named.line == index || named.line == index + 1)
        .find(|named| named.line == index || amounts.is_empty())?;
    if !labelled {
        return None;
    }
    // Beside an amount that it is part of, the tax is the smaller.
    let figure =
        amounts.iter().copied().filter(|figure| figure.digits > 0).min_by_key(|figure| figure.digits);
    let alone = line.labels.all.iter().filter(|label| counts(label.role)).count() == 1;
    let figure = if alone && named.line == index { figure? } else { &named.figure };
    (figure.digits > 0).then(|| Taxed {
        rate: percent,
        cents: figure.digits,
        net: None,
        agrees: false,
        line: named.line,
        figure: figure.clone(),
    })
}

/// What stands beside a rate of nothing and a tax of nothing, once as net or twice as net and gross.
fn untaxed(line: &Line) -> Option<i64> {
    let nothing = line.figures.iter().any(|figure| figure.is_percent() && figure.digits == 0);
    let amounts: Vec<i64> = line.amounts().map(|figure| figure.digits).collect();
    let net = *amounts.iter().find(|digits| **digits > 0).filter(|_| nothing)?;
    (amounts.iter().all(|digits| *digits == 0 || *digits == net)).then_some(net)
}

/// Whether a row has nothing but a rate, what is taxed at it and the tax: one of the table of taxes, which may as well
/// stand above the total.
pub(super) fn is_tax_row(line: &Line) -> bool {
    let amounts: Vec<&Figure> = line.amounts().take(6).collect();
    let percent = line.figures.iter().find(|figure| figure.is_percent()).and_then(hundredths);
    let agree = percent.is_some_and(|rate| by_rate(rate, &amounts).is_some());
    agree && line.describes() <= 1 && !line.labels.has(Role::Discount)
}

/// A percentage in hundredths of a percent, up to 30 %.
fn hundredths(figure: &Figure) -> Option<i64> {
    figure.thousandths().map(|thousandths| thousandths / 10).filter(|rate| (1..=3_000).contains(rate))
}

/// The tax and the net among these amounts that this rate connects; with the gross alone, what is left is the net.
fn by_rate<'a>(rate: i64, amounts: &[&'a Figure]) -> Option<(&'a Figure, i64)> {
    let near = |part: i64, whole: i64, of: i64| (part * of - whole * rate).abs() <= of;
    let pairs = || amounts.iter().flat_map(|tax| amounts.iter().map(move |whole| (*tax, *whole)));
    // A few cents fit too many amounts, but for a row on which net and tax add up.
    let adds_up =
        |tax: &Figure, net: &Figure| amounts.iter().any(|gross| gross.digits == net.digits + tax.digits);
    let sound = |tax: &Figure| tax.digits >= 10;
    let small = |tax: &Figure, net: &Figure| tax.digits >= 1 && adds_up(tax, net);
    let net =
        pairs().find(|(tax, net)| (sound(tax) || small(tax, net)) && near(tax.digits, net.digits, 10_000));
    let gross = || pairs().find(|(tax, gross)| sound(tax) && near(tax.digits, gross.digits, 10_000 + rate));
    net.map(|(tax, net)| (tax, net.digits))
        .or_else(|| gross().map(|(tax, gross)| (tax, gross.digits - tax.digits)))
}

/// A rate without its percent sign, in a row of a table: net, tax and gross must all agree with it.
fn without_sign<'a>(
    line: &Line,
    amounts: &[&'a Figure],
    percent: Option<i64>,
) -> Option<(i64, &'a Figure, i64)> {
    if percent.is_some() || amounts.len() < 3 {
        return None;
    }
    line.figures.iter().take(4).filter_map(hundredths).find_map(|rate| {
        let (tax, net) = by_rate(rate, amounts)?;
        amounts.iter().any(|gross| gross.digits == net + tax.digits).then_some((rate, tax, net))
    })
}
