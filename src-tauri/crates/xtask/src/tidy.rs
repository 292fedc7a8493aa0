//! `cargo xtask tidy`: what no compiler says about the source files.
//!
//! Sizes are told as notes until they reach the ceiling; everything else is an error.

mod size;

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::shell::{Failure, Run, root, say};
use size::Sizes;

/// Kinds of file that people write here and that are read as text.
const KINDS: &[&str] = &[
    "rs", "sql", "toml", "ts", "js", "mjs", "svelte", "css", "html", "py", "sh", "ftl", "typ", "json", "md",
    "yml", "java",
];

/// Kinds whose size counts as code.
const CODE: &[&str] = &["rs", "ts", "js", "mjs", "svelte", "py", "java"];

/// Marks of work that is not done. Put together here, so that this file does not trip over itself.
const UNDONE: [&str; 3] = [concat!("to", "do!("), concat!("FIX", "ME"), concat!("TO", "DO")];

const SQL: [&str; 2] = [concat!("SELECT", " "), concat!("INSERT", " INTO")];

/// How paths of one person's machine begin.
const MACHINE_PATHS: [&str; 4] =
    [concat!("/ho", "me/"), concat!("/ro", "ot/"), concat!("/Us", "ers/"), concat!("C:\\", "Users")];

/// Prints what exceeds the usual sizes and fails with everything that must not be.
pub fn tidy() -> Result<(), Failure> {
    let mut faults = Vec::new();
    let mut sizes = Sizes::default();
    for path in files()? {
        let file = root().join(&path);
        // A file that is deleted but not yet committed as such is still listed.
        let Ok(text) = fs::read_to_string(&file) else { continue };
        faults.extend(faults_of(&path, &text).into_iter().map(|fault| format!("{}{fault}", path.display())));
        if CODE.contains(&kind(&path)) {
            faults.extend(sizes.add(&path, &text));
        }
    }
    sizes.notes().iter().for_each(say);
    if faults.is_empty() {
        return Ok(());
    }
    for fault in &faults {
        println!("{fault}");
    }
    Err(Failure::new(format!("{} places are not tidy", faults.len())))
}

/// The files of the working tree that git keeps or would keep, of the kinds looked at, generated ones left out.
fn files() -> Result<Vec<PathBuf>, Failure> {
    let mut git = Command::new("git");
    let listed =
        git.current_dir(root()).args(["ls-files", "--cached", "--others", "--exclude-standard"]).read()?;
    let wanted = |path: &PathBuf| {
        KINDS.contains(&kind(path))
            && !path.starts_with("src-tauri/gen")
            && !path.ends_with("package-lock.json")
    };
    Ok(listed.lines().map(PathBuf::from).filter(wanted).collect())
}

fn kind(path: &Path) -> &str {
    path.extension().and_then(|kind| kind.to_str()).unwrap_or_default()
}

/// What is wrong in one file, each as `:LINE: fault`.
fn faults_of(path: &Path, text: &str) -> Vec<String> {
    let rust = kind(path) == "rs";
    let mut faults = Vec::new();
    if rust && !text.starts_with("//!") {
        faults.push(":1: opens without `//!`; say what the file is for".to_owned());
    }
    for (index, line) in text.lines().enumerate() {
        let fault = |what: &str| format!(":{}: {what}", index + 1);
        if line.ends_with([' ', '\t', '\r']) {
            faults.push(fault("white space at the end"));
        }
        if rust && line.contains('\t') {
            faults.push(fault("a tab; indent by spaces, write it as \\t in a string"));
        }
        if kind(path) != "md" && UNDONE.iter().any(|mark| line.contains(mark)) {
            faults.push(fault("a mark of work not done; do it, or leave it out"));
        }
        if rust && !path.starts_with("src-tauri/crates/book") && SQL.iter().any(|sql| line.contains(sql)) {
            faults.push(fault("SQL outside the book"));
        }
        if MACHINE_PATHS.iter().any(|start| line.contains(start)) {
            faults.push(fault("a path of one machine"));
        }
    }
    faults
}

#[cfg(test)]
mod tests {
    use super::*;

    fn faults(path: &str, text: &str) -> Vec<String> {
        faults_of(Path::new(path), text)
    }

    #[test]
    fn a_clean_file_has_no_faults() {
        assert_eq!(faults("src-tauri/crates/rules/src/lib.rs", "//! Rules.\n\nfn rule() {}\n"), [""; 0]);
    }

    #[test]
    fn each_fault_is_told_with_its_line() {
        let told = faults("src-tauri/crates/rules/src/lib.rs", "fn a() {}\n\tb();\nc(); \n");
        assert_eq!(told.len(), 3);
        assert!(told[0].starts_with(":1: opens without"));
        assert!(told[1].starts_with(":2: a tab"));
        assert!(told[2].starts_with(":3: white space"));
    }

    #[test]
    fn sql_stands_in_the_book_only() {
        let query = format!("//! A query.\nconst Q: &str = \"{}1\";\n", SQL[0]);
        assert_eq!(faults("src-tauri/crates/book/src/lib.rs", &query), [""; 0]);
        assert_eq!(faults("src-tauri/crates/door/src/lib.rs", &query), [":2: SQL outside the book"]);
    }

    #[test]
    fn work_not_done_and_paths_of_a_machine_are_found() {
        for start in UNDONE.iter().chain(&MACHINE_PATHS) {
            assert_eq!(faults("ui/src/door.ts", &format!("// {start}x")).len(), 1, "{start}");
        }
    }
}
