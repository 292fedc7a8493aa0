//! What the program was started with: the folder of its shelf, and files to be opened with it.

use std::ffi::OsString;
use std::path::PathBuf;

/// The words that followed the program's name.
#[derive(Debug, Default, PartialEq, Eq)]
pub(crate) struct Started {
    /// What stands behind `--shelf`; nothing where the system decides.
    pub(crate) shelf: Option<PathBuf>,
    /// The files that were named, in their order, such as by a desktop that opens them with this program.
    pub(crate) files: Vec<PathBuf>,
}

impl Started {
    /// Reads the words; an option that is not known here is the framework's or the desktop's own.
    pub(crate) fn read(words: impl IntoIterator<Item = OsString>) -> Started {
        let mut started = Started::default();
        let mut words = words.into_iter();
        while let Some(word) = words.next() {
            if word == "--shelf" {
                started.shelf = Some(words.next().map(PathBuf::from).unwrap_or_default());
            } else if !word.as_encoded_bytes().starts_with(b"-") {
                started.files.push(word.into());
            }
        }
        started
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn started(words: &[&str]) -> Started {
        Started::read(words.iter().map(OsString::from))
    }

    #[test]
    fn a_shelf_is_no_file_and_a_file_is_no_shelf() {
        let read = started(&["a.jpg", "--shelf", "books", "b c.pdf"]);
        let files = ["a.jpg", "b c.pdf"].map(PathBuf::from).to_vec();
        assert_eq!(read, Started { shelf: Some("books".into()), files });
    }

    #[test]
    fn options_of_others_are_passed_over() {
        assert_eq!(started(&["--automation", "-v"]), Started::default());
    }

    #[test]
    fn a_shelf_without_a_folder_is_where_the_program_was_started() {
        assert_eq!(started(&["--shelf"]).shelf, Some(PathBuf::new()));
    }
}
