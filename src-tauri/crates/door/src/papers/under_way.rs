//! Intakes that are under way: each can be asked how far it is, and be stopped, by the ticket that its face gave it.

use std::collections::BTreeMap;
use std::ops::ControlFlow;
use std::sync::atomic::{AtomicBool, AtomicU32, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use serde::Serialize;

use super::{Intake, prepare_paper_while};
use crate::{Door, FiledView, Refusal};

/// The most tickets that are remembered at once. Those that were stopped and never came are forgotten beyond it.
const MOST: usize = 256;

/// The intakes of a face.
#[derive(Debug, Default)]
pub struct Intakes(Mutex<BTreeMap<String, Arc<UnderWay>>>);

#[derive(Debug, Default)]
struct UnderWay {
    stopped: AtomicBool,
    done: AtomicU32,
    of: AtomicU32,
}

/// How far an intake is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct IntakeProgress {
    /// The steps that are done.
    pub done: u32,
    /// The steps that there are at most.
    pub of: u32,
}

/// A file on its way in. Nothing of it is kept before [`Begun::file`].
#[derive(Debug)]
pub struct Begun<'a> {
    intakes: &'a Intakes,
    ticket: &'a str,
    under_way: Arc<UnderWay>,
}

impl Intakes {
    /// Begins an intake under a ticket, which a face makes up and uses once.
    pub fn begin<'a>(&'a self, ticket: &'a str) -> Begun<'a> {
        let under_way = Arc::clone(self.all().entry(ticket.to_owned()).or_default());
        Begun { intakes: self, ticket, under_way }
    }

    /// Stops an intake, or one that is still to come under this ticket. What was filed already stays.
    pub fn stop(&self, ticket: &str) {
        let mut all = self.all();
        if all.len() >= MOST {
            all.retain(|_, one| Arc::strong_count(one) > 1);
        }
        all.entry(ticket.to_owned()).or_default().stopped.store(true, Ordering::Relaxed);
    }

    /// How far an intake is; nothing where none is under way.
    pub fn progress(&self, ticket: &str) -> Option<IntakeProgress> {
        let under_way = self.all().get(ticket).cloned()?;
        let read = |number: &AtomicU32| number.load(Ordering::Relaxed);
        Some(IntakeProgress { done: read(&under_way.done), of: read(&under_way.of) })
    }

    fn all(&self) -> MutexGuard<'_, BTreeMap<String, Arc<UnderWay>>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Begun<'_> {
    /// Works on the bytes, as [`prepare_paper`](crate::prepare_paper) does, until it is stopped, or `stop` says so.
    pub fn prepare(&self, bytes: &[u8], stop: &(dyn Fn() -> bool + Sync)) -> Result<Intake, Refusal> {
        prepare_paper_while(bytes, &|step| {
            // Two threads tell of their steps, and the later word may be the earlier step.
            self.under_way.done.fetch_max(step.done, Ordering::Relaxed);
            self.under_way.of.store(step.of, Ordering::Relaxed);
            if self.is_stopped() || stop() { ControlFlow::Break(()) } else { ControlFlow::Continue(()) }
        })
    }

    /// Files what was prepared, unless it was stopped meanwhile.
    pub fn file(&self, door: &mut Door, book: &str, intake: &Intake) -> Result<FiledView, Refusal> {
        if self.is_stopped() { Err(Refusal::new("intake-stopped")) } else { door.file(book, intake) }
    }

    /// Whether it was stopped.
    pub fn is_stopped(&self) -> bool {
        self.under_way.stopped.load(Ordering::Relaxed)
    }
}

impl Drop for Begun<'_> {
    fn drop(&mut self) {
        self.intakes.all().remove(self.ticket);
    }
}
