//! # words: what is said, in every language that the program speaks
//!
//! The sentences stand in Fluent files under `lang/`, one folder a language, and are compiled in. The window
//! and the page behind a card read the same files with their own Fluent library; this room says them in the
//! terminal and on paper.
//!
//! This room knows no other room. It puts words to keys and decides nothing: it must never read a clock, a
//! file or a setting, and it never fails. A [`Face`] that a language is not whole for speaks English; where a
//! language lacks a message all the same, the English one is said, and where English lacks it too, its key.

mod arg;
mod face;
mod files;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use unic_langid::LanguageIdentifier;

pub use arg::Arg;
pub use face::Face;

/// The language in which every message exists.
pub const ENGLISH: &str = "en";

type Bundle = FluentBundle<FluentResource>;

/// The words of one language.
pub struct Words {
    lang: &'static str,
    /// The wanted language, then English; English alone where it is the one wanted.
    bundles: Vec<Bundle>,
}

/// The languages that the whole program speaks, as IETF tags in ascending order.
pub fn languages() -> impl Iterator<Item = &'static str> {
    languages_of(Face::Program)
}

/// The languages that a face speaks, as IETF tags in ascending order.
pub fn languages_of(face: Face) -> impl Iterator<Item = &'static str> {
    files::LANGUAGES.iter().map(|&(lang, _)| lang).filter(move |lang| face.speaks(lang))
}

impl Words {
    /// All words, in the language that comes nearest to an IETF tag: for `de-AT` in `de-AT`, else in `de`, else in
    /// English. A language that lacks one of the files is not spoken.
    pub fn load(lang: &str) -> Words {
        Words::load_for(Face::Program, lang)
    }

    /// The words of one face alone, in the language that comes nearest of those that it speaks.
    pub fn load_for(face: Face, lang: &str) -> Words {
        let lang = nearest(face, lang);
        let wanted = (lang != ENGLISH).then_some(lang);
        let bundles = wanted.into_iter().chain([ENGLISH]).map(|lang| bundle(face, lang));
        Words { lang, bundles: bundles.collect() }
    }

    /// The language of these words.
    pub fn lang(&self) -> &'static str {
        self.lang
    }

    /// Whether there is a message with this key, if only in English.
    pub fn has(&self, id: &str) -> bool {
        self.bundles.iter().any(|bundle| bundle.has_message(id))
    }

    /// The message with this key, its places filled with `args`.
    ///
    /// A key that does not exist is said itself, and a place that nothing fills as `{$name}`, so that either is
    /// seen and the rest can still be read.
    pub fn say(&self, id: &str, args: &[(&str, Arg<'_>)]) -> String {
        let args: FluentArgs<'_> = args.iter().map(|(name, arg)| (*name, arg)).collect();
        let said = self.bundles.iter().find_map(|bundle| format(bundle, id, &args));
        said.unwrap_or_else(|| id.to_owned())
    }
}

impl std::fmt::Debug for Words {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Words").field("lang", &self.lang).finish_non_exhaustive()
    }
}

fn nearest(face: Face, wanted: &str) -> &'static str {
    let wanted = wanted.replace('_', "-");
    let primary = wanted.split('-').next().unwrap_or_default();
    let known = |tag: &str| languages_of(face).find(|lang| lang.eq_ignore_ascii_case(tag));
    known(&wanted).or_else(|| known(primary)).unwrap_or(ENGLISH)
}

/// What a face says in one language. What a file has wrong is left out, and a test sees to it that none has.
fn bundle(face: Face, lang: &'static str) -> Bundle {
    let locale: LanguageIdentifier = lang.parse().unwrap_or_default();
    let mut bundle = FluentBundle::new_concurrent(vec![locale]);
    // The marks that keep texts of two directions apart would be printed as boxes by some terminals.
    bundle.set_use_isolating(false);
    // Its only error is that the name is taken, and nothing else has been added.
    let _ = bundle.add_builtins();
    for (_, text) in face.files(lang) {
        let resource = FluentResource::try_new((*text).to_owned()).unwrap_or_else(|(resource, _)| resource);
        bundle.add_resource_overriding(resource);
    }
    bundle
}

fn format(bundle: &Bundle, id: &str, args: &FluentArgs<'_>) -> Option<String> {
    let pattern = bundle.get_message(id)?.value()?;
    let mut faults = Vec::new();
    Some(bundle.format_pattern(pattern, Some(args), &mut faults).into_owned())
}

#[cfg(test)]
mod tests;
