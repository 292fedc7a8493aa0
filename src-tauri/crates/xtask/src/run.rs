//! `cargo xtask run`: from a fresh checkout to the open window with the demo in it.

use std::fs;
use std::path::{Path, PathBuf};

use crate::shell::{Failure, Run, command, say, target};
use crate::{models, node, setup, workspace};

/// The car of the invented household whose card is printed.
const DEMO_CAR: &str = "Pip";

/// Installs what is missing, builds what is stale, fills the demo once, and opens it.
pub fn run() -> Result<(), Failure> {
    setup::window()?;
    models::models_if_possible();
    node::build()?;
    say(
        "window and terminal: building without optimisation, which is ready sooner (the first time: some minutes)",
    );
    workspace::faces()?;
    let shelf = demo()?;
    if has_display() { open(&shelf) } else { serve(&shelf) }
}

/// The demo's shelf, filled once. It is filled aside and moved into place, so that half a demo is never taken for one.
fn demo() -> Result<PathBuf, Failure> {
    let shelf = target("wellkept-demo");
    if shelf.is_dir() {
        say(format!("demo: as left in {} (delete that folder for a new one)", shelf.display()));
        return Ok(shelf);
    }
    say(format!("demo: filling {}", shelf.display()));
    let aside = target("wellkept-demo.half");
    if aside.is_dir() {
        fs::remove_dir_all(&aside).map_err(|error| Failure::at(&aside, &error))?;
    }
    wellkept(&aside).arg("demo").run()?;
    fs::rename(&aside, &shelf).map_err(|error| Failure::at(&shelf, &error))?;
    Ok(shelf)
}

fn has_display() -> bool {
    cfg!(not(target_os = "linux"))
        || ["DISPLAY", "WAYLAND_DISPLAY"]
            .iter()
            .any(|name| std::env::var_os(name).is_some_and(|value| !value.is_empty()))
}

fn open(shelf: &Path) -> Result<(), Failure> {
    say("opening the window");
    let mut window = command(target("debug/wellkept-window"));
    window.arg("--shelf").arg(shelf).env(models::VARIABLE, models::folder()).run()
}

fn serve(shelf: &Path) -> Result<(), Failure> {
    say(
        "there is no display (neither DISPLAY nor WAYLAND_DISPLAY is set), so the ui is served to a browser instead",
    );
    let card = target("wellkept-demo-card.pdf");
    wellkept(shelf).args(["--vehicle", DEMO_CAR, "card", "--out"]).arg(&card).run()?;
    say(format!("the demo's card is {}", card.display()));
    say("serving; open the address below in a browser on this machine, and press Ctrl-C to end");
    wellkept(shelf).arg("serve").run()
}

fn wellkept(shelf: &Path) -> std::process::Command {
    let mut wellkept = command(target("debug/wellkept"));
    wellkept.arg("--shelf").arg(shelf).env(models::VARIABLE, models::folder());
    wellkept
}
