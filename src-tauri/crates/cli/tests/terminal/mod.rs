//! The terminal program at work on a shelf of its own.
#![allow(dead_code, reason = "each file of tests takes what it needs")]

use std::io::Write as _;
use std::path::Path;
use std::process::{Command, Output, Stdio};

/// What it says, with success.
pub fn run(shelf: &Path, words: &[&str], input: &str) -> String {
    let output = output(shelf, words, input);
    assert!(output.status.success(), "{words:?}");
    String::from_utf8(output.stdout).unwrap()
}

/// What it refuses with, in one sentence.
pub fn refused(shelf: &Path, words: &[&str]) -> String {
    let output = output(shelf, words, "");
    assert!(!output.status.success() && output.stdout.is_empty(), "{words:?}");
    String::from_utf8(output.stderr).unwrap()
}

fn output(shelf: &Path, words: &[&str], input: &str) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_wellkept"));
    command.args(["--today", "2026-06-01", "--shelf"]).arg(shelf).args(words);
    let pipes = command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = pipes.spawn().unwrap();
    child.stdin.take().unwrap().write_all(input.as_bytes()).unwrap();
    child.wait_with_output().unwrap()
}
