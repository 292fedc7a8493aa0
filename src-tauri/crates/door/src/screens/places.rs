//! Today, Counter and Bay, and what stands on the shelf.

use rules::running::Point;
use rules::upkeep::{Catalogue, DueLine, Item, ItemRef, OwnName, Stakes, State};
use rules::vehicle::EngineKind;
use units::{BookId, Money, WriterKey};

use super::consumption::standing_alarm;
use super::due::{due_view, last_parts, measured_view, state_key, workshop};
use super::fills::{FillRow, Fills};
use super::guides::{GuideKeys, cautions};
use super::show::{engine_key, item_view, money_view, paper_view, reading_of};
use super::stock::Stock;
use super::visits::Ahead;
use crate::car::{Car, Purchase, Visit};
use crate::{
    BayView, CatalogueLine, CounterView, DatedReading, Door, EstimateView, JobView, PaperReader, PaperView,
    Refusal, ShelfView, TieLine, TodayView, VehicleLine,
};

/// To how many of the last visits a paper can be tied at the counter.
const LAST_LINES: usize = 20;

impl Door {
    pub(crate) fn shelf_view(&self) -> Result<ShelfView, Refusal> {
        let books = self.shelf.books()?;
        let mut vehicles: Vec<_> = books
            .into_iter()
            .map(|book| Ok(vehicle_line(&*self.car_of(book)?)))
            .collect::<Result<_, Refusal>>()?;
        vehicles.sort_by(|a, b| (&a.name, &a.book).cmp(&(&b.name, &b.book)));
        let catalogue = self.catalogue.items().iter();
        Ok(ShelfView {
            today: self.clock.today().to_string(),
            vehicles,
            viewer_address: self.viewer_address()?.map(|address| address.to_string()),
            fingerprint: fingerprint(self.shelf.writer().key()),
            engines: EngineKind::ALL.map(|engine| engine_key(engine).to_owned()).to_vec(),
            longest_own_name: OwnName::LONGEST,
            stakes: Stakes::ALL.map(|stakes| stakes.key().to_owned()).to_vec(),
            catalogue: catalogue.map(catalogue_line).collect(),
        })
    }

    pub(crate) fn today_view(&self, book: &str) -> Result<TodayView, Refusal> {
        let car = self.car(book)?;
        let today = self.clock.today();
        let ahead = Ahead::new(&car, self.catalogue, today);
        let (series, _) = Fills::of_car(&car).spans(&car);
        Ok(TodayView {
            vehicle: vehicle_line(&car),
            today: today.to_string(),
            estimate: estimate_view(&car, today),
            due: ahead.lines.iter().map(|line| due_view(line, &car, self.catalogue)).collect(),
            visits: ahead.visits(&GuideKeys::of(&self.guide_lines(&car)?)),
            get: ahead.get()?,
            spend: ahead.spend(),
            tray: self.shelf.tray(car.book)?.len(),
            troubles: self.open_troubles(&car)?,
            watch: standing_alarm(&series),
        })
    }

    pub(crate) fn counter_view(&self, book: &str) -> Result<CounterView, Refusal> {
        let car = self.car(book)?;
        let ahead = Ahead::new(&car, self.catalogue, self.clock.today());
        Ok(CounterView {
            vehicle: vehicle_line(&car),
            get: ahead.get()?,
            stock: Stock::new(&car).view(self.catalogue),
            tray: self.tray(car.book)?,
            lines: self.tie_lines(&car),
            reads: PaperReader::new(None).is_installed(),
        })
    }

    /// The lines to which a paper may be tied, newest first.
    fn tie_lines(&self, car: &Car) -> Vec<TieLine> {
        let visits = car.visits.iter().rev().take(LAST_LINES).map(|visit| visit_line(visit, self.catalogue));
        let bought = car.bought.iter().rev().take(LAST_LINES).map(bought_line);
        let fills = Fills::of_car(car);
        let filled = fills.rows.iter().rev().take(LAST_LINES).map(fill_line);
        let mut lines: Vec<_> = visits.chain(bought).chain(filled).collect();
        lines.sort_by(|one, other| other.day.cmp(&one.day));
        lines.truncate(LAST_LINES);
        lines
    }

    fn tray(&self, book: BookId) -> Result<Vec<PaperView>, Refusal> {
        Ok(self.shelf.tray(book)?.iter().map(paper_view).collect())
    }

    pub(crate) fn bay_view(&self, book: &str) -> Result<BayView, Refusal> {
        let car = self.car(book)?;
        let today = self.clock.today();
        let ahead = Ahead::new(&car, self.catalogue, today);
        let guides = self.guide_lines(&car)?;
        let keys = GuideKeys::of(&guides);
        let job = |line| job(line, &car, &ahead, &keys, self.catalogue);
        Ok(BayView {
            vehicle: vehicle_line(&car),
            today: today.to_string(),
            jobs: ahead.lines.iter().map(job).collect(),
            leading: car.leading(today).0,
            workshops: workshops(&car.visits),
            currency: last_cost(&car.visits).map(|cost| cost.currency.code().to_owned()).unwrap_or_default(),
            tray: self.tray(car.book)?,
            guides,
            cautions: cautions()?,
        })
    }
}

fn catalogue_line(item: &Item) -> CatalogueLine {
    CatalogueLine {
        number: item.number,
        key: item.key.clone(),
        kinds: item.kinds.iter().map(|kind| kind.key.clone()).collect(),
        findings: findings(item),
        measured: item.gauge.map(|gauge| measured_view(gauge, None)),
    }
}

/// The keys of what can be found about an item that something comes of.
fn findings(item: &Item) -> Vec<String> {
    let elsewhere = item.calls.iter().map(|(finding, _)| finding);
    item.due_when.iter().chain(elsewhere).map(|finding| finding.key().to_owned()).collect()
}

/// The short form of a key for eyes.
pub(crate) fn fingerprint(key: WriterKey) -> String {
    card::Fingerprint::from(&key).to_string()
}

/// A vehicle in a list.
pub(crate) fn vehicle_line(car: &Car) -> VehicleLine {
    VehicleLine {
        book: car.book.to_string(),
        name: car.content.name.clone(),
        make_model: car.content.make_model.clone(),
        engine: engine_key(car.vehicle.engine).to_owned(),
        unit: car.unit().symbol().to_owned(),
        reading: car.last_reading().map(|(day, shown)| DatedReading {
            day: day.to_string(),
            reading: reading_of(shown, car.unit()),
        }),
        handed_over: car.handed_over.map(|day| day.to_string()),
    }
}

fn estimate_view(car: &Car, today: units::Day) -> Option<EstimateView> {
    const DAYS_A_YEAR: i64 = 365;
    let estimate = car.pace.on(today)?;
    let shown = |travelled| reading_of(car.track.shown(travelled), car.unit());
    let dated = |point: Point| DatedReading {
        day: point.day.to_string(),
        reading: reading_of(point.shown, car.unit()),
    };
    let per_day = car.pace.per_day().map_or(0, units::Distance::millimetres);
    let per_year = units::Distance::from_millimetres(per_day.saturating_mul(DAYS_A_YEAR));
    Some(EstimateView {
        likely: shown(estimate.likely),
        low: shown(estimate.low),
        high: shown(estimate.high),
        since: dated(car.pace.last()?),
        doubtful: car.pace.doubtful().map(dated),
        per_year: per_year.round(car.unit()),
    })
}

fn visit_line(visit: &Visit, catalogue: &Catalogue) -> TieLine {
    TieLine {
        subject: visit.subject.to_string(),
        kind: "visit".to_owned(),
        day: visit.content.day.to_string(),
        items: visit.content.items.iter().map(|item| item_view(item, catalogue)).collect(),
        place: visit.content.by.workshop().to_owned(),
        cost: visit.content.cost.map(money_view),
    }
}

fn bought_line(purchase: &Purchase) -> TieLine {
    TieLine {
        subject: purchase.subject.to_string(),
        kind: "bought".to_owned(),
        day: purchase.content.day.to_string(),
        items: Vec::new(),
        place: purchase.content.shop.clone(),
        cost: purchase.content.cost.map(money_view),
    }
}

fn fill_line(row: &FillRow) -> TieLine {
    TieLine {
        subject: row.subject.to_string(),
        kind: "fill".to_owned(),
        day: row.reading.day.to_string(),
        items: Vec::new(),
        place: String::new(),
        cost: row.fuel.total.map(money_view),
    }
}

fn job(line: &DueLine, car: &Car, ahead: &Ahead<'_>, guides: &GuideKeys, catalogue: &Catalogue) -> JobView {
    JobView {
        item: item_view(&line.item, catalogue),
        state: state_key(line.state),
        workshop: workshop(&line.item, catalogue),
        cautions: caution_keys(&line.item, car, catalogue),
        parts: if line.state == State::Ahead { Vec::new() } else { last_parts(&line.item, car, catalogue) },
        minutes: car.plan.item(&line.item).and_then(|planned| planned.row).map(|row| row.minutes),
        in_next_visit: ahead.is_next(&line.item),
        guide: guides.to(&line.item),
    }
}

/// The keys of the cautions that come before the first step.
fn caution_keys(item: &ItemRef, car: &Car, catalogue: &Catalogue) -> Vec<String> {
    let cautions = catalogue.row(item).map(|row| row.cautions_for(car.vehicle.engine));
    cautions.into_iter().flatten().map(|caution| caution.key().to_owned()).collect()
}

/// Workshops named before, the most recent first.
fn workshops(visits: &[Visit]) -> Vec<String> {
    let mut names: Vec<String> = Vec::new();
    for visit in visits.iter().rev() {
        let name = visit.content.by.workshop();
        if !name.is_empty() && !names.iter().any(|known| known == name) {
            names.push(name.to_owned());
        }
    }
    names
}

fn last_cost(visits: &[Visit]) -> Option<Money> {
    let prices = |visit: &Visit| visit.content.parts.iter().find_map(|part| part.price);
    visits.iter().rev().find_map(|visit| visit.content.cost.or_else(|| prices(visit)))
}
