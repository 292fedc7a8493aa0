//! `cargo xtask android-check`: does the window's library still type-check for Android's usual processor?
//!
//! With rustup's target where the user has it; else by a compiler from Debian's archive that comes with the sources of
//! the standard library, unpacked under `target/` beside the one in use and never installed.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::shell::{Failure, Run, cargo, command, on_path, say, target};
use crate::steps::End;
use crate::{java, setup};

const TARGET: &str = "aarch64-linux-android";

/// The oldest Android that the app runs on (7.0), as in `gen/android`.
const API_LEVEL: u32 = 24;

/// Of what the compiler's package depends on, that which is not on every system anyway.
const OWN_PARTS: [&str; 4] = ["rustc-web", "libstd-rust-web", "libllvm", "libz3"];

/// Tests what the app has in Java, and type-checks the window's library for [`TARGET`].
pub fn check() -> Result<End, Failure> {
    java::test()?;
    let mut check = if rustup_has_target()? {
        say(format!("rustup's {TARGET} is here and is used"));
        cargo()
    } else if setup::has_apt() {
        setup::ensure(setup::ANDROID, "")?;
        side_by_side(&compiler()?)?
    } else {
        return Ok(End::Skipped(format!(
            "neither apt nor rustup's target is here; run `rustup target add {TARGET}`"
        )));
    };
    check.args(["check", "--locked", "--package", "window", "--lib"]);
    if check.get_envs().any(|(name, _)| name == "RUSTC_BOOTSTRAP") {
        check.arg("-Zbuild-std=std,panic_abort");
    }
    // Nothing of it is run but macros and build scripts, which are ready sooner than they would be optimised.
    check.args(["--config", "profile.dev.package.'*'.opt-level=0"]);
    // A folder of its own, since another compiler would otherwise throw out everything that this one built.
    check.args(["--target", TARGET, "--target-dir"]).arg(target("android"));
    compile_c(&mut check);
    check.run().map(|()| End::Done)
}

fn rustup_has_target() -> Result<bool, Failure> {
    let libdir = command("rustc").args(["--print", "target-libdir", "--target", TARGET]).read()?;
    Ok(Path::new(libdir.trim()).is_dir())
}

/// Cargo with the unpacked compiler. Building the standard library is not stable, hence the bootstrap switch.
fn side_by_side(compiler: &Path) -> Result<Command, Failure> {
    let mut libraries = vec![compiler.join("usr/lib/x86_64-linux-gnu")];
    libraries.extend(folders(&compiler.join("usr/lib"), "llvm-")?.into_iter().map(|llvm| llvm.join("lib")));
    let libraries = std::env::join_paths(libraries).map_err(|error| Failure::new(error.to_string()))?;
    let mut cargo = cargo();
    cargo.env("LD_LIBRARY_PATH", libraries);
    cargo.env("RUSTC", compiler.join("usr/bin/rustc")).env("RUSTC_BOOTSTRAP", "1");
    Ok(cargo)
}

fn folders(within: &Path, prefix: &str) -> Result<Vec<PathBuf>, Failure> {
    let entries = fs::read_dir(within).map_err(|error| Failure::at(within, &error))?;
    let named =
        |path: &PathBuf| path.file_name().is_some_and(|name| name.to_string_lossy().starts_with(prefix));
    Ok(entries.flatten().map(|entry| entry.path()).filter(named).collect())
}

/// Enough for a check of the C that is compiled along (of the database), unless the user's own settings name a compiler.
fn compile_c(check: &mut Command) {
    let headers = "/usr/aarch64-linux-gnu/include";
    if std::env::var_os("CC_aarch64_linux_android").is_some() || !Path::new(headers).is_dir() {
        return;
    }
    let flags = format!("--target=aarch64-linux-android{API_LEVEL} -isystem {headers}");
    check.env("CC_aarch64_linux_android", "clang").env("AR_aarch64_linux_android", "ar");
    check.env("CFLAGS_aarch64_linux_android", flags);
}

/// The folder of the unpacked compiler; fetched and unpacked the first time.
fn compiler() -> Result<PathBuf, Failure> {
    let ready = target("android-toolchain");
    if ready.is_dir() {
        return Ok(ready);
    }
    say("fetching a compiler with the standard library's sources from the system's archive, once");
    let aside = target("android-toolchain.half");
    let archives = aside.join("archives");
    let at = |error: std::io::Error| Failure::at(&aside, &error);
    if aside.is_dir() {
        fs::remove_dir_all(&aside).map_err(at)?;
    }
    fs::create_dir_all(&archives).map_err(at)?;
    command("apt-get")
        .args(["--quiet=2", "-o", "APT::Sandbox::User=root", "download"])
        .args(parts()?)
        .current_dir(&archives)
        .run()?;
    for archive in fs::read_dir(&archives).map_err(at)?.flatten() {
        command("dpkg").arg("-x").arg(archive.path()).arg(&aside).run()?;
    }
    fs::remove_dir_all(&archives).map_err(at)?;
    fs::rename(&aside, &ready).map_err(at)?;
    Ok(ready)
}

/// The packages to unpack. Two of them carry a version in their name, so they are asked for, not listed.
fn parts() -> Result<Vec<String>, Failure> {
    let only = ["recommends", "suggests", "conflicts", "breaks", "replaces", "enhances"]
        .map(|kind| format!("--no-{kind}"));
    let tree = command("apt-cache")
        .args(["depends", "--recurse"])
        .args(only)
        .arg("rustc-web")
        .read()
        .unwrap_or_default();
    let own = |package: &&str| OWN_PARTS.iter().any(|part| package.starts_with(part));
    let mut parts: Vec<String> = tree.lines().filter(own).map(str::to_owned).collect();
    if parts.is_empty() {
        let add = format!("`rustup target add {TARGET}`");
        let how = if on_path("rustup") { add } else { format!("install rustup and run {add}") };
        return Err(Failure::new(format!("this system's archive has no rustc-web package; {how}")));
    }
    parts.push("rust-web-src".into());
    Ok(parts)
}
