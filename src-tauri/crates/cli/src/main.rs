//! # wellkept: the terminal, and the local server
//!
//! Hands requests to the door and puts its answers into words, or into JSON with `--json`. It must never hold a
//! rule or a line of SQL. Exit status: 0 done, 1 refused with one sentence on stderr, 2 wrong usage.

mod args;
mod commands;
mod running;
mod say;
mod say_running;
mod serve;

use std::process::ExitCode;

use clap::Parser;
use door::{Clock, Door};
use words::Words;

use args::{Args, Command};
use commands::Terminal;

fn main() -> ExitCode {
    let args = Args::parse();
    let words = Words::load(words::ENGLISH);
    match run(&args, &words) {
        Ok(code) => code,
        Err(refusal) => {
            eprintln!("{}", say::harmless_lines(&say::refusal(&words, &refusal)));
            if refusal.can_keep {
                eprintln!("{}", words.say("cli-keep-hint", &[]));
            }
            ExitCode::from(1)
        }
    }
}

fn run(args: &Args, words: &Words) -> Result<ExitCode, door::Refusal> {
    // A look at a number or a code needs no shelf, and must work on a machine that has none. A card needs one: it is told
    // whether this very device signed it.
    let clock = args.today.map_or(Clock::Device, Clock::Fixed);
    if let Command::Vin { vin } = &args.command {
        return commands::vin(words, args.json, vin);
    }
    if let Command::Code { text } = &args.command {
        return match shelf_of_codes(args, clock)? {
            Some(door) => Terminal { door, words, args }.run(),
            None => commands::code(words, args.json, text),
        };
    }
    if let Command::Read { file, models } = &args.command {
        return commands::read_receipt(words, args, file, models.as_deref());
    }
    let door = Door::open(&args.shelf(), clock)?;
    if let Command::Serve { port } = args.command {
        return serve::serve(door, port, words);
    }
    Terminal { door, words, args }.run()
}

/// The shelf on which the life of a code may stand. Where no vehicle is named, none is laid for it, and one that the window
/// has open is left alone.
fn shelf_of_codes(args: &Args, clock: Clock) -> Result<Option<Door>, door::Refusal> {
    let (folder, named) = (args.shelf(), args.vehicle.is_some());
    let is_laid = std::fs::read_dir(&folder).is_ok_and(|mut files| files.next().is_some());
    if !named && !is_laid {
        return Ok(None);
    }
    match Door::open(&folder, clock) {
        Err(refusal) if !named && refusal.code == "shelf-in-use" => Ok(None),
        opened => opened.map(Some),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_shelf_is_laid_to_explain_a_code() {
        let folder = std::env::temp_dir().join(format!("wellkept-no-shelf-{}", std::process::id()));
        let args = Args::parse_from(["wellkept", "code", "P0171", "--shelf", &folder.to_string_lossy()]);
        assert!(shelf_of_codes(&args, Clock::Device).is_ok_and(|door| door.is_none()));
        assert!(!folder.exists());
    }
}
