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
            eprintln!("{}", say::refusal(&words, &refusal));
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
    if let Command::Vin { vin } = &args.command {
        return commands::vin(words, args.json, vin);
    }
    if let Command::Code { text } = &args.command {
        return commands::code(words, args.json, text);
    }
    if let Command::Read { file, models } = &args.command {
        return commands::read_receipt(words, args, file, models.as_deref());
    }
    let clock = args.today.map_or(Clock::Device, Clock::Fixed);
    let door = Door::open(&args.shelf(), clock)?;
    if let Command::Serve { port } = args.command {
        return serve::serve(door, port, words);
    }
    Terminal { door, words, args }.run()
}
