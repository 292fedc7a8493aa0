//! Which of the eight masks suits a symbol best: by the penalties of ISO/IEC 18004 (from memory) for what a reader
//! takes for something else, or finds hard to tell apart.
//!
//! `qrcode` chooses in the same way, module by module, which takes longer than all the rest of the symbol. Here the
//! lines are laid side by side, one to each bit of a word, and a word is asked about all of its lines at once.

use qrcode::Color;
use qrcode::canvas::{Canvas, MaskPattern};

const MASKS: [MaskPattern; 8] = [
    MaskPattern::Checkerboard,
    MaskPattern::HorizontalLines,
    MaskPattern::VerticalLines,
    MaskPattern::DiagonalLines,
    MaskPattern::LargeCheckerboard,
    MaskPattern::Fields,
    MaskPattern::Diamonds,
    MaskPattern::Meadow,
];

/// A line across the middle of a finder pattern: dark where it is.
const FINDER: [bool; 7] = [true, false, true, true, true, false, true];

/// A word holds one line more than count in it: the one beside the last, with which that makes up squares.
const LINES: usize = u64::BITS as usize - 1;

/// The dark modules of the symbol, row by row, under the mask with the least penalty.
pub(super) fn best_masked(symbol: &Canvas) -> Vec<bool> {
    let masked = MASKS.into_iter().map(|mask| dark_under(symbol, mask));
    masked.min_by_key(|dark| penalty(dark)).unwrap_or_default()
}

fn dark_under(symbol: &Canvas, mask: MaskPattern) -> Vec<bool> {
    let mut masked = symbol.clone();
    masked.apply_mask(mask);
    masked.into_colors().into_iter().map(|color| color == Color::Dark).collect()
}

/// What speaks against a symbol, given row by row: at the weights 3, 3, 40 and 10.
pub(super) fn penalty(dark: &[bool]) -> u32 {
    let side = dark.len().isqrt();
    let by_lines = |first: usize| {
        let columns = Lines::new(side, first, |line, at| dark[at * side + line]);
        let rows = Lines::new(side, first, |line, at| dark[line * side + at]);
        let lines = [&columns, &rows].into_iter().map(|lines| lines.runs() + 40 * lines.finders());
        lines.sum::<u32>() + 3 * columns.squares()
    };
    (0..side).step_by(LINES).map(by_lines).sum::<u32>() + 10 * imbalance(dark)
}

/// Lines side by side.
struct Lines {
    /// From one end of the lines to the other, a bit for each line: set where its module is dark.
    words: Vec<u64>,
    /// The lines that count, ...
    counted: u64,
    /// ... and those that have another beside them.
    paired: u64,
}

impl Lines {
    /// The lines from `first` on, as many as there is room for.
    fn new(side: usize, first: usize, is_dark: impl Fn(usize, usize) -> bool) -> Lines {
        let held = (side - first).min(LINES + 1);
        let word =
            |at: usize| (0..held).fold(0, |word, bit| word | u64::from(is_dark(first + bit, at)) << bit);
        let lowest = |bits: usize| (1 << bits) - 1;
        Lines {
            words: (0..side).map(word).collect(),
            counted: lowest(held.min(LINES)),
            paired: lowest(held - 1),
        }
    }

    /// Runs of five modules of one colour or more: three for five, and one for each module more.
    fn runs(&self) -> u32 {
        let as_before: Vec<u64> =
            self.words.windows(2).map(|two| !(two[0] ^ two[1]) & self.counted).collect();
        let fifth: Vec<u64> =
            as_before.windows(4).map(|four| four.iter().fold(!0, |all, one| all & one)).collect();
        let begins = fifth.iter().zip([0].iter().chain(&fifth)).map(|(this, before)| this & !before);
        count(fifth.iter().copied()) + 2 * count(begins)
    }

    /// What looks like a finder pattern, with four light modules before or after it: the quiet zone is light.
    fn finders(&self) -> u32 {
        let light = [0; 4];
        let words: Vec<u64> = light.iter().chain(&self.words).chain(&light).copied().collect();
        let is_light = |words: &[u64]| !words.iter().fold(0, |any, one| any | one);
        let looks = words.windows(15).map(|fifteen| {
            let alike = fifteen[4..].iter().zip(FINDER).map(|(word, dark)| if dark { *word } else { !word });
            let pattern = alike.fold(!0, |all, one| all & one);
            pattern & (is_light(&fifteen[..4]) | is_light(&fifteen[11..])) & self.counted
        });
        count(looks)
    }

    /// Squares of two by two modules of one colour.
    fn squares(&self) -> u32 {
        let alike = self.words.windows(2).map(|two| {
            let all = two[0] & two[1];
            let none = !(two[0] | two[1]);
            (all & all >> 1 | none & none >> 1) & self.paired
        });
        count(alike)
    }
}

fn count(words: impl Iterator<Item = u64>) -> u32 {
    words.map(u64::count_ones).sum()
}

/// How many times five per cent of all modules there are too many or too few dark ones.
fn imbalance(dark: &[bool]) -> u32 {
    let (all, dark) = (dark.len(), dark.iter().filter(|dark| **dark).count());
    u32::try_from((2 * dark).abs_diff(all) * 10 / all.max(1)).unwrap_or(0)
}

#[cfg(test)]
mod tests;
