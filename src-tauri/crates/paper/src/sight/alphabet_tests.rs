//! What probabilities spell.

#![allow(clippy::unwrap_used)]

use super::*;

/// Chinese and full-width characters stand among the Latin ones, as in the network.
fn listed() -> String {
    let letters = "一０".chars().chain('0'..='9').chain('A'..='Z').chain('a'..='z').chain("：£".chars());
    letters.map(String::from).collect::<Vec<_>>().join("\n")
}

fn alphabet() -> Alphabet {
    Alphabet::new(&listed()).unwrap()
}

/// The probabilities of steps, each of them sure of one character to this degree; '-' is no letter.
fn steps(alphabet: &Alphabet, sure: &[(char, f32)]) -> Vec<f32> {
    let listed = listed().replace('\n', "");
    let class = |letter| match letter {
        '-' => 0,
        ' ' => alphabet.known() - 1,
        _ => listed.chars().position(|other| other == letter).unwrap() + 1,
    };
    let mut probabilities = vec![0.0; alphabet.known() * sure.len()];
    for (at, &(letter, sure)) in sure.iter().enumerate() {
        probabilities[at * alphabet.known() + class(letter)] = sure;
    }
    probabilities
}

fn spelt(letters: &str) -> String {
    let sure: Vec<_> = letters.chars().map(|letter| (letter, 0.9)).collect();
    let alphabet = alphabet();
    alphabet.spell(&steps(&alphabet, &sure)).text
}

#[test]
fn every_character_and_the_space_have_a_class() {
    assert_eq!(alphabet().known(), 2 + 10 + 26 + 26 + 2 + 2);
}

/// After Graves and others (2006), Connectionist Temporal Classification, 3.1: repeats are merged, then blanks are
/// dropped.
#[test]
fn repeats_are_merged_and_blanks_dropped() {
    assert_eq!(spelt("aa--ab-bb"), "aabb");
    assert_eq!(spelt("a-a"), "aa");
    assert_eq!(spelt("---"), "");
    assert_eq!(spelt(""), "");
}

#[test]
fn spaces_stay_inside_and_go_outside() {
    assert_eq!(spelt("- ab  c -"), "ab c");
}

#[test]
fn certainty_is_the_mean_over_the_letters() {
    let alphabet = alphabet();
    let reading =
        alphabet.spell(&steps(&alphabet, &[('-', 1.0), ('a', 0.8), ('a', 0.1), ('-', 1.0), ('7', 0.4)]));
    assert_eq!(reading.text, "a7");
    assert!((reading.sure - 0.6).abs() < 1e-6, "{reading:?}");
    assert!(!Reading { sure: 0.4, ..reading }.is_text());
}

#[test]
fn other_scripts_take_no_part() {
    let alphabet = alphabet();
    let mut probabilities = steps(&alphabet, &[('０', 0.7), ('一', 0.9)]);
    let zero = steps(&alphabet, &[('0', 0.2), ('-', 0.05)]);
    probabilities.iter_mut().zip(zero).for_each(|(sum, part)| *sum += part);
    let reading = alphabet.spell(&probabilities);
    assert_eq!((reading.text.as_str(), reading.sure), ("0", 0.2));
}

#[test]
fn what_is_no_number_spells_nothing_sure() {
    let alphabet = alphabet();
    let reading = alphabet.spell(&vec![f32::NAN; 3 * alphabet.known()]);
    assert!(!reading.is_text(), "{reading:?}");
}

#[test]
fn an_alphabet_without_latin_letters_is_refused() {
    let refused = Alphabet::new("一\n丁").unwrap_err();
    assert!(matches!(refused, PaperError::Model { file: "PP-OCRv6_rec_small.onnx", .. }));
    assert!(Alphabet::new("").is_err());
}
