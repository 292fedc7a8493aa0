//! Old cards from the terminal: what is read, and what is refused in one sentence.
#![allow(clippy::unwrap_used)]

use std::process::Command;

/// The exit status and what stands on standard error.
fn refused(words: &[&str]) -> (i32, String) {
    let folder = tempfile::tempdir().unwrap();
    let mut command = Command::new(env!("CARGO_BIN_EXE_wellkept"));
    let output = command.arg("--shelf").arg(folder.path()).args(words).output().unwrap();
    (output.status.code().unwrap(), String::from_utf8(output.stderr).unwrap())
}

#[test]
fn a_file_that_is_not_there_is_told_from_a_code_that_is_not_whole() {
    for words in [&["card-read", "no-such-card.pdf"][..], &["compare", "no-such-card.pdf", "12"]] {
        let (status, said) = refused(words);
        assert!(status == 1 && said.starts_with("‘no-such-card.pdf’ could not be read"), "{said}");
    }
    let (status, said) = refused(&["card-read", "."]);
    assert!(status == 1 && said.starts_with("‘.’ is no file"), "{said}");
    for code in ["https://card.example/", "https://card.example/#x", "card.example/#12", "1 2"] {
        let (status, said) = refused(&["card-read", code]);
        assert!(status == 1 && said.starts_with("The code is "), "{code}: {said}");
    }
    let (_, said) = refused(&["card-read", "Thistle\n20 000 km"]);
    assert!(said.starts_with("The square holds plain text"), "{said}");
}

/// A folder misspelt is not made, and what hands a book over does not differ from what prints it.
#[test]
fn a_file_in_a_folder_that_is_not_there_is_refused_by_every_command_alike() {
    let folder = tempfile::tempdir().unwrap();
    let run = |words: &[&str]| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_wellkept"));
        command.arg("--shelf").arg(folder.path().join("shelf")).args(words).output().unwrap()
    };
    assert!(run(&["demo"]).status.success());
    let out = folder.path().join("misspelt").join("file");
    for command in ["card", "report", "handover"] {
        let output = run(&["--vehicle", "Pip", command, "--out", out.to_str().unwrap()]);
        let said = String::from_utf8(output.stderr).unwrap();
        assert!(output.status.code() == Some(1) && said.contains("misspelt"), "{command}: {said}");
        assert!(!folder.path().join("misspelt").exists(), "{command}");
    }
}
