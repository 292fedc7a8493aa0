//! The Rust workspace: one build with the same features for every step, so that nothing is compiled twice.

use crate::shell::{Failure, Run, cargo, say};
use crate::{models, node};

/// The window serves the built ui from inside itself, in tests as in use.
const FEATURES: [&str; 3] = ["--locked", "--features", "window/custom-protocol"];

/// Layout of the source, by rustfmt.
pub fn fmt() -> Result<(), Failure> {
    cargo().args(["fmt", "--all", "--check"]).run()
}

/// Clippy, with every warning an error.
pub fn clippy() -> Result<(), Failure> {
    node::build()?;
    cargo()
        .args(["clippy", "--workspace", "--all-targets"])
        .args(FEATURES)
        .args(["--", "-D", "warnings"])
        .run()
}

/// Unit and integration tests of every room.
pub fn tests() -> Result<(), Failure> {
    node::build()?;
    cargo().args(["test", "--workspace"]).args(FEATURES).env(models::VARIABLE, models::folder()).run()
}

/// Builds the programs that the tests from outside drive. Together with the tests, so that the features agree.
pub fn programs() -> Result<(), Failure> {
    node::build()?;
    say("building `wellkept` and `wellkept-window`, without optimisation");
    cargo().args(["build", "--workspace", "--bins", "--tests"]).args(FEATURES).run()
}

/// Builds the two programs as they are run by hand: without optimisation, since that is ready sooner.
pub fn faces() -> Result<(), Failure> {
    cargo().args(["build", "--package", "window", "--package", "cli", "--bins"]).args(FEATURES).run()
}

/// Writes the TypeScript types that mirror the door's requests and responses.
pub fn write_types() -> Result<(), Failure> {
    say("types: the door's own test writes them when it is told to");
    cargo()
        .args(["test", "--locked", "--package", "door", "types_are_fresh"])
        .env("WELLKEPT_WRITE_TYPES", "1")
        .run()
}
