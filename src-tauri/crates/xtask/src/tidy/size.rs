//! How long files and functions are.

use std::path::Path;

/// Code lines of a file, as a rule.
const RULE: usize = 150;

/// Code lines that no file exceeds without saying why in its head.
const CEILING: usize = 400;

/// What a head says that exceeds it.
const REASON: &str = "Longer than 400 lines because";

/// Lines of a function, from its `fn` to its closing brace, as a rule: nine in ten are shorter.
const FUNCTION: usize = 30;

/// What was measured so far.
#[derive(Default)]
pub struct Sizes {
    long_files: Vec<(usize, String)>,
    functions: usize,
    long_functions: usize,
}

impl Sizes {
    /// Measures one file; returns the fault if it is over the ceiling for no reason given. Files of tests may be long.
    pub fn add(&mut self, path: &Path, text: &str) -> Option<String> {
        if is_test(path) {
            return None;
        }
        for length in function_lengths(text) {
            self.functions += 1;
            self.long_functions += usize::from(length >= FUNCTION);
        }
        let lines = code_lines(text);
        if lines > RULE {
            self.long_files.push((lines, path.display().to_string()));
        }
        let excused = text.lines().take(12).any(|line| line.contains(REASON));
        (lines > CEILING && !excused).then(|| {
            format!(
                "{}: {lines} code lines; split it, or begin a line of its head `{REASON}`",
                path.display()
            )
        })
    }

    /// What is over the rule, longest first, and the share of long functions.
    pub fn notes(&self) -> Vec<String> {
        let mut files = self.long_files.clone();
        files.sort_by_key(|(lines, _)| std::cmp::Reverse(*lines));
        let mut notes: Vec<String> = files
            .iter()
            .map(|(lines, path)| format!("note: {path} has {lines} code lines, as a rule {RULE}"))
            .collect();
        let share = 100 * self.long_functions / self.functions.max(1);
        let (long, all) = (self.long_functions, self.functions);
        notes.push(format!(
            "{long} of {all} Rust functions ({share} %) have {FUNCTION} lines or more, as a rule at most 10 %"
        ));
        notes
    }
}

fn is_test(path: &Path) -> bool {
    let file = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let folder = path.components().any(|part| part.as_os_str() == "tests");
    folder || file == "tests.rs" || file.ends_with("_tests.rs") || file.contains(".test.")
}

/// Lines above the inline tests that are neither empty nor only a comment.
fn code_lines(text: &str) -> usize {
    let above_tests = text.lines().take_while(|line| *line != "#[cfg(test)]");
    above_tests.map(str::trim).filter(|line| !line.is_empty() && !line.starts_with("//")).count()
}

/// The length of every Rust function, told by the layout that rustfmt gives: the brace closes in the column of its head.
fn function_lengths(text: &str) -> Vec<usize> {
    let mut lengths = Vec::new();
    let mut open: Vec<(usize, usize)> = Vec::new();
    for (number, line) in text.lines().enumerate() {
        let indent = line.len() - line.trim_start().len();
        let one_line = line.ends_with('}') || line.ends_with(';');
        if is_function_head(line.trim_start()) && !one_line {
            open.push((indent, number));
        } else if line.trim_start() == "}" && open.last().is_some_and(|(column, _)| *column == indent) {
            lengths.extend(open.pop().map(|(_, start)| number - start + 1));
        }
    }
    lengths
}

fn is_function_head(line: &str) -> bool {
    let mut words = line
        .split(' ')
        .skip_while(|word| ["pub", "pub(crate)", "pub(super)", "async", "const"].contains(word));
    words.next() == Some("fn")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn comments_blank_lines_and_inline_tests_do_not_count() {
        let text =
            "//! Head.\n\nfn a() {\n    // why\n    b();\n}\n\n#[cfg(test)]\nmod tests {\n    fn c() {}\n}\n";
        assert_eq!(code_lines(text), 3);
    }

    #[test]
    fn a_function_runs_to_the_brace_in_its_own_column() {
        let text = "impl A {\n    pub fn one(&self) {\n        if x {\n            y();\n        }\n    }\n}\nfn two() {\n    z();\n}\n";
        assert_eq!(function_lengths(text), [5, 3]);
    }

    #[test]
    fn the_ceiling_needs_a_reason() {
        let long = "x();\n".repeat(CEILING + 1);
        let excused = format!("//! {REASON} it is a table.\n{long}");
        let path = Path::new("src/a.rs");
        assert!(Sizes::default().add(path, &long).is_some());
        assert_eq!(Sizes::default().add(path, &excused), None);
        assert_eq!(Sizes::default().add(path, &"x();\n".repeat(CEILING)), None);
    }
}
