//! Finding the words of the table on a line, also where letters were misread or a space got lost.

use std::collections::HashMap;
use std::ops::Range;
use std::sync::LazyLock;

use super::fold::{key, plain, within_one};
use super::words::{HOURS, LANGUAGES, LITRES, MEANINGS, PIECES, Role};

/// A phrase of this many letters may have one of them wrong.
const FORGIVING: usize = 6;
/// The longest phrase of the table, in words.
const LONGEST: usize = 5;

/// A label on a line.
#[derive(Debug, Clone)]
pub(super) struct Label {
    /// What it announces.
    pub role: Role,
    /// Where in the line it stands.
    pub at: Range<usize>,
    /// The languages in which it says so, as a bit each.
    pub languages: u8,
}

/// All labels of a line, from left to right.
#[derive(Debug, Default)]
pub(super) struct Labels {
    /// What was found.
    pub all: Vec<Label>,
    /// Letters of words that the table does not know, single letters left out.
    pub strange: usize,
    /// Letters of [`Role::Plain`] words.
    pub plain: usize,
}

impl Labels {
    /// Whether any label announces this.
    pub fn has(&self, role: Role) -> bool {
        self.first(role).is_some()
    }

    /// The first label that announces this.
    pub fn first(&self, role: Role) -> Option<&Label> {
        self.all.iter().find(|label| label.role == role)
    }

    /// The last label that ends at or before this position, words that announce nothing left out.
    pub fn before(&self, position: usize) -> Option<&Label> {
        let quiet = |role| matches!(role, Role::Filler | Role::Plain);
        self.all.iter().rev().find(|label| label.at.end <= position && !quiet(label.role))
    }
}

/// Whether an atom has digits.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Digits {
    /// It has none.
    None,
    /// It has letters as well.
    Among,
    /// It has nothing else: a word only where the table knows it as part of a phrase, as in `SP 95`.
    Only,
}

/// A run of letters, and of digits among them.
struct Atom {
    at: Range<usize>,
    key: String,
    /// Whether a digit stands between the atom before and this one.
    apart: bool,
    /// Whether it has digits.
    digits: Digits,
    /// Two of its letters were taken for one, as in `vorn` for `vom`.
    joined: bool,
}

impl Atom {
    fn new(chars: &[char], at: Range<usize>, apart: bool) -> Atom {
        let text: String = chars[at.clone()].iter().collect();
        let digits = match (text.chars().any(|c| c.is_ascii_digit()), text.chars().any(char::is_alphabetic)) {
            (_, false) => Digits::Only,
            (true, true) => Digits::Among,
            (false, true) => Digits::None,
        };
        Atom { key: key(&text), at, apart, digits, joined: joined(&text) }
    }
}

#[derive(Clone)]
struct Phrase {
    role: Role,
    languages: u8,
    key: String,
    letters: Vec<char>,
    /// It has digits, without which its letters are something else: `E5` is no `ES`.
    numbered: bool,
    /// Two of its letters are one in its key.
    joined: bool,
}

/// The table by its keys, and by the length of its keys where those are forgiving.
struct Index {
    exact: HashMap<String, Phrase>,
    by_length: HashMap<usize, Vec<Phrase>>,
}

static INDEX: LazyLock<Index> = LazyLock::new(Index::new);

impl Index {
    fn new() -> Index {
        let mut exact: HashMap<String, Phrase> = HashMap::new();
        let mut order = Vec::new();
        for meaning in MEANINGS {
            for language in 0..LANGUAGES {
                for words in meaning.says[language] {
                    let key = key(words);
                    let numbered = words.chars().any(|c| c.is_ascii_digit());
                    let letters = key.chars().collect();
                    let (role, joined) = (meaning.role, joined(words));
                    let new = || Phrase { role, languages: 0, key: key.clone(), letters, numbered, joined };
                    let phrase = exact.entry(key.clone()).or_insert_with(|| {
                        order.push(key.clone());
                        new()
                    });
                    // What two meanings share belongs to the one that stands first.
                    if phrase.role == meaning.role {
                        phrase.languages |= 1 << language;
                    }
                }
            }
        }
        let mut by_length: HashMap<usize, Vec<Phrase>> = HashMap::new();
        for phrase in order.iter().filter_map(|key| exact.get(key)) {
            let length = phrase.key.chars().count();
            if length >= FORGIVING {
                by_length.entry(length).or_default().push(phrase.clone());
            }
        }
        Index { exact, by_length }
    }

    fn get(&self, key: &str) -> Option<&Phrase> {
        self.exact.get(key).or_else(|| self.nearly(key))
    }

    fn nearly(&self, key: &str) -> Option<&Phrase> {
        let letters: Vec<char> = key.chars().take(41).collect();
        let length = letters.len();
        if !(FORGIVING..=40).contains(&length) {
            return None;
        }
        let near = [length, length + 1, length - 1];
        let phrases = near.iter().filter_map(|length| self.by_length.get(length)).flatten();
        phrases.into_iter().find(|phrase| within_one(&phrase.letters, &letters))
    }
}

/// The labels of a line, the longest phrase first.
pub(super) fn find(chars: &[char]) -> Labels {
    let atoms = atoms(chars);
    let mut labels = Labels::default();
    let mut next = 0;
    while next < atoms.len() {
        if let Some((count, phrase)) = longest(&atoms[next..]) {
            let at = atoms[next].at.start..atoms[next + count - 1].at.end;
            if phrase.role == Role::Plain {
                labels.plain += at.len();
            }
            labels.all.push(Label { role: phrase.role, at, languages: phrase.languages });
            next += count;
        } else {
            let letters = atoms[next].key.chars().count();
            labels.strange +=
                if letters > 1 && atoms[next].digits != Digits::Only && !counts(chars, &atoms[next]) {
                    letters
                } else {
                    0
                };
            next += 1;
        }
    }
    labels
}

/// Whether a word counts or measures, and so describes nothing.
fn counts(chars: &[char], atom: &Atom) -> bool {
    let folded = plain(&chars[atom.at.clone()].iter().collect::<String>());
    [PIECES, LITRES, HOURS].iter().any(|units| units.contains(&folded.as_str()))
}

/// The longest phrase with which these atoms begin, and how many of them it takes.
fn longest(atoms: &[Atom]) -> Option<(usize, &'static Phrase)> {
    if atoms.first().is_none_or(|first| first.digits == Digits::Only) {
        return None;
    }
    let most = 1 + atoms.iter().skip(1).take(LONGEST).take_while(|atom| !atom.apart).count();
    // A name in capitals may be set with spaces or signs between its letters, so more atoms than words may match.
    (1..=most).rev().find_map(|count| {
        let key: String = atoms[..count].iter().map(|atom| atom.key.as_str()).collect();
        let known = INDEX.get(&key).filter(|phrase| sound(phrase, &atoms[..count]))?;
        Some((count, known))
    })
}

/// Whether two letters of a text became one in its key.
fn joined(text: &str) -> bool {
    key(text).chars().count() < plain(text).chars().filter(|c| c.is_alphanumeric()).count()
}

/// A phrase found by forgiving a slip must not have swallowed a short word that stands beside it.
fn sound(phrase: &Phrase, atoms: &[Atom]) -> bool {
    let lengths: Vec<usize> = atoms.iter().map(|atom| atom.key.chars().count()).collect();
    let (letters, phrase_letters) = (lengths.iter().sum::<usize>(), phrase.key.chars().count());
    let exact = atoms.iter().map(|atom| atom.key.as_str()).collect::<String>() == phrase.key;
    let numbered = atoms.iter().any(|atom| atom.digits != Digits::None);
    if phrase.numbered != numbered
        && (phrase.numbered || letters < 4 || atoms.iter().any(|atom| atom.digits == Digits::Only))
    {
        return false;
    }
    // A short word is another word as soon as two letters are taken for one: `vorn` is no `vom`.
    let joined = atoms.iter().any(|atom| atom.joined);
    if joined != phrase.joined && phrase_letters < FORGIVING {
        return false;
    }
    exact
        || atoms.len() == 1
        || (letters >= 8
            && !atoms.iter().any(|atom| atom.digits == Digits::Only)
            && (letters <= phrase_letters || lengths.iter().all(|length| *length > 1)))
}

/// Runs of letters. Digits belong to a run when letters stand on both sides of them (`T0TAL`), when the table knows
/// it so (`E10`), and else when there is just one of them at its end (`TOTA1`).
fn atoms(chars: &[char]) -> Vec<Atom> {
    let mut atoms: Vec<Atom> = Vec::new();
    let (mut index, mut apart) = (0, false);
    while index < chars.len() {
        let start = index;
        while index < chars.len()
            && (chars[index].is_alphanumeric() || matches!(chars[index], '|' | '\u{300}'..='\u{36f}'))
        {
            index += 1;
        }
        if let Some(at) = lettered(chars, start..index) {
            apart |= at.start > start;
            let digits_follow = at.end < index;
            atoms.push(Atom::new(chars, at, apart));
            apart = digits_follow;
        } else if (2..=3).contains(&(index - start)) {
            atoms.push(Atom::new(chars, start..index, apart));
            apart = false;
        } else if start < index {
            apart = true;
        }
        index = index.max(start + 1);
    }
    atoms
}

/// The part of a run that is a word, if it has letters at all.
fn lettered(chars: &[char], run: Range<usize>) -> Option<Range<usize>> {
    let letter = |index: &usize| chars[*index].is_alphabetic();
    let first = run.clone().find(letter)?;
    let last = run.clone().rev().find(letter)?;
    let whole: String = chars[run.clone()].iter().collect();
    if first == run.start && (run.end - last <= 2 || INDEX.exact.contains_key(&key(&whole))) {
        return Some(run);
    }
    // A digit before the letters is a number with its unit, or a misread first letter: `2x`, `8etrag`.
    let start = if first - run.start == 1 && last - first >= 3 { run.start } else { first };
    Some(start..last + 1)
}
