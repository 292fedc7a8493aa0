//! How far the taking in of a paper is, and stopping it between two steps.

use std::ops::ControlFlow;
use std::sync::atomic::{AtomicU32, Ordering};

use crate::PaperError;

/// How far a file is on its way to what is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Step {
    /// The steps that are done.
    pub done: u32,
    /// The steps that there are at most; a photo without a paper on it takes fewer.
    pub of: u32,
}

/// Told before the first step and after each one how far a file is; breaks off to stop. Threads call it at once.
pub type GoOn<'a> = dyn Fn(Step) -> ControlFlow<()> + Sync + 'a;

/// The steps of one file.
pub(crate) struct Steps<'a> {
    go_on: &'a GoOn<'a>,
    done: AtomicU32,
    of: u32,
}

impl<'a> Steps<'a> {
    /// The steps of a file, of which there are so many; refused where it is to stop before the first.
    pub(crate) fn begin(go_on: &'a GoOn<'a>, of: u32) -> Result<Steps<'a>, PaperError> {
        let steps = Steps { go_on, done: AtomicU32::new(0), of };
        steps.ask(0)?;
        Ok(steps)
    }

    /// Steps that nobody watches.
    pub(crate) fn unwatched() -> Steps<'static> {
        Steps { go_on: &|_| ControlFlow::Continue(()), done: AtomicU32::new(0), of: 0 }
    }

    /// Another step is done.
    pub(crate) fn pass(&self) -> Result<(), PaperError> {
        self.ask(self.done.fetch_add(1, Ordering::Relaxed) + 1)
    }

    fn ask(&self, done: u32) -> Result<(), PaperError> {
        match (self.go_on)(Step { done, of: self.of }) {
            ControlFlow::Continue(()) => Ok(()),
            ControlFlow::Break(()) => Err(PaperError::IntakeStopped),
        }
    }
}
