//! Where somebody stands in a guide: what he has acknowledged, and what he has ticked.

use std::collections::BTreeSet;

use super::{CarGuide, CarStep, Caution};

/// What was acknowledged and ticked of one guide, by the keys of its cautions, steps and looks.
///
/// A key that the guide no longer has, or not for this car, counts for nothing.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Progress {
    acknowledged: BTreeSet<String>,
    steps: BTreeSet<String>,
    looks: BTreeSet<String>,
}

/// What comes next in a guide.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Stage<'a> {
    /// Cautions that are not yet acknowledged. As long as there is one no step counts as next.
    Cautions(Vec<&'a Caution>),
    /// The first step that is not ticked.
    Step(CarStep<'a>),
    /// What is still to be looked at before closing.
    Look(&'a str),
    /// Everything is ticked.
    Done,
}

impl Progress {
    /// What was kept, by keys.
    pub fn kept(
        acknowledged: impl IntoIterator<Item = String>,
        steps: impl IntoIterator<Item = String>,
        looks: impl IntoIterator<Item = String>,
    ) -> Progress {
        Progress {
            acknowledged: acknowledged.into_iter().collect(),
            steps: steps.into_iter().collect(),
            looks: looks.into_iter().collect(),
        }
    }

    /// Acknowledges a caution.
    pub fn acknowledge(&mut self, caution: &str) {
        self.acknowledged.insert(caution.to_owned());
    }

    /// Ticks a step, or takes the tick back.
    pub fn tick_step(&mut self, step: &str, done: bool) {
        set(&mut self.steps, step, done);
    }

    /// Ticks something looked at before closing, or takes the tick back.
    pub fn tick_look(&mut self, look: &str, done: bool) {
        set(&mut self.looks, look, done);
    }

    /// Whether this step is ticked.
    pub fn has_step(&self, step: &str) -> bool {
        self.steps.contains(step)
    }

    /// Whether this was looked at.
    pub fn has_look(&self, look: &str) -> bool {
        self.looks.contains(look)
    }

    /// What comes next: the cautions, then the steps, then what to look at.
    pub fn stage<'a>(&self, guide: &CarGuide<'a>) -> Stage<'a> {
        let open: Vec<_> = guide
            .cautions
            .iter()
            .copied()
            .filter(|caution| !self.acknowledged.contains(&caution.key))
            .collect();
        if !open.is_empty() {
            return Stage::Cautions(open);
        }
        if let Some(step) = guide.steps.iter().find(|step| !self.has_step(&step.step.key)) {
            return Stage::Step(step.clone());
        }
        let look = guide.guide.look.iter().find(|look| !self.has_look(look));
        look.map_or(Stage::Done, |look| Stage::Look(look))
    }

    /// How many of this guide's steps are ticked, and how many there are.
    pub fn count(&self, guide: &CarGuide<'_>) -> (usize, usize) {
        let ticked = guide.steps.iter().filter(|step| self.has_step(&step.step.key)).count();
        (ticked, guide.steps.len())
    }
}

fn set(keys: &mut BTreeSet<String>, key: &str, there: bool) {
    if there {
        keys.insert(key.to_owned());
    } else {
        keys.remove(key);
    }
}

#[cfg(test)]
#[path = "progress_tests.rs"]
mod tests;
