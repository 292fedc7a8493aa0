//! Steps that are walked through in order, each with its name, its time and its end.

use std::time::Instant;

use crate::shell::Failure;

/// How a step ended when it did not fail.
pub enum End {
    /// It did what it says.
    Done,
    /// It could not be done on this kind of system, for this reason, and that is no fault of the project.
    Skipped(String),
}

/// One step of a longer chore.
pub struct Step {
    /// One word, as given to `--only` and `--from`.
    pub name: &'static str,
    /// What it does, for whoever watches.
    pub says: &'static str,
    /// Does it.
    pub work: fn() -> Result<End, Failure>,
}

/// Which of the steps are walked.
#[derive(Debug, PartialEq)]
pub enum Range {
    /// All of them, or all from this index on.
    From(usize),
    /// The one at this index.
    Only(usize),
    /// None: they are only listed.
    List,
}

impl Range {
    /// Reads `--only STEP`, `--from STEP`, `--list` or nothing; the error is a sentence that names the steps.
    pub fn parse(options: &[&str], steps: &[Step]) -> Result<Range, String> {
        let index = |wanted: &str| {
            let names: Vec<_> = steps.iter().map(|step| step.name).collect();
            let found = names.iter().position(|name| *name == wanted);
            found.ok_or_else(|| format!("`{wanted}` is no step; the steps are {}", names.join(", ")))
        };
        match options {
            [] => Ok(Range::From(0)),
            ["--from", name] => index(name).map(Range::From),
            ["--only", name] => index(name).map(Range::Only),
            ["--list"] => Ok(Range::List),
            _ => Err("one of `--only STEP`, `--from STEP` or `--list` may follow".into()),
        }
    }
}

/// Walks the steps in `range`, stops at the first that fails, and closes with a line that counts them.
pub fn walk(steps: &[Step], range: &Range) -> Result<(), Failure> {
    let chosen = match range {
        Range::From(first) => &steps[*first..],
        Range::Only(one) => &steps[*one..=*one],
        Range::List => {
            for step in steps {
                println!("{:<11} {}", step.name, step.says);
            }
            return Ok(());
        }
    };
    let (mut passed, mut skipped) = (0, 0);
    for step in chosen {
        match timed(step) {
            Ok(End::Done) => passed += 1,
            Ok(End::Skipped(_)) => skipped += 1,
            Err(failure) => {
                close(passed, 1, skipped);
                return Err(Failure::new(format!("step `{}` failed: {failure}", step.name)));
            }
        }
    }
    close(passed, 0, skipped);
    Ok(())
}

/// Does one piece of work outside any walk, and says why if it was skipped.
pub fn alone(work: fn() -> Result<End, Failure>) -> Result<(), Failure> {
    timed(&Step { name: "only step", says: "", work }).map(|_| ())
}

fn timed(step: &Step) -> Result<End, Failure> {
    println!("── {}: {}", step.name, step.says);
    let start = Instant::now();
    let end = (step.work)()?;
    let seconds = start.elapsed().as_secs_f32();
    match &end {
        End::Done => println!("── {} passed in {seconds:.1} s\n", step.name),
        End::Skipped(reason) => println!("── {} skipped: {reason}\n", step.name),
    }
    Ok(end)
}

fn close(passed: usize, failed: usize, skipped: usize) {
    if skipped == 0 {
        println!("{passed} passed, {failed} failed");
    } else {
        println!("{passed} passed, {failed} failed, {skipped} skipped");
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn two() -> [Step; 2] {
        let work = || Ok(End::Done);
        [Step { name: "first", says: "", work }, Step { name: "second", says: "", work }]
    }

    #[test]
    fn options_choose_the_steps() {
        assert_eq!(Range::parse(&[], &two()), Ok(Range::From(0)));
        assert_eq!(Range::parse(&["--from", "second"], &two()), Ok(Range::From(1)));
        assert_eq!(Range::parse(&["--only", "first"], &two()), Ok(Range::Only(0)));
    }

    #[test]
    fn an_unknown_step_is_answered_with_the_names() {
        let refusal = Range::parse(&["--only", "third"], &two());
        assert_eq!(refusal, Err("`third` is no step; the steps are first, second".into()));
    }

    #[test]
    fn the_first_failure_stops_the_walk() {
        let steps = [
            Step { name: "breaks", says: "", work: || Err(Failure::new("it broke")) },
            Step { name: "never", says: "", work: || unreachable!("a step after a failed one was walked") },
        ];
        let failure = walk(&steps, &Range::From(0)).map_err(|failure| failure.to_string());
        assert_eq!(failure, Err("step `breaks` failed: it broke".into()));
    }
}
