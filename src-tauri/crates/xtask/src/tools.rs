//! Programs from crates.io that the tests need: taken from the search path, or installed once under `target/tools`.

use std::path::PathBuf;

use crate::shell::{Failure, Run, cargo, on_path, say, target};

/// A program that `cargo install` can bring.
pub struct Tool {
    /// Its package and its program.
    pub name: &'static str,
    /// The version that the tests were written against.
    pub version: &'static str,
}

impl Tool {
    /// Where the program is, after installing it if it is nowhere.
    pub fn path(&self) -> Result<PathBuf, Failure> {
        if on_path(self.name) {
            return Ok(self.name.into());
        }
        let tools = target("tools");
        let program = tools.join("bin").join(self.name);
        if !program.is_file() {
            say(format!("{} {}: installing it under target/tools, once", self.name, self.version));
            let version = format!("{}@{}", self.name, self.version);
            cargo().args(["install", "--quiet", "--locked", &version, "--root"]).arg(&tools).run()?;
        }
        Ok(program)
    }
}
