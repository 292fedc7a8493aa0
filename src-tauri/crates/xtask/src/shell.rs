//! Running other programs, and saying in one sentence why one of them did not do its work.

use std::ffi::OsStr;
use std::fmt;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Why a chore failed: one sentence with what was wrong and what would be right.
#[derive(Debug)]
pub struct Failure(String);

impl Failure {
    /// A failure with this sentence.
    pub fn new(sentence: impl Into<String>) -> Self {
        Failure(sentence.into())
    }

    /// The failure of reading or writing `path`.
    pub fn at(path: &Path, error: &std::io::Error) -> Self {
        Failure(format!("{}: {error}", path.display()))
    }
}

impl fmt::Display for Failure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// The root of the working tree, where the workspace's `Cargo.toml` stands.
pub fn root() -> PathBuf {
    let here = std::env::var_os("CARGO_MANIFEST_DIR")
        .map_or_else(|| PathBuf::from(env!("CARGO_MANIFEST_DIR")), PathBuf::from);
    // src-tauri/crates/xtask
    here.ancestors().nth(3).map_or_else(|| here.clone(), Path::to_path_buf)
}

/// `target/` and below, unless the user's own setting puts it elsewhere.
pub fn target(below: &str) -> PathBuf {
    let base = std::env::var_os("CARGO_TARGET_DIR").map_or_else(|| root().join("target"), PathBuf::from);
    root().join(base).join(below)
}

/// Says what is being done now, one line a step.
pub fn say(what: impl fmt::Display) {
    println!("   {what}");
}

/// `program`, to be run in the root of the working tree.
pub fn command(program: impl AsRef<OsStr>) -> Command {
    let mut command = Command::new(program);
    command.current_dir(root());
    command
}

/// The very cargo that runs this program, not a proxy that may choose another toolchain.
pub fn cargo() -> Command {
    command(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()))
}

/// What this program adds to a [`Command`]: it fails in words.
pub trait Run {
    /// Runs to the end with its output passed through.
    fn run(&mut self) -> Result<(), Failure>;
    /// Runs to the end and returns what it printed.
    fn read(&mut self) -> Result<String, Failure>;
}

impl Run for Command {
    fn run(&mut self) -> Result<(), Failure> {
        let status = self.status().map_err(|error| not_started(self, &error))?;
        if status.success() { Ok(()) } else { Err(Failure(format!("`{}` ended with {status}", line(self)))) }
    }

    fn read(&mut self) -> Result<String, Failure> {
        let output = self.output().map_err(|error| not_started(self, &error))?;
        if output.status.success() {
            return Ok(String::from_utf8_lossy(&output.stdout).into_owned());
        }
        let said = String::from_utf8_lossy(&output.stderr);
        Err(Failure(format!("`{}` ended with {}: {}", line(self), output.status, said.trim())))
    }
}

/// Whether `program` can be found on the search path.
pub fn on_path(program: &str) -> bool {
    std::env::var_os("PATH")
        .is_some_and(|path| std::env::split_paths(&path).any(|dir| dir.join(program).is_file()))
}

fn not_started(command: &Command, error: &std::io::Error) -> Failure {
    let program = command.get_program().to_string_lossy();
    if error.kind() != ErrorKind::NotFound {
        return Failure(format!("`{program}` could not be started: {error}"));
    }
    if command.get_current_dir().is_some_and(|dir| !dir.is_dir()) {
        return Failure(format!("`{}` has no folder to run in", line(command)));
    }
    Failure(format!("`{program}` is not installed; {}", where_from(&program)))
}

fn where_from(program: &str) -> &'static str {
    match program {
        "npm" | "npx" | "node" => "install Node 20 or newer together with npm",
        "python3" => "install Python 3.11 or newer with its venv module",
        _ => "install it and have it on the search path",
    }
}

fn line(command: &Command) -> String {
    let words = std::iter::once(command.get_program()).chain(command.get_args());
    words.map(|word| word.to_string_lossy().into_owned()).collect::<Vec<_>>().join(" ")
}
