//! System packages: which are needed, which are missing, and installing those by apt.

use std::process::Stdio;

use crate::shell::{Failure, Run, command, on_path, say};

/// Builds the window on Debian and Ubuntu. Everything else of the desktop comes along as a dependency.
const WINDOW: &[&str] = &["gcc", "libc6-dev", "pkg-config", "libwebkit2gtk-4.1-dev"];

/// Runs the tests: the window's driver and a screen for it, a browser, readers of the printed card, Python.
const TESTS: &[&str] = &[
    "webkit2gtk-driver",
    "xvfb",
    "xauth",
    "chromium",
    "fonts-dejavu-core",
    "poppler-utils",
    "qpdf",
    "zbar-tools",
    "python3",
    "python3-venv",
];

/// Compiles C for Android's processor, as far as a type check needs it.
pub const ANDROID: &[&str] = &["clang", "lld", "libc6-dev-arm64-cross", "linux-libc-dev-arm64-cross"];

/// Compiles and runs Java.
pub const JAVA: &[&str] = &["default-jdk-headless"];

/// What building the window needs, by its name on systems without apt.
const ELSEWHERE: &str = "a C compiler, pkg-config and WebKitGTK 4.1 with its headers \
    (Fedora: gcc pkgconf webkit2gtk4.1-devel; Arch: base-devel webkit2gtk-4.1; \
    macOS: the Xcode command line tools; Windows: the Visual Studio build tools and WebView2)";

/// Installs what building the window needs.
pub fn window() -> Result<(), Failure> {
    ensure(WINDOW, ELSEWHERE)
}

/// Installs what building and testing need.
pub fn everything() -> Result<(), Failure> {
    let tests = "the window's needs, a WebKitWebDriver, Xvfb, Chromium, poppler-utils, qpdf, zbar and Python 3 with venv";
    ensure(&[WINDOW, TESTS].concat(), tests)
}

/// Whether this system installs its packages by apt.
pub fn has_apt() -> bool {
    on_path("apt-get") && on_path("dpkg-query")
}

/// Installs those of `packages` that are missing; where there is no apt, says what `elsewhere` names and goes on.
pub fn ensure(packages: &[&str], elsewhere: &str) -> Result<(), Failure> {
    if !has_apt() {
        say(format!("no apt here, so nothing is installed; this needs {elsewhere}"));
        return Ok(());
    }
    let missing = missing(packages)?;
    if missing.is_empty() {
        say(format!("system packages: all {} are there", packages.len()));
        return Ok(());
    }
    say(format!("system packages: installing {}", missing.join(" ")));
    install(&missing)
}

fn missing<'a>(packages: &[&'a str]) -> Result<Vec<&'a str>, Failure> {
    // dpkg-query complains about each package that it has never heard of, but lists the others all the same.
    let output = command("dpkg-query")
        .args(["-W", "-f", "${Package} ${db:Status-Status}\\n"])
        .args(packages)
        .output()
        .map_err(|error| Failure::new(format!("`dpkg-query` could not be started: {error}")))?;
    let listed = String::from_utf8_lossy(&output.stdout);
    let there = |package: &&str| listed.lines().any(|line| line == format!("{package} installed"));
    Ok(packages.iter().copied().filter(|package| !there(package)).collect())
}

fn install(packages: &[&str]) -> Result<(), Failure> {
    let root = command("id").arg("-u").read()?.trim() == "0";
    if !root && !on_path("sudo") {
        let list = packages.join(" ");
        return Err(Failure::new(format!(
            "as root, run `apt-get install --no-install-recommends {list}` first"
        )));
    }
    let apt = |args: &[&str]| {
        let mut apt = if root { command("env") } else { command("sudo") };
        apt.args(["DEBIAN_FRONTEND=noninteractive", "apt-get", "--quiet=2"]).args(args);
        // A password is asked for on the terminal, never on the standard input.
        apt.stdin(Stdio::null()).run()
    };
    if apt(&["update"]).is_err() {
        say("apt could not refresh all its lists; trying with those it has");
    }
    apt(&[&["install", "--yes", "--no-install-recommends"], packages].concat())
}
