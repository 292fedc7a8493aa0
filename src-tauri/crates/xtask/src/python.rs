//! The references in Python: what independent implementations say of what this project wrote.

use std::fs;

use crate::models;
use crate::shell::{Failure, Run, command, root, say, target};

const REQUIREMENTS: &str = "tests/references/requirements.txt";

/// Runs the references by pytest, with the pinned packages in an environment of their own.
pub fn references() -> Result<(), Failure> {
    let venv = root().join("tests/.venv");
    let python = venv.join("bin/python");
    let wanted = root().join(REQUIREMENTS);
    let wanted = fs::read_to_string(&wanted).map_err(|error| Failure::at(&wanted, &error))?;
    let stamp = venv.join("installed.txt");
    if !fs::read_to_string(&stamp).is_ok_and(|installed| installed == wanted) {
        say("Python packages: installing as pinned in tests/.venv");
        command("python3").args(["-m", "venv", "--clear"]).arg(&venv).run()?;
        command(&python)
            .args(["-m", "pip", "install", "--quiet", "--disable-pip-version-check", "-r", REQUIREMENTS])
            .run()?;
        fs::write(&stamp, wanted).map_err(|error| Failure::at(&stamp, &error))?;
    }
    command(&python)
        .args(["-m", "pytest", "-q", "-p", "no:cacheprovider", "tests/references"])
        .env("WELLKEPT", target("debug/wellkept"))
        .env(models::VARIABLE, models::folder())
        .run()
}
