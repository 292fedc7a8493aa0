//! What to get for a visit: what was fitted the last time, this car's own volumes, and what the guides name beside it,
//! less what is at home.

use std::collections::BTreeSet;

use book::content::PartContent;
use rules::guides::{CarGuide, Guides, OwnValues, Supply};
use rules::parts::{self, Home, Met, Part, PartNumber, Wanted};
use rules::upkeep::{Action, Catalogue, Item, ItemRef, Job, Site};
use units::{Day, Quantity};

use super::due::last_served;
use super::guides::own_values;
use super::parts::{lasted, now, paid_view, part_lines};
use super::show::{item_view, measure_key, part_view};
use super::stock::Stock;
use crate::car::Car;
use crate::{GetView, PaidView, Refusal};

/// What to get for these jobs, done at one visit.
pub(super) fn to_get(
    jobs: &[&Job],
    car: &Car,
    catalogue: &Catalogue,
    today: Day,
) -> Result<Vec<GetView>, Refusal> {
    let (stock, own) = (Stock::new(car), own_values(car));
    let mut list = List {
        car,
        catalogue,
        library: Guides::shipped()?,
        own: &own,
        stock: &stock,
        home: stock.home(),
        parts: parts::parts(&part_lines(car), &stock.bought_lines(), now(car, today)),
        named: BTreeSet::new(),
    };
    Ok(jobs.iter().flat_map(|job| list.job(job)).collect())
}

/// The list while it is written.
struct List<'a> {
    car: &'a Car,
    catalogue: &'a Catalogue,
    library: &'a Guides,
    own: &'a OwnValues,
    stock: &'a Stock<'a>,
    /// What the rows so far have left at home.
    home: Home<'a, 'a>,
    /// Everything that was fitted, for what was paid last.
    parts: Vec<Part<'a>>,
    /// The supplies that stand on the list already: one washer cleaner does for two jobs.
    named: BTreeSet<String>,
}

impl List<'_> {
    fn job(&mut self, job: &Job) -> Vec<GetView> {
        let row = self.catalogue.row(&job.item);
        let number = if let ItemRef::Catalogue(number) = job.item { Some(number) } else { None };
        let guide =
            number.and_then(|item| self.library.doing(item, &self.car.vehicle, self.own, self.catalogue));
        let car = self.car;
        // What a look had called for the last time is nothing to buy before this look was taken.
        let renewed = row.is_none_or(|row| row.action.mends()).then(|| last_served(&job.item, car)).flatten();
        let fitted: Vec<&PartContent> =
            renewed.into_iter().flat_map(|visit| visit.parts_for(&job.item)).collect();
        let mut rows: Vec<GetView> = fitted
            .iter()
            .map(|part| self.part(&job.item, part, volume(&fitted, part, guide.as_ref())))
            .collect();
        let renews = fitted.is_empty() && row.is_some_and(consumes);
        if let Some(guide) = guide.filter(|_| job.site == Site::Home) {
            let filled = row.is_some_and(|row| row.action == Action::Replace);
            rows.extend(self.supplies(&job.item, &guide, &fitted, renews, filled));
        }
        if renews && rows.iter().all(|row| Supply::of(&row.supply) != Supply::Renewed) {
            rows.insert(0, bare(&job.item, self.catalogue));
        }
        rows
    }

    /// What was fitted the last time, in the quantity that is needed now.
    fn part(&mut self, item: &ItemRef, part: &PartContent, volume: Option<Quantity>) -> GetView {
        let quantity = volume.unwrap_or(part.quantity);
        let wanted = Wanted {
            maker: &part.maker,
            number: &part.number,
            name: &part.name,
            item,
            kind: part.kind.as_deref(),
            quantity,
        };
        let visit = last_served(item, self.car);
        let shown = crate::PartView { quantity: quantity.number(), ..part_view(part, self.catalogue) };
        self.met(
            &wanted,
            GetView {
                part: Some(shown),
                same: self.stock.same(&part.number),
                warning: self.stock.warning(&part.number),
                workshop: visit.map_or("", |visit| visit.content.by.workshop()).to_owned(),
                day: visit.map(|visit| visit.content.day.to_string()),
                paid: self.paid(part),
                lasted: lasted(item, self.car),
                ..bare(item, self.catalogue)
            },
        )
    }

    /// What the guide names and no part of the last time is.
    fn supplies(
        &mut self,
        item: &ItemRef,
        guide: &CarGuide<'_>,
        fitted: &[&PartContent],
        renews: bool,
        filled: bool,
    ) -> Vec<GetView> {
        let mut rows = Vec::new();
        for key in &guide.guide.supplies {
            let wanted = match Supply::of(key) {
                Supply::Renewed => renews,
                Supply::Beside => {
                    fitted.iter().all(|part| !names(&part.name, key)) && self.named.insert(key.clone())
                }
                Supply::Household => false,
            };
            if wanted {
                rows.push(self.supply(item, key, guide.volume(key).filter(|_| filled)));
            }
        }
        rows
    }

    fn supply(&mut self, item: &ItemRef, key: &str, volume: Option<Quantity>) -> GetView {
        let row = GetView { supply: key.to_owned(), ..bare(item, self.catalogue) };
        let Some(quantity) = volume else { return row };
        self.met(&Wanted { maker: "", number: "", name: "", item, kind: None, quantity }, row)
    }

    /// The row with what is at home for it, and what is left to buy.
    fn met(&mut self, wanted: &Wanted<'_>, row: GetView) -> GetView {
        let Met { at_home, missing } = self.home.take(wanted);
        let measure = wanted.quantity.measure;
        let text = |thousandths| {
            Quantity::from_thousandths(thousandths, measure).map(Quantity::number).unwrap_or_default()
        };
        GetView {
            at_home: text(at_home),
            to_buy: text(missing),
            measure: measure_key(measure).to_owned(),
            ..row
        }
    }

    /// What was paid for a part the last time, in a shop or at a visit.
    fn paid(&self, part: &PartContent) -> Option<PaidView> {
        let number = PartNumber::new(&part.number);
        let is = |known: &&Part<'_>| match &number {
            Some(number) => known.numbers.contains(number),
            None => known.numbers.is_empty() && known.name == part.name,
        };
        self.parts.iter().find(is)?.paid.as_ref().map(paid_view)
    }
}

/// The volume of this car's sheet for the one fluid that was filled in the last time.
fn volume(fitted: &[&PartContent], part: &PartContent, guide: Option<&CarGuide<'_>>) -> Option<Quantity> {
    let volume = guide?.own_volume()?;
    let fluids = fitted.iter().filter(|other| other.quantity.measure == volume.measure).count();
    (fluids == 1 && part.quantity.measure == volume.measure).then_some(volume)
}

/// Whether a part is this supply by the last word of its key: `Washer`, and `Drain plug washer`, is a `drain-washer`.
fn names(name: &str, key: &str) -> bool {
    let thing = key.rsplit('-').next().unwrap_or(key).trim_end_matches('s');
    name.to_lowercase().contains(thing)
}

fn consumes(item: &Item) -> bool {
    matches!(item.action, Action::Replace | Action::TopUp)
}

/// Something to get of which the book knows no part.
fn bare(item: &ItemRef, catalogue: &Catalogue) -> GetView {
    GetView {
        item: item_view(item, catalogue),
        supply: String::new(),
        part: None,
        measure: String::new(),
        at_home: String::new(),
        to_buy: String::new(),
        same: Vec::new(),
        warning: None,
        workshop: String::new(),
        day: None,
        paid: None,
        lasted: None,
    }
}
