//! `cargo xtask test`: everything that CI runs, cheap steps first.

use std::process::Command;

use crate::shell::{Failure, Run, cargo, command, root, target};
use crate::steps::{End, Step};
use crate::tools::Tool;
use crate::{android, models, node, python, setup, tidy, walls, workspace};

const CARGO_DENY: Tool = Tool { name: "cargo-deny", version: "0.20.2" };
const TAURI_DRIVER: Tool = Tool { name: "tauri-driver", version: "2.1.0" };

/// The steps, in the order in which they are walked.
pub const STEPS: &[Step] = &[
    Step { name: "system", says: "system packages", work: || done(setup::everything()) },
    Step { name: "fmt", says: "layout of the Rust source", work: || done(workspace::fmt()) },
    Step { name: "tidy", says: "sizes, heads and forbidden words", work: || done(tidy::tidy()) },
    Step { name: "walls", says: "what each room depends on", work: || done(walls::walls()) },
    Step { name: "ui", says: "types, unit tests and build of the ui", work: || done(ui()) },
    Step {
        name: "viewer",
        says: "size and tests of the viewer, alone and in a real browser",
        work: || done(viewer()),
    },
    Step { name: "clippy", says: "clippy, warnings denied", work: || done(workspace::clippy()) },
    Step { name: "models", says: "networks that find and read text", work: || done(models::models()) },
    Step {
        name: "rust",
        says: "unit and integration tests, types not stale",
        work: || done(workspace::tests()),
    },
    Step { name: "licences", says: "licences and sources of dependencies", work: || done(licences()) },
    Step {
        name: "programs",
        says: "the two programs that the next steps drive",
        work: || done(workspace::programs()),
    },
    Step { name: "references", says: "independent readers, in Python", work: || done(python::references()) },
    Step { name: "browser", says: "the main job in a real browser", work: || done(browser()) },
    Step { name: "window", says: "the main job in the real window", work: || done(window()) },
    Step { name: "android", says: "type check for Android, and what it has in Java", work: android::check },
];

fn done(result: Result<(), Failure>) -> Result<End, Failure> {
    result.map(|()| End::Done)
}

fn ui() -> Result<(), Failure> {
    node::build()?;
    node::script("check")?;
    node::script("test")
}

fn viewer() -> Result<(), Failure> {
    // The build refuses a page that is too large.
    node::build()?;
    node::script("viewer:test")?;
    node::script("viewer:check")
}

fn licences() -> Result<(), Failure> {
    let deny = CARGO_DENY.path()?;
    let mut check = command(deny);
    check.args(["--locked", "--workspace", "--config", ".cargo/deny.toml", "check"]);
    check.args(["licenses", "bans", "sources"]).env("CARGO", cargo().get_program()).run()
}

fn browser() -> Result<(), Failure> {
    node::install("tests")?;
    node_test(command("node"), "browser")
}

fn window() -> Result<(), Failure> {
    node::install("tests")?;
    let driver = TAURI_DRIVER.path()?;
    let mut screen = command("xvfb-run");
    screen
        .args(["--auto-servernum", "--server-args", "-screen 0 1280x800x24", "node"])
        .env("TAURI_DRIVER", driver);
    node_test(screen, "window")
}

/// Runs the test files of one folder by node's own runner, one after the other: two cores are soon full. What a failed
/// test left open does not keep the run from ending.
fn node_test(mut node: Command, folder: &str) -> Result<(), Failure> {
    node.args(["--test", "--test-concurrency=1", "--test-force-exit"])
        .args(node::test_files(folder)?)
        .current_dir(root().join("tests"))
        .env("WELLKEPT", target("debug/wellkept"))
        .env("WELLKEPT_WINDOW", target("debug/wellkept-window"))
        .env(models::VARIABLE, models::folder())
        .run()
}
