//! Which letters the second network knows, and which text its probabilities spell.
//!
//! It knows 18 710 classes, most of them Chinese and Japanese. The papers that are kept here are in Latin script, and
//! a mark that resembles a letter of both is meant in that one, so only Latin letters, digits and signs take part.

use rten::ctc::CtcDecoder;
use rten_tensor::NdTensor;
use rten_tensor::prelude::*;

use super::models::RECOGNISER;
use super::recognise::Reading;
use crate::PaperError;

/// The classes that take part: column by column, the network's class and its character.
///
/// The first column is that of no letter, which parts one letter from the next.
#[derive(Debug)]
pub(super) struct Alphabet {
    classes: Vec<usize>,
    letters: Vec<char>,
    known: usize,
}

impl Alphabet {
    /// Reads what the network says of itself: one character a line, the first of them class 1. Its last class, which
    /// is not listed, is the space.
    pub(super) fn new(listed: &str) -> Result<Alphabet, PaperError> {
        let listed: Vec<&str> = listed.split('\n').collect();
        let spelt = listed.iter().copied().chain([" "]).enumerate();
        let latin =
            spelt.filter_map(|(at, text)| only_char(text).filter(|&c| is_latin(c)).map(|c| (at + 1, c)));
        let (classes, letters): (Vec<usize>, Vec<char>) = latin.unzip();
        if !('0'..='9').chain('A'..='Z').chain('a'..='z').all(|letter| letters.contains(&letter)) {
            return Err(RECOGNISER.refused("its alphabet is not the one expected"));
        }
        let known = listed.len() + 2;
        Ok(Alphabet { classes: [vec![0], classes].concat(), letters, known })
    }

    /// How many classes the network gives a probability.
    pub(super) fn known(&self) -> usize {
        self.known
    }

    /// The text that the probabilities spell, `known` of them a step.
    pub(super) fn spell(&self, probabilities: &[f32]) -> Reading {
        let steps = probabilities.chunks_exact(self.known);
        let latin: Vec<f32> = steps.flat_map(|step| self.classes.iter().map(|&class| step[class])).collect();
        let columns = self.classes.len();
        let latin = NdTensor::from_data([latin.len() / columns, columns], latin);
        let spelt = CtcDecoder::new().decode_greedy(latin.view());
        let (mut text, mut sum) = (String::new(), 0.0);
        for step in spelt.steps() {
            text.extend((step.label as usize).checked_sub(1).and_then(|column| self.letters.get(column)));
            sum += latin[[step.pos as usize, step.label as usize]];
        }
        let count = u16::try_from(spelt.steps().len()).unwrap_or(u16::MAX).max(1);
        Reading { text: text.trim().to_owned(), sure: sum / f32::from(count) }
    }
}

fn only_char(text: &str) -> Option<char> {
    let mut chars = text.chars();
    chars.next().filter(|_| chars.next().is_none())
}

/// Whether a character is a Latin letter, a digit, or a sign that stands among them (blocks of the Unicode standard).
fn is_latin(c: char) -> bool {
    matches!(c,
        ' '..='~'
        | '\u{A1}'..='\u{24F}'      // Latin-1 Supplement, Latin Extended-A and -B
        | '\u{1E00}'..='\u{1EFF}'   // Latin Extended Additional
        | '\u{2010}'..='\u{203A}'   // dashes, quotation marks, dots
        | '\u{20A0}'..='\u{20BF}'   // currencies
        | '\u{2116}' | '\u{2122}'   // numero, trade mark
        | '\u{2212}'                // minus
    )
}

#[cfg(test)]
#[path = "alphabet_tests.rs"]
mod tests;
