//! `cargo xtask …`: the chores of this project, one command each.
//!
//! It knows how the other rooms are built and tested, and nothing of what they do. It uses the standard library
//! only: on a fresh machine it is the first thing to be compiled, and everything else is fetched by it.

mod android;
mod java;
mod models;
mod node;
mod pictures;
mod python;
mod run;
mod setup;
mod shell;
mod steps;
mod test;
mod tidy;
mod tools;
mod walls;
mod workspace;

use std::process::ExitCode;

use shell::Failure;

const USAGE: &str = "\
usage: cargo xtask COMMAND

  run             build the window and open it with the demo, or serve it where there is no display
  test            everything that CI runs; --only STEP for one step, --from STEP to start there, --list to see them
  models          install the networks that find and read text on a photo, under target/models
  setup           install the system packages that building and testing need
  tidy            sizes, heads and forbidden words of the source files
  walls           what each room depends on, against what it may know
  pictures        take the pictures of the README anew, with the demo in the real core and page
  types           write the TypeScript types of the door anew
  android-check   type-check the window for aarch64-linux-android
";

fn main() -> ExitCode {
    let args: Vec<String> = std::env::args().skip(1).collect();
    match dispatch(&args.iter().map(String::as_str).collect::<Vec<_>>()) {
        Ok(()) => ExitCode::SUCCESS,
        Err(Problem::Usage(what)) => {
            eprint!("{what}\n\n{USAGE}");
            ExitCode::from(2)
        }
        Err(Problem::Failed(failure)) => {
            eprintln!("xtask: {failure}");
            ExitCode::FAILURE
        }
    }
}

/// Why a command came to nothing: asked for wrongly, or tried and failed.
enum Problem {
    Usage(String),
    Failed(Failure),
}

impl From<Failure> for Problem {
    fn from(failure: Failure) -> Self {
        Problem::Failed(failure)
    }
}

fn dispatch(args: &[&str]) -> Result<(), Problem> {
    match args {
        ["run"] => Ok(run::run()?),
        ["test", options @ ..] => {
            let range = steps::Range::parse(options, test::STEPS).map_err(Problem::Usage)?;
            Ok(steps::walk(test::STEPS, &range)?)
        }
        ["models"] => Ok(models::models()?),
        ["setup"] => Ok(setup::everything()?),
        ["tidy"] => Ok(tidy::tidy()?),
        ["walls"] => Ok(walls::walls()?),
        ["pictures"] => Ok(pictures::pictures()?),
        ["types"] => Ok(workspace::write_types()?),
        ["android-check"] => Ok(steps::alone(android::check)?),
        ["help" | "--help" | "-h"] => {
            print!("{USAGE}");
            Ok(())
        }
        [] => Err(Problem::Usage("a command is missing".into())),
        [other, ..] => Err(Problem::Usage(format!("`{other}` is no command, or not with these options"))),
    }
}
