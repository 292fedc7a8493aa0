//! What was bought, line by line: the rows between the heads of the columns and the first sum.

use std::ops::Range;

use units::{Currency, Measure, Quantity};

use super::figures::{Beside, Figure};
use super::fold::plain;
use super::page::{Line, Page};
use super::receipt::{Item, Sure, money};
use super::words::{GALLONS, HOURS, KILOGRAMS, LITRES, METRES, PIECES, Role, SETS};
use super::zone::{Kind, is_number_row, kind};

/// The rows of one thing that was bought.
#[derive(Debug, Clone, Default)]
pub(super) struct Draft {
    /// All of them.
    pub rows: Vec<usize>,
    /// The one that describes it.
    text: Option<usize>,
    /// The one with its price.
    priced: Option<usize>,
}

/// Gathers the rows of the zone into things bought.
pub(super) fn drafts(page: &Page, zone: &Range<usize>) -> Vec<Draft> {
    let mut gather = Gather::default();
    for index in zone.clone() {
        let Some(line) = page.line(index) else { continue };
        match kind(line) {
            Kind::Aside => gather.waiting = None,
            Kind::Between => {}
            Kind::Text => gather.text(page, index, line),
            Kind::Figures => gather.figures(page, index, line),
            Kind::Priced => gather.priced(index),
        }
    }
    gather.done
}

#[derive(Default)]
struct Gather {
    done: Vec<Draft>,
    /// Text that no price has followed yet.
    waiting: Option<usize>,
    /// A row with a number that was waiting when the text below it came.
    above: Option<usize>,
    /// Numbers stand above what they belong to: so did the first.
    leading: bool,
    /// Figures that no description has followed yet.
    loose: Option<usize>,
}

impl Gather {
    fn text(&mut self, page: &Page, index: usize, line: &Line) {
        // Figures that are whole in themselves announce the description below them.
        let whole = self.loose.filter(|loose| page.line(*loose).is_some_and(is_whole));
        if let Some(loose) = whole {
            self.loose = None;
            self.done.push(Draft { rows: vec![loose, index], text: Some(index), priced: Some(loose) });
            return;
        }
        // A row with a number and no price belongs to the price above, if there is one.
        let below = self.waiting.is_none() && !self.leading && line.labels.has(Role::Part);
        if let Some(last) = self.done.last_mut().filter(|_| below) {
            last.rows.push(index);
        }
        let number = |row: &usize| page.line(*row).is_some_and(is_number_row);
        self.above = self.waiting.filter(|row| number(row) && !self.taken(*row) && !number(&index));
        self.waiting = Some(index);
    }

    fn figures(&mut self, page: &Page, index: usize, line: &Line) {
        // The price of the line slipped below it: what stands above are quantity and price of one.
        let slipped = |last: &&mut Draft| last.priced != Some(index) && amounts_to(page, last, line);
        if let Some(last) = self.done.last_mut().filter(|_| self.waiting.is_none()).filter(slipped) {
            last.rows.push(index);
            last.priced = Some(index);
            return;
        }
        // Quantity and price of one may as well announce the line below, with a number of the line above between them.
        if announces(page, index, line) && !self.done.last().is_some_and(|last| explains(page, last, line)) {
            (self.waiting, self.loose) = (None, Some(index));
            return;
        }
        if let Some(text) = self.waiting.take().filter(|text| !self.taken(*text)) {
            let above = self.above.take();
            self.leading |= above.is_some() && self.done.is_empty();
            let rows = above.into_iter().chain([text, index]).collect();
            self.done.push(Draft { rows, text: Some(text), priced: Some(index) });
            return;
        }
        let last =
            self.done.last_mut().filter(|last| last.priced != Some(index) && explains(page, last, line));
        match last {
            Some(last) => last.rows.push(index),
            None => self.loose = Some(index),
        }
    }

    fn priced(&mut self, index: usize) {
        let mut rows: Vec<usize> = self.loose.take().into_iter().collect();
        rows.push(index);
        self.waiting = None;
        self.done.push(Draft { rows, text: Some(index), priced: Some(index) });
    }

    fn taken(&self, row: usize) -> bool {
        self.done.last().is_some_and(|last| last.rows.contains(&row))
    }
}

/// Whether quantity, unit price and price stand on one row and agree.
fn is_whole(line: &Line) -> bool {
    let Some(price) = line.amounts().next_back() else { return false };
    let others: Vec<&Figure> = line.figures.iter().filter(|figure| *figure != price).collect();
    product(&others, price.digits).is_some()
}

/// Whether these figures are quantity and unit price of a line whose price stands above.
fn explains(page: &Page, last: &Draft, line: &Line) -> bool {
    let Some(price) = last.priced.and_then(|row| page.line(row)).and_then(|row| row.amounts().next_back())
    else {
        return false;
    };
    product(&line.figures.iter().collect::<Vec<_>>(), price.digits).is_some()
}

/// Whether these figures are quantity and unit price of the line that is described and priced below them.
fn announces(page: &Page, index: usize, line: &Line) -> bool {
    let below = page.line(index + 1).filter(|below| matches!(kind(below), Kind::Priced));
    let Some(price) = below.and_then(|below| below.amounts().next_back()) else { return false };
    !is_whole(line) && product(&line.figures.iter().collect::<Vec<_>>(), price.digits).is_some()
}

/// Whether this row has one amount and nothing else, and it is what the figures of the row above come to: a quantity
/// and a price of one, or that price itself.
fn amounts_to(page: &Page, last: &Draft, line: &Line) -> bool {
    let [price] = line.figures.as_slice() else { return false };
    let Some(above) = last.priced.and_then(|row| page.line(row)).filter(|_| price.is_amount()) else {
        return false;
    };
    let same = above.amounts().next_back().is_some_and(|amount| amount.digits == price.digits);
    let above: Vec<&Figure> = above.figures.iter().collect();
    same || product(&above, price.digits.abs()).is_some()
}

/// Quantity and unit price among these figures whose product is the price, to a hundredth.
fn product<'a>(figures: &[&'a Figure], price: i64) -> Option<(&'a Figure, &'a Figure)> {
    let figures = &figures[figures.len().saturating_sub(6)..];
    // The quantity that stands closest to its price first.
    let pairs = figures.iter().enumerate().rev().flat_map(|(at, quantity)| {
        let others = figures.iter().enumerate().filter(move |(other, _)| *other != at);
        others.map(move |(_, unit)| (*quantity, *unit))
    });
    let fits = |(quantity, unit): &(&Figure, &Figure)| {
        let (Some(many), Some(each)) = (quantity.thousandths(), unit.thousandths()) else { return false };
        let counted =
            (1..1_000_000).contains(&many) && quantity.may_count() && (unit.places == 2 || unit.places == 3);
        let off = i128::from(many) * i128::from(each) - i128::from(price) * 10_000;
        counted && unit.beside == Beside::Nothing && off.abs() <= 10_000
    };
    pairs.into_iter().find(fits)
}

/// A draft as it is offered.
pub(super) fn item(page: &Page, draft: &Draft, positions: bool, currency: Currency) -> Option<Item> {
    let priced = draft.priced.and_then(|row| page.line(row))?;
    let price = priced.amounts().next_back()?;
    let rows: Vec<&Line> = draft.rows.iter().filter_map(|row| page.line(*row)).collect();
    let text_line = draft.text.and_then(|row| page.line(row))?;
    let position = text_line.figures.first().filter(|_| positions);
    let others = rows
        .iter()
        .flat_map(|line| &line.figures)
        .filter(|figure| *figure != price && Some(*figure) != position);
    let figures: Vec<&Figure> = others.collect();
    let found = product(&figures, price.digits.abs());
    let quantity = found
        .map(|(quantity, _)| quantity)
        .or_else(|| rows.iter().find_map(|line| counted(line, price, positions)));
    let unit = found.map(|(_, unit)| unit).filter(|unit| unit.places == 2);
    let used: Vec<&Figure> = position.into_iter().chain(quantity).chain(unit).chain([price]).collect();
    let off = text_line.labels.has(Role::Discount) && text_line.labels.strange <= 2;
    let cents = if off { -price.digits.abs() } else { price.digits };
    let sure = match priced.letters(&price.at) {
        letters if letters >= 0.8 && !price.mended => Sure::Likely,
        _ => Sure::Doubtful,
    };
    Some(Item {
        text: description(text_line, &used),
        quantity: quantity.and_then(as_quantity),
        unit_price: unit.map(|unit| money(unit.digits, currency)),
        price: money(cents, currency),
        number: None,
        sure,
        area: rows.iter().map(|line| line.whole()).reduce(crate::text::Area::with)?,
    })
}

/// Whether the rows begin with their own number: 1, 2, 3.
pub(super) fn positions(page: &Page, drafts: &[Draft]) -> bool {
    let numbers: Vec<Option<i64>> = drafts.iter().map(|draft| position(page, draft)).collect();
    let next =
        |pair: &[Option<i64>]| matches!(pair, [Some(one), Some(two)] if two - one == 1 || two - one == 10);
    numbers.len() > 1 && numbers.windows(2).all(next)
}

/// The small number at the very left of a row, if it counts nothing there.
fn position(page: &Page, draft: &Draft) -> Option<i64> {
    let line = draft.text.and_then(|row| page.line(row))?;
    let first = line.figures.first().filter(|figure| figure.at.start <= 1 && figure.places == 0)?;
    let price = line.amounts().next_back()?;
    let others: Vec<&Figure> = line.figures.iter().filter(|figure| *figure != price).collect();
    let multiplies = product(&others, price.digits.abs()).is_some_and(|(quantity, _)| quantity == first);
    let counts = is_unit(&first.unit) || (multiplies && first.digits > 1);
    (!counts).then_some(first.digits)
}

/// A quantity without a unit price: `2 x`, `x2`, `Qty 2`, or a small number before the description; tenths of an hour
/// are counted as well.
fn counted<'a>(line: &'a Line, price: &Figure, positions: bool) -> Option<&'a Figure> {
    let small = |figure: &&Figure| {
        let counts = (1..=99).contains(&figure.digits) && line.at(figure.at.start) != '0';
        figure.places == 0 && counts && *figure != price && figure.may_count()
    };
    let marked = |figure: &&Figure| {
        let before = figure.at.start.checked_sub(1).map_or(' ', |at| line.at(at));
        let label = line
            .labels
            .before(figure.at.start)
            .is_some_and(|label| label.role == Role::Heading && label.at.end + 3 > figure.at.start);
        let unit = PIECES.contains(&figure.unit.as_str()) || SETS.contains(&figure.unit.as_str());
        (unit && !part_of_size(line, figure))
            || (matches!(before, 'x' | 'X') && alone_before(line, figure))
            || label
    };
    // A digit that follows makes it the first group of a number.
    let leads = |figure: &&Figure| {
        let grouped =
            line.at(figure.at.end + 1).is_ascii_digit() && line.in_one_stretch(&(0..figure.at.end + 2));
        figure.at.start == 0 && line.at(figure.at.end) == ' ' && !grouped && !positions
    };
    let part_of_one = |figure: &&Figure| {
        figure.places == 1 && (1..=999).contains(&figure.digits) && *figure != price && figure.may_count()
    };
    let hours = |figure: &&Figure| HOURS.contains(&figure.unit.as_str());
    let find = |fits: &dyn Fn(&&Figure) -> bool| line.figures.iter().find(fits);
    find(&|figure| small(figure) && marked(figure))
        .or_else(|| {
            find(&|figure| part_of_one(figure) && (leads(figure) || hours(figure) || figure.unit == "x"))
        })
        .or_else(|| find(&|figure| small(figure) && leads(figure)))
}

/// `12 x 17` is a size, and no quantity.
fn part_of_size(line: &Line, figure: &Figure) -> bool {
    let after: String = line.text(figure.at.end..(figure.at.end + 4).min(line.chars.len()));
    let rest = after.trim_start().trim_start_matches(['x', 'X']).trim_start();
    let sign = |c: char| matches!(c, 'x' | 'X' | ' ');
    let priced = line.amounts().any(|amount| {
        amount.at.start > figure.at.end && (figure.at.end..amount.at.start).all(|at| sign(line.at(at)))
    });
    figure.unit == "x" && !priced && rest.starts_with(|c: char| c.is_ascii_digit()) && figure.at.start > 0
}

/// An `x` before the figure with nothing before it: `x2`.
fn alone_before(line: &Line, figure: &Figure) -> bool {
    figure.at.start.checked_sub(2).is_none_or(|at| line.at(at) == ' ')
}

fn as_quantity(figure: &Figure) -> Option<Quantity> {
    let is = |units: &[&str]| units.contains(&figure.unit.as_str());
    let measure = match () {
        () if is(LITRES) => Measure::Litre,
        () if is(KILOGRAMS) => Measure::Kilogram,
        () if is(METRES) => Measure::Metre,
        () if is(SETS) => Measure::Set,
        () => Measure::Piece,
    };
    // A gallon is none of the measures in which parts and fluids are counted.
    let gallons = is(GALLONS) && figure.unit.len() > 1;
    let thousandths =
        figure.thousandths().and_then(|thousandths| u32::try_from(thousandths).ok()).filter(|_| !gallons)?;
    Quantity::from_thousandths(thousandths, measure).ok()
}

fn is_unit(word: &str) -> bool {
    [PIECES, SETS, LITRES, KILOGRAMS, METRES].iter().any(|units| units.contains(&word))
}

/// The words of a row without its figures of the columns, their units and signs.
fn description(line: &Line, used: &[&Figure]) -> String {
    let here = |figure: &&&Figure| line.figures.contains(figure);
    let used: Vec<&&Figure> = used.iter().filter(here).collect();
    let last = used.iter().map(|figure| figure.at.start).max().unwrap_or(usize::MAX);
    let keep = |word: &&Range<usize>| {
        let text = plain(&line.text((*word).clone()));
        let bare = text.trim_matches(|c: char| !c.is_alphanumeric());
        let figure = used.iter().any(|figure| figure.at.start < word.end && word.start < figure.at.end);
        let unit =
            is_unit(bare) && used.iter().any(|figure| figure.unit == bare && figure.at.end + 1 == word.start);
        let at = bare == "a" && used.iter().any(|figure| figure.at.start == word.end + 1);
        let sign = at || bare.is_empty() || matches!(bare, "x" | "eur" | "chf" | "gbp" | "usd");
        let mark = word.start > last && bare.chars().count() <= 2;
        !(figure || unit || sign || mark)
    };
    let words: Vec<String> = line.words.iter().filter(keep).map(|word| line.text(word.clone())).collect();
    words.join(" ")
}
