//! The door's types in TypeScript, for the ui.

use ts_rs::{Config, Dependency, TS};

use crate::{BriefPage, HandoverForm, Refusal, ReportOptions, Request, Response};

const HEAD: &str = "\
// Written by `cargo xtask types` from the door's Rust types; not to be edited.
// Longer than 400 lines because it holds every type that crosses the door.
";

/// The declarations of every type that crosses the door, in the order of their names.
pub fn typescript() -> String {
    let config = Config::new().with_large_int("number");
    let mut declarations = std::collections::BTreeMap::new();
    let mut visitor = Visitor { config: &config, declarations: &mut declarations };
    visitor.add::<Request>();
    visitor.add::<Response>();
    visitor.add::<Refusal>();
    // They cross beside a file and not in a request.
    visitor.add::<HandoverForm>();
    visitor.add::<BriefPage>();
    visitor.add::<ReportOptions>();
    let mut text = String::from(HEAD);
    for declaration in declarations.values() {
        text.push_str("\nexport ");
        for line in declaration.lines() {
            text.push_str(line.trim_end());
            text.push('\n');
        }
    }
    text
}

struct Visitor<'a> {
    config: &'a Config,
    declarations: &'a mut std::collections::BTreeMap<String, String>,
}

impl Visitor<'_> {
    fn add<T: TS + 'static + ?Sized>(&mut self) {
        let name = T::name(self.config);
        if self.declarations.contains_key(&name) {
            return;
        }
        self.declarations.insert(name, T::decl(self.config));
        T::visit_dependencies(self);
    }
}

impl ts_rs::TypeVisitor for Visitor<'_> {
    fn visit<T: TS + 'static + ?Sized>(&mut self) {
        // Only types of our own are declared; numbers and texts have no place of their own.
        if Dependency::from_ty::<T>(self.config).is_some() {
            self.add::<T>();
        }
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]

    /// The checked-in file is what the Rust types give. With `WELLKEPT_WRITE_TYPES` set it is written.
    #[test]
    fn types_are_fresh() {
        let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../ui/src/door/types.ts");
        let text = super::typescript();
        if std::env::var_os("WELLKEPT_WRITE_TYPES").is_some() {
            std::fs::create_dir_all(path.parent().unwrap()).unwrap();
            std::fs::write(&path, &text).unwrap();
        }
        let there = std::fs::read_to_string(&path).unwrap_or_default();
        assert!(there == text, "ui/src/door/types.ts is stale; run `cargo xtask types`");
    }
}
