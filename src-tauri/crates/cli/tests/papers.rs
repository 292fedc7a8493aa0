//! Papers from the terminal: what becomes of each file, and what is refused before anything is filed.
#![allow(clippy::unwrap_used)]

use std::fs::{self, File};
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::time::{Duration, Instant};

/// A shelf with one car, and a folder for files.
struct Desk {
    folder: tempfile::TempDir,
}

struct Said {
    code: i32,
    out: String,
    err: String,
}

impl Desk {
    fn new() -> Desk {
        let desk = Desk { folder: tempfile::tempdir().unwrap() };
        let vehicle = serde_json::json!({ "name": "Thistle", "engine": "petrol", "unit": "km" });
        desk.ask(&serde_json::json!({ "ask": "add-vehicle", "vehicle": vehicle }));
        desk
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    /// A photo of its own for every `tint`.
    fn photo(&self, name: &str, tint: u8) -> PathBuf {
        let path = self.path(name);
        let pixels = |x: u32, y: u32| image::Rgb([tint, (x * 3).to_le_bytes()[0], (y * 2).to_le_bytes()[0]]);
        image::RgbImage::from_fn(64, 96, pixels).save(&path).unwrap();
        path
    }

    fn command(&self) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_wellkept"));
        command.args(["--today", "2026-06-01", "--shelf"]).arg(self.path("shelf"));
        command
    }

    fn run(&self, words: &[&str], files: &[&Path]) -> Said {
        said(self.command().args(words).args(files).output().unwrap())
    }

    /// The answer to one request.
    fn ask(&self, request: &serde_json::Value) -> serde_json::Value {
        fs::write(self.path("request"), request.to_string()).unwrap();
        let file = File::open(self.path("request")).unwrap();
        let said = said(self.command().arg("ask").stdin(file).output().unwrap());
        serde_json::from_str(&said.out).unwrap()
    }

    /// The answer to a request about the only book.
    fn ask_of(&self, request: &str) -> serde_json::Value {
        let household = self.ask(&serde_json::json!({ "ask": "shelf" }));
        self.ask(&serde_json::json!({ "ask": request, "book": household["vehicles"][0]["book"] }))
    }

    /// The line of a visit.
    fn visit(&self) -> String {
        let said = self.run(&["visit", "--item", "engine-oil", "--json"], &[]);
        let written: serde_json::Value = serde_json::from_str(&said.out).unwrap();
        written["subject"].as_str().unwrap().to_owned()
    }

    fn tray(&self) -> usize {
        self.ask_of("counter")["tray"].as_array().unwrap().len()
    }
}

fn said(output: Output) -> Said {
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    Said { code: output.status.code().unwrap(), out: text(output.stdout), err: text(output.stderr) }
}

#[test]
fn nothing_is_filed_for_a_line_that_is_not_there() {
    let desk = Desk::new();
    let photo = desk.photo("one.png", 1);
    let none = "0".repeat(32);
    for line in ["nonsense", &none] {
        let said = desk.run(&["paper", "--visit", line], &[&photo]);
        assert_eq!((said.code, said.out.as_str(), said.err.lines().count()), (1, "", 1), "{}", said.err);
        assert_eq!(desk.tray(), 0);
    }
}

#[test]
fn a_paper_says_that_it_was_tied_and_a_known_one_that_it_is_known() {
    let desk = Desk::new();
    let (first, second) = (desk.photo("one.png", 1), desk.photo("two.png", 2));
    let visit = desk.visit();
    let tied = desk.run(&["paper", "--visit", &visit], &[&first]);
    assert_eq!((tied.code, tied.err.as_str()), (0, ""));
    assert!(tied.out.contains("is tied") && !tied.out.contains("tray"), "{}", tied.out);
    assert_eq!(desk.tray(), 0);
    assert!(desk.run(&["paper"], &[&second]).out.contains("waits in the tray"));
    let again = desk.run(&["paper"], &[&second]);
    assert!(
        again.code == 0 && again.out.contains("is known") && !again.out.contains("tray"),
        "{}",
        again.out
    );
    assert_eq!(desk.tray(), 1);
}

#[test]
fn a_paper_that_stands_at_the_line_already_is_said_to_and_nothing_is_written() {
    let desk = Desk::new();
    let (first, second) = (desk.photo("one.png", 1), desk.photo("two.png", 2));
    let (visit, other) = (desk.visit(), desk.visit());
    desk.run(&["paper", "--visit", &visit], &[&first]);
    let entries = || desk.ask_of("lines")["lines"].to_string();
    let before = entries();
    let again = desk.run(&["paper", "--visit", &visit], &[&first]);
    assert_eq!((again.code, again.err.as_str()), (0, ""));
    assert_eq!(again.out.lines().count(), 1, "{}", again.out);
    assert!(
        again.out.contains("one.png") && again.out.contains("stands at that line already"),
        "{}",
        again.out
    );
    let json = desk.run(&["paper", "--json", "--visit", &visit], &[&first]);
    assert_eq!(json.code, 0, "{}", json.err);
    let papers: Vec<String> = serde_json::from_str(&json.out).unwrap();
    assert_eq!(papers.len(), 1, "a script is still told which paper it is");
    assert_eq!(entries(), before);

    // What stands at another line is refused as before, and what stands here keeps no other file out.
    let elsewhere = desk.run(&["paper", "--visit", &other], &[&first]);
    assert_eq!((elsewhere.code, elsewhere.err.lines().count()), (1, 1), "{}", elsewhere.err);
    assert!(!elsewhere.out.contains("stands at that line already"), "{}", elsewhere.out);
    let both = desk.run(&["paper", "--visit", &visit], &[&first, &second]);
    assert!(both.code == 0 && both.out.contains("two.png’ is tied"), "{}", both.out);
}

#[test]
fn a_bad_file_is_named_and_keeps_none_of_the_others_out() {
    let desk = Desk::new();
    let (first, second, bad) = (desk.photo("one.png", 1), desk.photo("two.png", 2), desk.path("bad.txt"));
    fs::write(&bad, "no picture").unwrap();
    let missing = desk.path("missing.png");
    let said = desk.run(&["paper"], &[&first, &bad, &missing, &second]);
    assert_eq!((said.code, said.out.lines().count(), desk.tray()), (1, 2, 2));
    let refused: Vec<&str> = said.err.lines().collect();
    assert_eq!(refused.len(), 2, "{}", said.err);
    assert!(refused[0].contains("bad.txt") && refused[1].contains("missing.png"), "{}", said.err);
}

#[test]
fn a_huge_file_is_refused_before_it_is_read() {
    let desk = Desk::new();
    let huge = desk.path("huge.jpg");
    // A file of nothing but holes, which takes no room on the disk.
    File::create(&huge).unwrap().set_len(1 << 36).unwrap();
    for words in ["paper", "read", "card-read"] {
        let started = Instant::now();
        let said = desk.run(&[words], &[&huge]);
        assert!(said.code == 1 && said.err.contains("64 MiB"), "{words}: {}", said.err);
        assert!(started.elapsed() < Duration::from_secs(20), "{words} read it");
    }
}

#[cfg(unix)]
#[test]
fn what_is_no_plain_file_is_refused_at_once() {
    let desk = Desk::new();
    let pipe = desk.path("pipe");
    assert!(Command::new("mkfifo").arg(&pipe).status().unwrap().success());
    for path in [pipe.as_path(), desk.folder.path()] {
        for words in ["paper", "read"] {
            let said = desk.run(&[words], &[path]);
            assert!(said.code == 1 && said.err.contains("is no file"), "{}", said.err);
        }
    }
}

/// Without the models nothing is read; but a document gets as far as a photo does.
#[test]
fn a_document_is_read_as_a_photo_is() {
    let desk = Desk::new();
    let document = desk.path("receipt.pdf");
    desk.run(&["reading", "41000"], &[]);
    let written = desk.run(&["report", "--out"], &[&document]);
    assert_eq!(written.code, 0, "{}", written.err);
    let read = |path: &Path| {
        let models = desk.path("no-models");
        desk.run(&["read", "--models", models.to_str().unwrap()], &[path]).err
    };
    let photo = desk.photo("one.png", 1);
    assert!(read(&photo).contains("not installed"));
    assert_eq!(read(&document), read(&photo));
}

#[test]
fn a_document_is_written_out_as_it_came_in_and_over_nothing() {
    let desk = Desk::new();
    let (document, out) = (desk.path("receipt.pdf"), desk.path("out.pdf"));
    desk.run(&["reading", "41000"], &[]);
    desk.run(&["report", "--out"], &[&document]);
    let papers = |file: &Path| -> Vec<String> {
        serde_json::from_str(&desk.run(&["paper", "--json"], &[file]).out).unwrap()
    };
    let page = papers(&document).remove(0);
    let written = desk.run(&["document", &page, "--out"], &[&out]);
    assert_eq!((written.code, written.err.as_str()), (0, ""));
    assert!(written.out.contains("out.pdf, as it came in"), "{}", written.out);
    assert_eq!(fs::read(&out).unwrap(), fs::read(&document).unwrap());

    fs::write(&out, "a file of his own").unwrap();
    let again = desk.run(&["document", &page, "--out"], &[&out]);
    assert_eq!((again.code, again.out.as_str(), again.err.lines().count()), (1, "", 1), "{}", again.err);
    assert!(again.err.contains("There is a file"), "{}", again.err);
    assert_eq!(fs::read_to_string(&out).unwrap(), "a file of his own");

    let photo = papers(&desk.photo("one.png", 1)).remove(0);
    let nowhere = desk.path("nowhere.pdf");
    let refused = desk.run(&["document", &photo, "--out"], &[&nowhere]);
    assert!(refused.code == 1 && refused.err.contains("There is no PDF of this"), "{}", refused.err);
    assert!(!nowhere.exists());
}
