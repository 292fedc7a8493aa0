//! The Fluent files, compiled in.

/// The name of a file and its text.
pub(crate) type File = (&'static str, &'static str);

/// Every language with its files, both in ascending order; `build.rs` lists what stands under `lang/`.
pub(crate) const LANGUAGES: &[(&str, &[File])] = include!(concat!(env!("OUT_DIR"), "/languages.rs"));

/// The files of one language; none of a language that is not there.
pub(crate) fn of(lang: &str) -> &'static [File] {
    LANGUAGES.iter().find(|(name, _)| *name == lang).map_or(&[], |(_, files)| files)
}
