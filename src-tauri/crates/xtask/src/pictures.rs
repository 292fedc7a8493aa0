//! `cargo xtask pictures`: the README's pictures, taken of the built program with the demo in it.

use crate::shell::{Failure, Run, command, say, target};
use crate::{models, node, setup, workspace};

const SCRIPT: &str = "tests/browser/pictures.mjs";

/// Builds what is stale and takes every picture anew, under `ui/pictures`.
pub fn pictures() -> Result<(), Failure> {
    setup::everything()?;
    node::build()?;
    workspace::faces()?;
    node::install("tests")?;
    say("pictures: filling a demo and going through its places");
    command("node")
        .arg(SCRIPT)
        .env("WELLKEPT", target("debug/wellkept"))
        .env(models::VARIABLE, models::folder())
        .run()
}
