//! Going through a guide, one tick after the other.
#![allow(clippy::unwrap_used)]

use super::*;
use crate::guides::{Guides, OwnValues};
use crate::testing::car;
use crate::upkeep::Catalogue;

fn all_read(guide: &CarGuide<'_>) -> Progress {
    let keys = guide.cautions.iter().map(|caution| caution.key.clone());
    Progress::kept(keys, [], [])
}

#[test]
fn no_step_comes_before_the_last_caution_is_acknowledged() {
    let own = OwnValues::default();
    let guides = Guides::shipped().unwrap();
    for guide in guides.for_car(&car(), &own, Catalogue::shipped().unwrap()) {
        let mut progress = Progress::default();
        for (read, caution) in guide.cautions.iter().enumerate() {
            let Stage::Cautions(open) = progress.stage(&guide) else { panic!("{}", guide.guide.key) };
            assert_eq!(open, guide.cautions[read..], "{}", guide.guide.key);
            progress.acknowledge(&caution.key);
        }
        assert_eq!(progress.stage(&guide), Stage::Step(guide.steps[0].clone()));
        assert_eq!(progress, all_read(&guide));
    }
}

#[test]
fn steps_come_in_their_order_then_the_looks_and_then_it_is_done() {
    let own = OwnValues::default();
    let guides = Guides::shipped().unwrap();
    let guide = guides.opened("wheel-torque", &car(), &own, Catalogue::shipped().unwrap()).unwrap();
    let mut progress = all_read(&guide);
    for (ticked, step) in guide.steps.iter().enumerate() {
        assert_eq!(progress.stage(&guide), Stage::Step(step.clone()));
        assert_eq!(progress.count(&guide), (ticked, guide.steps.len()));
        progress.tick_step(&step.step.key, true);
    }
    for look in &guide.guide.look {
        assert_eq!(progress.stage(&guide), Stage::Look(look));
        progress.tick_look(look, true);
    }
    assert_eq!(progress.stage(&guide), Stage::Done);
    progress.tick_look(&guide.guide.look[0], false);
    assert_eq!(progress.stage(&guide), Stage::Look(&guide.guide.look[0]));
    progress.tick_step(&guide.steps[1].step.key, false);
    assert_eq!(progress.stage(&guide), Stage::Step(guide.steps[1].clone()));
}

#[test]
fn a_key_that_the_guide_does_not_have_counts_for_nothing() {
    let own = OwnValues::default();
    let guides = Guides::shipped().unwrap();
    let guide = guides.opened("wipers", &car(), &own, Catalogue::shipped().unwrap()).unwrap();
    let mut progress = all_read(&guide);
    progress.tick_step("a-step-of-a-later-version", true);
    assert_eq!(progress.count(&guide).0, 0);
    assert_eq!(progress.stage(&guide), Stage::Step(guide.steps[0].clone()));
}
