//! Lists the Fluent files under `lang/`, so that a new language or file is taken in by putting it there.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::{env, fs, io};

fn main() -> io::Result<()> {
    println!("cargo::rerun-if-changed=build.rs");
    println!("cargo::rerun-if-changed=lang");
    let here = PathBuf::from(env::var("CARGO_MANIFEST_DIR").map_err(io::Error::other)?);
    let out = PathBuf::from(env::var("OUT_DIR").map_err(io::Error::other)?);
    fs::write(out.join("languages.rs"), languages(&here.join("lang"))?)
}

/// A constant expression: every language with the names and texts of its files, all in ascending order.
fn languages(root: &Path) -> io::Result<String> {
    let mut list = String::from("&[\n");
    for folder in ascending(root)?.iter().filter(|path| path.is_dir()) {
        let _ = writeln!(list, "    ({:?}, &[", name(folder));
        for file in ascending(folder)?.iter().filter(|path| path.extension().is_some_and(|it| it == "ftl")) {
            let _ = writeln!(list, "        ({:?}, include_str!({:?})),", name(file), file.to_string_lossy());
        }
        list.push_str("    ]),\n");
    }
    list.push_str("]\n");
    Ok(list)
}

fn ascending(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut paths = fs::read_dir(folder)?.map(|entry| Ok(entry?.path())).collect::<io::Result<Vec<_>>>()?;
    paths.sort();
    Ok(paths)
}

fn name(path: &Path) -> String {
    path.file_name().unwrap_or_default().to_string_lossy().into_owned()
}
