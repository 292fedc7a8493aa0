//! What there was to pay: the amount that a label names and that other figures of the receipt confirm.

use units::{Currency, Money};

use crate::text::Area;

use super::figures::Beside;
use super::page::{Line, Page};
use super::receipt::{Check, CheckKind, Field, Item, Sure, money};
use super::sums::{Named, Sums};
use super::words::Role;

/// Currencies in which whole amounts are printed without decimals.
const WHOLE: &[&str] = &["JPY", "HUF", "ISK", "CZK", "SEK", "NOK", "DKK"];

/// Everything that a total is held against, in hundredths.
pub(super) struct Against<'a> {
    page: &'a Page,
    sums: &'a Sums,
    /// The lines' sum with the fuel's, if there are lines.
    lines: Option<i64>,
    /// What the fuel cost, where volume and price confirm it.
    fuel: Option<i64>,
    /// What was paid less the change: every way in which that can be printed.
    paid: Vec<i64>,
    /// Net and tax together: every way in which that can be printed.
    net: Vec<i64>,
}

/// Hundredths, and where they stand.
pub(super) type Placed = (i64, Area);

/// An amount that may be the total.
#[derive(Clone)]
struct Candidate {
    cents: i64,
    area: Area,
    letters: f32,
    mended: bool,
    /// 2 for a label that says nothing else, 1 for one that may, 0 for a payment, -1 for no label at all.
    label: i32,
    line: usize,
}

impl<'a> Against<'a> {
    /// Gathers what the receipt says apart from its total.
    pub fn new(page: &'a Page, sums: &'a Sums, items: &[Item], fuel: Option<i64>) -> Against<'a> {
        let lines = (!items.is_empty()).then(|| of_goods(items, fuel));
        Against { page, sums, lines, fuel, paid: paid(sums), net: net(sums) }
    }

    /// How many independent things confirm this amount, printed on this line.
    fn evidence(&self, cents: i64, line: usize) -> usize {
        if self.is_before_rounding(cents, line) {
            return 0;
        }
        let again = self.totals().any(|named| named.cents == cents && named.line != line);
        let paid = self.paid.contains(&cents) && self.paid_elsewhere(cents, line);
        let unrounded = self.unrounded(cents);
        let net = unrounded.iter().any(|cents| self.net.contains(cents));
        let fuel = unrounded.iter().any(|cents| self.fuel_agrees(*cents));
        let all = [again, paid, net, self.rate_agrees(cents), self.lines_agree(cents), fuel];
        all.into_iter().filter(|holds| *holds).count()
    }

    /// The step to the smallest coin, or nothing.
    fn rounding(&self) -> i64 {
        self.sums.with(Role::Rounding).map(|named| named.cents).sum()
    }

    /// The amount, and what it may have been before it was rounded; a receipt does not always say which way.
    fn unrounded(&self, cents: i64) -> Vec<i64> {
        match self.rounding() {
            0 => vec![cents],
            step => vec![cents, cents - step, cents + step],
        }
    }

    /// Whether the same sum stands again further down, rounded.
    fn is_before_rounding(&self, cents: i64, line: usize) -> bool {
        let step = self.rounding().abs();
        let rounded = |named: &Named| named.line > line && (named.cents - cents).abs() == step;
        step != 0 && self.totals().any(rounded)
    }

    /// Whether the only rate is that of a tax in this amount: of several rates each has a part of the total.
    fn rate_agrees(&self, cents: i64) -> bool {
        let mut rated = self.sums.taxes.iter().filter(|tax| tax.rate.is_some());
        let (only, more) = (rated.next(), rated.next());
        self.sums.untaxed == 0
            && more.is_none()
            && only.is_some_and(|tax| of_rate(tax.rate, tax.cents, cents))
    }

    /// Whether the fuel cost this and nothing else was bought: a larger sum below the fuel's own, which a payment or
    /// net and tax confirm, says that something was.
    fn fuel_agrees(&self, cents: i64) -> bool {
        let held =
            |other: i64| self.paid.contains(&other) || self.net.contains(&other) || self.lines == Some(other);
        let whole = |named: &Named| named.cents > cents && named.alone && held(named.cents);
        self.fuel == Some(cents) && !self.totals().any(whole)
    }

    /// Whether anything paid stands on another line, or comes from two lines.
    fn paid_elsewhere(&self, cents: i64, line: usize) -> bool {
        self.sums.with(Role::Paid).any(|named| named.line != line || named.cents != cents)
    }

    fn totals(&self) -> impl Iterator<Item = &Named> {
        self.sums.with(Role::Total).chain(self.sums.with(Role::Sum))
    }

    /// Whether the lines add up to this, by themselves or with the tax or the rounding.
    fn lines_agree(&self, cents: i64) -> bool {
        let Some(lines) = self.lines else { return false };
        let rounding = self.rounding();
        [lines, lines + self.sums.tax(), lines + rounding, lines - rounding].contains(&cents)
    }

    /// Whether something printed speaks against this amount.
    fn disputed(&self, cents: i64) -> bool {
        let larger = self.totals().any(|named| named.cents > cents && named.alone);
        let paid = !self.paid.is_empty() && !self.paid.contains(&cents);
        let net = !self.net.is_empty() && !self.net.contains(&cents);
        larger || paid || net
    }

    /// Whether as much speaks for another sum, which may just as well be the total.
    fn rival(&self, cents: i64, evidence: usize) -> bool {
        self.totals().any(|named| {
            named.cents != cents && named.alone && self.evidence(named.cents, named.line) >= evidence
        })
    }

    /// The total, if anything may be it, and the place and hundredths of a labelled one that it overrules.
    pub fn total(&self, currency: &Field<Currency>) -> Option<(Field<Money>, Option<Placed>)> {
        let mut candidates: Vec<Candidate> =
            self.totals().filter_map(|named| self.candidate(named)).collect();
        candidates.extend(self.without_point(currency.value));
        let best = candidates.into_iter().max_by_key(|candidate| self.rank(candidate));
        let confirmed = |candidate: &Candidate| self.evidence(candidate.cents, candidate.line) > 0;
        let (best, overruled) = match best {
            Some(best) if confirmed(&best) => (best, None),
            Some(best) => match self.by_payment().filter(confirmed) {
                Some(paid) => (paid, Some((best.cents, best.area))),
                None => (best, None),
            },
            None if self.nothing_to_pay() => return None,
            None => (self.by_payment().or_else(|| self.largest())?, None),
        };
        let sure =
            self.sure(&best).min(if currency.sure == Sure::Doubtful { Sure::Likely } else { Sure::Sure });
        Some((Field { value: money(best.cents, currency.value), sure, area: best.area }, overruled))
    }

    /// The best confirmed first, then the better labelled, then the first printed.
    fn rank(&self, candidate: &Candidate) -> (usize, i32, bool, i64) {
        let evidence = self.evidence(candidate.cents, candidate.line);
        let line = i64::try_from(candidate.line).unwrap_or(i64::MAX);
        (evidence, candidate.label, !candidate.mended, -line)
    }

    fn candidate(&self, named: &Named) -> Option<Candidate> {
        let line = self.page.line(named.line)?;
        let label = if named.role == Role::Total { 2 } else { i32::from(named.alone) };
        Some(Candidate {
            cents: named.cents,
            area: line.area(&named.figure.at),
            letters: line.letters(&named.figure.at),
            mended: named.figure.mended,
            label,
            line: named.line,
        })
        .filter(|candidate| candidate.cents > 0)
    }

    fn sure(&self, best: &Candidate) -> Sure {
        let evidence = self.evidence(best.cents, best.line);
        let labelled = best.label > 0 && best.letters >= 0.8;
        let rival = self.rival(best.cents, evidence);
        match (evidence, self.disputed(best.cents), best.mended) {
            (1.., ..) if rival && best.label >= 0 => Sure::Likely,
            (2.., _, false) | (1, false, false) | (3.., _, true) if best.label > 0 => Sure::Sure,
            (1.., ..) if best.label >= 0 => Sure::Likely,
            (0, false, false) if labelled => Sure::Likely,
            _ => Sure::Doubtful,
        }
    }

    /// Digits behind the label of a total whose decimal sign was not read: `TOTAL 4250`, `TOTAL 42 50`. They are a
    /// total only where other figures of the receipt come to the same amount, or where the currency has no decimals.
    fn without_point(&self, currency: Currency) -> Vec<Candidate> {
        let whole = WHOLE.contains(&currency.code());
        let lines = self.page.lines.iter().enumerate().filter(|(_, line)| line.amounts().next().is_none());
        let read = |(index, line): (usize, &Line)| {
            let label = line.labels.all.iter().find(|label| matches!(label.role, Role::Total | Role::Sum))?;
            let behind = line
                .figures
                .iter()
                .filter(|figure| figure.at.start >= label.at.end && figure.beside == Beside::Nothing);
            let figures: Vec<_> = behind.filter(|figure| figure.whole().is_some()).take(3).collect();
            let (first, last) = (figures.first()?, figures.last()?);
            let digits = figures.iter().try_fold(0_i64, |sum, figure| {
                sum.checked_mul(10_i64.pow(u32::try_from(figure.at.len()).ok().filter(|len| *len < 9)?))?
                    .checked_add(figure.digits)
            })?;
            let at = first.at.start..last.at.end;
            let alone = i32::from(line.labels.strange <= 2 || label.role == Role::Total);
            let make = |cents, mended| Candidate {
                cents,
                area: line.area(&at),
                letters: line.letters(&at),
                mended,
                label: alone,
                line: index,
            };
            let confirmed = self.evidence(digits, index) > 0 && digits >= 100;
            match (whole, confirmed) {
                (true, _) => Some(make(digits.checked_mul(100)?, false)),
                (false, true) => Some(make(digits, true)),
                _ => None,
            }
        };
        lines.filter_map(read).take(20).collect()
    }

    /// Whether a label names a total, and it is nothing or paid back: then no other amount is what was to be paid.
    fn nothing_to_pay(&self) -> bool {
        self.totals().any(|named| named.alone && named.cents <= 0)
    }

    /// What was paid, where no label names a total that anything confirms.
    fn by_payment(&self) -> Option<Candidate> {
        let change: i64 = self.sums.with(Role::Change).map(|named| named.cents).sum();
        let paid = self
            .sums
            .with(Role::Paid)
            .filter(|named| named.alone)
            .max_by_key(|named| self.evidence(named.cents, named.line))?;
        let mut candidate = self.candidate(paid)?;
        candidate.label = 0;
        if self.evidence(paid.cents, paid.line) == 0 && change > 0 {
            candidate.cents -= change;
        }
        Some(candidate).filter(|candidate| candidate.cents > 0)
    }

    /// The largest amount of all, where no label was read.
    fn largest(&self) -> Option<Candidate> {
        let lines = self.page.lines.iter().enumerate();
        let amounts = lines.flat_map(|(index, line)| line.amounts().map(move |figure| (index, line, figure)));
        let (index, line, figure) = amounts.max_by_key(|(index, _, figure)| (figure.digits, *index))?;
        let (area, letters) = (line.area(&figure.at), line.letters(&figure.at));
        let candidate =
            Candidate { cents: figure.digits, area, letters, mended: figure.mended, label: -1, line: index };
        Some(candidate).filter(|candidate| candidate.cents > 0)
    }

    /// The sums that can be checked, with both figures of each.
    ///
    /// `printed` is what is printed as the total, in hundredths, and where: also where something else is offered.
    pub fn checks(&self, printed: Option<Placed>, currency: Currency) -> Vec<Check> {
        let Some(whole) = printed else { return Vec::new() };
        let cents = whole.0;
        let check = |kind, worked_out, (printed, area): Placed, agrees| Check {
            kind,
            worked_out: money(worked_out, currency),
            printed: money(printed, currency),
            agrees,
            area,
        };
        let lines = self.lines.map(|lines| {
            let (printed, worked_out) = self.beside_lines(lines, whole);
            check(CheckKind::Lines, worked_out, printed, worked_out == printed.0)
        });
        let best = |ways: &[i64]| ways.iter().min_by_key(|way| (**way - cents).abs()).copied();
        let unrounded = self.unrounded(cents);
        // With the rounding that the receipt tells of, net and tax come to the total itself.
        let rounded = |net: i64| if unrounded.contains(&net) { cents } else { net };
        let net = best(&self.net).map(rounded).filter(|net| !self.taxed_in_part(*net, cents));
        let net = net.map(|net| check(CheckKind::NetAndTax, net, whole, net == cents));
        let paid = best(&self.paid).map(|paid| check(CheckKind::Paid, paid, whole, paid == cents));
        lines.into_iter().chain(net).chain(paid).collect()
    }

    /// Whether net and tax come to less than this only because a part of the goods was taxed, as where parts are and
    /// labour is not: the lines and the tax together come to it.
    fn taxed_in_part(&self, net: i64, cents: i64) -> bool {
        net < cents && self.lines.is_some_and(|lines| lines + self.sums.tax() == cents)
    }

    /// The printed sum that the lines are held against, and what they come to: the total, or a sum before tax, or
    /// the total with tax or rounding added; the first that agrees, else the sum before tax, else the total.
    fn beside_lines(&self, lines: i64, total: Placed) -> (Placed, i64) {
        if lines == total.0 {
            return (total, lines);
        }
        let before = self.sums.with(Role::Subtotal).chain(self.sums.with(Role::Net));
        let printed: Vec<Placed> =
            before.filter_map(|named| self.candidate(named)).map(|c| (c.cents, c.area)).collect();
        match printed.iter().find(|(cents, _)| *cents == lines) {
            Some(agreeing) => (*agreeing, lines),
            None if self.lines_agree(total.0) => (total, total.0),
            None => (*printed.first().unwrap_or(&total), lines),
        }
    }
}

/// What the lines come to, with the fuel, whose row is no line unless it was read as one.
fn of_goods(items: &[Item], fuel: Option<i64>) -> i64 {
    let prices = || items.iter().map(|item| hundredths(item.price));
    let beside = fuel.filter(|fuel| prices().all(|price| price != *fuel));
    prices().chain(beside).fold(0, i64::saturating_add)
}

/// Whether this tax at this rate is in this gross amount, to a hundredth.
fn of_rate(rate: Option<i64>, tax: i64, gross: i64) -> bool {
    let Some(rate) = rate else { return false };
    let off = i128::from(tax) * i128::from(10_000 + rate) - i128::from(gross) * i128::from(rate);
    tax >= 20 && off.abs() <= i128::from(10_000 + rate)
}

/// Every amount that what was paid and handed back can come to.
fn paid(sums: &Sums) -> Vec<i64> {
    let paid: Vec<i64> = sums.with(Role::Paid).filter(|named| named.alone).map(|named| named.cents).collect();
    let change: Vec<i64> =
        sums.with(Role::Change).filter(|named| named.cents != 0).map(|named| named.cents.abs()).collect();
    if paid.is_empty() {
        return Vec::new();
    }
    let mut ways = paid.clone();
    ways.push(paid.iter().sum());
    ways.extend(paid.iter().flat_map(|paid| change.iter().map(move |change| paid - change)));
    ways.push(paid.iter().sum::<i64>() - change.iter().sum::<i64>());
    ways
}

/// Every amount that net and tax can come to.
fn net(sums: &Sums) -> Vec<i64> {
    if sums.taxes.is_empty() {
        return Vec::new();
    }
    let before = sums.with(Role::Net).chain(sums.with(Role::Subtotal));
    let mut ways: Vec<i64> =
        before.filter(|named| named.alone).map(|named| named.cents + sums.tax()).collect();
    let nets: Option<i64> = sums.taxes.iter().map(|tax| tax.net).sum();
    ways.extend(nets.map(|nets| nets + sums.untaxed + sums.tax()));
    ways
}

/// Money in hundredths, whatever the decimals of its currency.
pub(super) fn hundredths(value: Money) -> i64 {
    match value.currency.decimals() {
        0 => value.minor.saturating_mul(100),
        3 => value.minor / 10,
        _ => value.minor,
    }
}
