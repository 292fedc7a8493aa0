//! What each item cost the last times it was done.

use book::content::PartContent;
use rules::costs::{Billed, JobCost, OWN_MINUTES, PartPaid, Prices, job_costs};
use rules::upkeep::{Catalogue, ItemRef};

use super::costs::parts_paid;
use crate::car::{Car, Visit};

impl Car {
    /// The prices of everything that was done to it, worked out the first time that someone asks.
    pub(super) fn prices(&self, catalogue: &Catalogue) -> &Prices {
        self.priced.get_or_init(|| prices(self, catalogue))
    }
}

fn prices(car: &Car, catalogue: &Catalogue) -> Prices {
    let visits: Vec<_> = car.visits.iter().zip(parts_paid(car)).collect();
    let newest_first = visits.iter().rev();
    Prices::new(newest_first.flat_map(|(visit, parts)| jobs(visit, parts, catalogue)))
}

/// The jobs of a visit, and what each of them cost.
fn jobs<'a>(
    visit: &'a Visit,
    parts: &[PartPaid],
    catalogue: &Catalogue,
) -> impl Iterator<Item = (ItemRef, JobCost)> + use<'a> {
    let items = &visit.content.items;
    let of = |item: Option<&ItemRef>| -> Vec<PartPaid> {
        let served = |part: &PartContent| part.item.as_ref().filter(|item| items.contains(item)) == item;
        let parts = visit.content.parts.iter().zip(parts);
        parts.filter(|(part, _)| served(part)).map(|(_, paid)| *paid).collect()
    };
    let minutes = |item| catalogue.row(item).map_or(OWN_MINUTES, |row| u32::from(row.minutes));
    let jobs: Vec<Billed> =
        items.iter().map(|item| Billed { minutes: minutes(item), parts: of(Some(item)) }).collect();
    items.iter().cloned().zip(job_costs(visit.content.cost, &of(None), &jobs))
}
