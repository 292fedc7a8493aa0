//! The ui and the viewer: npm packages by lock file, builds only when a source is newer.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::SystemTime;

use crate::shell::{Failure, Run, command, root, say, target};

/// Folders of npm's and the bundler's own making, which are nobody's source.
const MADE: &[&str] = &["node_modules", "dist"];

/// Installs the packages of the npm project in `folder` exactly as locked, unless they are there already.
pub fn install(folder: &str) -> Result<(), Failure> {
    let project = root().join(folder);
    let lock = modified(&project.join("package-lock.json")).ok_or_else(|| {
        Failure::new(format!("{folder}/package-lock.json is missing; run `npm install` in {folder}"))
    })?;
    if modified(&project.join("node_modules/.package-lock.json")).is_some_and(|installed| installed >= lock) {
        say(format!("npm packages of {folder}: as locked"));
        return Ok(());
    }
    say(format!("npm packages of {folder}: installing as locked"));
    npm(folder, &["ci", "--no-audit", "--no-fund"]).run()
}

/// `npm ARGS` in `folder`.
pub fn npm(folder: &str, args: &[&str]) -> Command {
    let mut npm = command("npm");
    npm.args(args).current_dir(root().join(folder));
    npm
}

/// Runs a script of the ui's `package.json`.
pub fn script(name: &str) -> Result<(), Failure> {
    npm("ui", &["run", "--silent", name]).run()
}

/// Builds the ui and the viewer if one of their sources is newer than the last build.
pub fn build() -> Result<(), Failure> {
    install("ui")?;
    let stamp = target("xtask/ui-built");
    let sources = [root().join("ui"), root().join("src-tauri/crates/words")];
    let newest = sources.iter().filter_map(|source| newest(source)).max();
    let complete = ["ui/dist", "ui/viewer/dist"].iter().all(|dist| root().join(dist).is_dir());
    if complete && modified(&stamp) >= newest {
        say("ui and viewer: built already");
        return Ok(());
    }
    say("ui and viewer: building");
    script("build")?;
    script("viewer:build")?;
    let write = |()| fs::write(&stamp, "");
    fs::create_dir_all(target("xtask")).and_then(write).map_err(|error| Failure::at(&stamp, &error))
}

/// The test files under `folder` of the npm project `tests`, in the order of their names.
pub fn test_files(folder: &str) -> Result<Vec<PathBuf>, Failure> {
    let path = root().join("tests").join(folder);
    let mut files: Vec<PathBuf> = fs::read_dir(&path)
        .map_err(|error| Failure::at(&path, &error))?
        .flatten()
        .map(|entry| entry.path())
        .filter(|file| file.file_name().is_some_and(|name| name.to_string_lossy().contains(".test.")))
        .collect();
    files.sort();
    if files.is_empty() {
        Err(Failure::new(format!("tests/{folder} holds no *.test.* file")))
    } else {
        Ok(files)
    }
}

fn modified(path: &Path) -> Option<SystemTime> {
    fs::metadata(path).and_then(|metadata| metadata.modified()).ok()
}

/// When the youngest file under `path` was last written.
fn newest(path: &Path) -> Option<SystemTime> {
    let Ok(folder) = fs::read_dir(path) else {
        return modified(path);
    };
    folder
        .flatten()
        .filter(|entry| !MADE.iter().any(|made| entry.file_name() == *made))
        .filter_map(|entry| newest(&entry.path()))
        .max()
}
