//! `cargo xtask walls`: what each room depends on, against what it may know.
//!
//! The compiler keeps a room from using what is not among its dependencies; this keeps the dependencies themselves.

use std::collections::BTreeSet;

use crate::shell::{Failure, Run, cargo, say};

/// A room, the rooms it may know, and the libraries that must not stand anywhere under it.
struct Wall {
    room: &'static str,
    knows: &'static [&'static str],
    never: &'static [&'static str],
}

const DATABASE: &str = "rusqlite";
const TYPESETTING: &str = "typst";
const WINDOW: &str = "tauri";
const SERVER: &str = "axum";
const PICTURES: &str = "image";
const TERMINAL: &str = "clap";

#[rustfmt::skip]
const WALLS: &[Wall] = &[
    Wall { room: "units",  knows: &[],                     never: &[DATABASE, TYPESETTING, WINDOW, SERVER, PICTURES, TERMINAL] },
    Wall { room: "words",  knows: &[],                     never: &[DATABASE, TYPESETTING, WINDOW, SERVER, PICTURES, TERMINAL] },
    Wall { room: "rules",  knows: &["units"],              never: &[DATABASE, TYPESETTING, WINDOW, SERVER, PICTURES, TERMINAL] },
    Wall { room: "book",   knows: &["units", "rules"],     never: &[TYPESETTING, WINDOW, SERVER, PICTURES, TERMINAL] },
    Wall { room: "paper",  knows: &["units"],              never: &[DATABASE, TYPESETTING, WINDOW, SERVER, TERMINAL] },
    Wall { room: "card",   knows: &["units", "rules"],     never: &[DATABASE, WINDOW, SERVER, TERMINAL] },
    Wall { room: "exchange", knows: &["units", "book", "paper"], never: &[TYPESETTING, WINDOW, SERVER, TERMINAL] },
    Wall { room: "door",   knows: &["units", "rules", "book", "paper", "card", "exchange", "words"], never: &[WINDOW, SERVER, TERMINAL] },
    Wall { room: "cli",    knows: &["door", "words"],      never: &[WINDOW] },
    Wall { room: "window", knows: &["door", "words"],      never: &[SERVER, TERMINAL] },
    Wall { room: "xtask",  knows: &[],                     never: &[DATABASE, TYPESETTING, WINDOW, SERVER, PICTURES, TERMINAL] },
];

/// Fails with every dependency that reaches through a wall.
pub fn walls() -> Result<(), Failure> {
    let rooms = at_most(0, &tree(&["--workspace", "--depth", "0"])?);
    let mut breaches = Vec::new();
    for room in &rooms {
        let Some(wall) = WALLS.iter().find(|wall| wall.room == room) else {
            breaches.push(format!("{room} has no line in the table of walls; give it one"));
            continue;
        };
        let tree = tree(&["--package", room])?;
        breaches.extend(wall.breaches(&rooms, &at_most(1, &tree), &at_most(usize::MAX, &tree)));
    }
    if breaches.is_empty() {
        say(format!("{} rooms, each knows only what it may", rooms.len()));
        return Ok(());
    }
    Err(Failure::new(breaches.join("; ")))
}

impl Wall {
    fn breaches(
        &self,
        rooms: &BTreeSet<String>,
        direct: &BTreeSet<String>,
        below: &BTreeSet<String>,
    ) -> Vec<String> {
        let may_know = |other: &str| other == self.room || self.knows.contains(&other);
        let strangers = rooms.intersection(direct).filter(|other| !may_know(other));
        let forbidden = self.never.iter().filter(|library| below.contains(**library));
        let known = strangers.map(|other| format!("{} knows {other} and must not", self.room));
        known
            .chain(forbidden.map(|library| format!("{library} stands under {} and must not", self.room)))
            .collect()
    }
}

/// What `cargo tree` prints with these options: a package a line, its depth before it, tests' own dependencies left out.
fn tree(options: &[&str]) -> Result<String, Failure> {
    let mut tree = cargo();
    tree.args([
        "tree", "--locked", "--edges", "normal", "--target", "all", "--prefix", "depth", "--format", "{p}",
    ]);
    tree.args(options).read()
}

/// The names of the packages that stand in `tree` no deeper than `depth`.
fn at_most(depth: usize, tree: &str) -> BTreeSet<String> {
    let name = |line: &str| {
        let split = line.find(|letter: char| !letter.is_ascii_digit())?;
        let (number, package) = line.split_at(split);
        let deep = number.parse::<usize>().is_ok_and(|number| number > depth);
        if deep { None } else { package.split_whitespace().next().map(str::to_owned) }
    };
    tree.lines().filter_map(name).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn set(names: &[&str]) -> BTreeSet<String> {
        names.iter().map(|name| (*name).to_owned()).collect()
    }

    #[test]
    fn depth_is_read_from_the_tree() {
        let tree = "0book v0.1.0 (/a)\n1units v0.1.0\n12zerocopy v0.8.0\n";
        assert_eq!(at_most(1, tree), set(&["book", "units"]));
        assert_eq!(at_most(usize::MAX, tree).len(), 3);
    }

    #[test]
    fn a_room_that_knows_too_much_is_named() {
        let wall = Wall { room: "rules", knows: &["units"], never: &[DATABASE] };
        let rooms = set(&["rules", "units", "book"]);
        let direct = set(&["rules", "units", "book", "serde"]);
        let breaches = wall.breaches(&rooms, &direct, &set(&["rules", "units", "book", "serde", "rusqlite"]));
        assert_eq!(breaches, ["rules knows book and must not", "rusqlite stands under rules and must not"]);
        assert_eq!(wall.breaches(&rooms, &set(&["rules", "units"]), &set(&["units"])), [""; 0]);
    }
}
