//! The checks in the order that costs least, each with why it stands there.

use super::order::{Best, Look, Search};
use super::posterior::{Evidence, link};
use super::why::{self, Why};
use super::{Answer, Check, Complaint, Opening, Openings, Suspect, Suspects, Tool, Trouble};

/// A check is listed when it finds the fault with at least this chance.
const LEAST_GAIN: f64 = 0.005;

/// At most so many checks are listed: those with the best chance for their cost.
const MOST_ROWS: usize = 24;

/// A check is made at most so often: one more look after a first that found nothing.
const MOST_LOOKS: usize = 2;

/// Causes below this chance count as something that the table does not hold.
const LEAST_CHANCE: f64 = 5e-4;

/// The checks to make, first to last. Costs are in minutes of the owner's time.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan<'a> {
    /// The checks. None where nothing was told of which the tables know a cause.
    pub rows: Vec<Row<'a>>,
    /// Checks that would stand among them, but must not be made as things are: see [`Trouble::stop_first`]. In the order
    /// of the table.
    pub held: Vec<&'a Check>,
    /// What this order costs on the average, until the fault is found or the checks are used up.
    pub cost: f64,
    /// What no order of these checks can undercut: the same as `cost` where `exact`.
    pub at_least: f64,
    /// Whether no order of these checks costs less.
    pub exact: bool,
    /// What the plain order by chance over cost would cost, which takes each check by itself.
    pub by_ratio: f64,
    /// The chance, 0 to 1, that none of these checks finds the fault: then it is a workshop's.
    pub left: f64,
}

/// A check in its place.
#[derive(Debug, Clone, PartialEq)]
pub struct Row<'a> {
    /// The check.
    pub check: &'a Check,
    /// The chance, 0 to 1, that it finds the fault when nothing before it did.
    pub chance: f64,
    /// What it costs here, in minutes: itself, its money, what it newly opens, and tools that the owner
    /// lacks.
    pub cost: f64,
    /// What is newly opened for it.
    pub opens: Vec<Opening>,
    /// The tools it needs that the owner lacks, by their keys.
    pub lacks: Vec<&'a str>,
    /// What it would find here, the likeliest first, with the chances that make up `chance`.
    pub finds: Vec<Suspect<'a>>,
    /// Which look it is: 1, or 2 when a first one found nothing.
    pub look: usize,
    /// Why it stands here; never empty.
    pub why: Vec<Why>,
}

impl Trouble {
    /// The checks to make, in the order that costs least on the average.
    ///
    /// After each answer, ask again with the answer in the complaint. A check that was skipped or that found
    /// something does not come again.
    pub fn plan(&self, complaint: &Complaint<'_>) -> Plan<'_> {
        let suspects = likely(self.suspects(complaint));
        let (checks, held) = self.candidates(complaint, &suspects);
        let search = self.search(complaint, &suspects, &checks);
        let best = search.best();
        let by_ratio = search.cost(&search.by_ratio());
        let evidence = Evidence::of(self, complaint);
        let mut writer =
            Writer { trouble: self, complaint, evidence, left: suspects, open: Openings::default() };
        let rows: Vec<_> = best.order.iter().map(|&place| writer.row(checks[place])).collect();
        let left = writer.nothing();
        let Best { cost, at_least, exact, .. } = best;
        Plan { rows, held, cost, at_least, exact, by_ratio, left }
    }

    /// The search that a complaint comes to, and the places of its checks in the table.
    #[cfg(test)]
    pub(super) fn searched(&self, complaint: &Complaint<'_>) -> (Search, Vec<usize>) {
        let suspects = likely(self.suspects(complaint));
        let (checks, _) = self.candidates(complaint, &suspects);
        (self.search(complaint, &suspects, &checks), checks)
    }

    /// The places of the checks that are worth listing, and the checks that would be, but are forbidden as things are.
    fn candidates(&self, complaint: &Complaint<'_>, suspects: &Suspects<'_>) -> (Vec<usize>, Vec<&Check>) {
        let forbidden = self.forbidden(complaint);
        let (mut found, mut held) = (Vec::new(), Vec::new());
        let to_make = self.checks.iter().enumerate().filter(|(_, check)| may_be_made(complaint, check));
        for (place, check) in to_make {
            let gain = gain(suspects, place);
            if gain < LEAST_GAIN {
                continue;
            }
            if forbidden.allows(check) {
                found.push((place, gain, self.alone(complaint, check)));
            } else {
                held.push(check);
            }
        }
        found.sort_by(|a, b| (b.1 * a.2).total_cmp(&(a.1 * b.2)));
        found.truncate(MOST_ROWS);
        (found.into_iter().map(|(place, _, _)| place).collect(), held)
    }

    /// What is searched for, and with what.
    fn search(&self, complaint: &Complaint<'_>, suspects: &Suspects<'_>, checks: &[usize]) -> Search {
        let sought: Vec<_> = suspects
            .causes
            .iter()
            .filter(|suspect| checks.iter().any(|&check| link(&suspect.cause.found_by, check) > 0.0))
            .collect();
        let look = |&place: &usize| Look {
            cost: self.itself(complaint, &self.checks[place]),
            opens: self.checks[place].opens.0,
            finds: sought.iter().map(|suspect| link(&suspect.cause.found_by, place)).collect(),
        };
        Search {
            causes: sought.iter().map(|suspect| suspect.chance).collect(),
            openings: self.openings.clone(),
            looks: checks.iter().map(look).collect(),
        }
    }

    /// What a check costs by itself: its minutes, its money, and the tools that the owner lacks.
    fn itself(&self, complaint: &Complaint<'_>, check: &Check) -> f64 {
        let lacking = self.lacking(complaint, check).into_iter().map(|tool| f64::from(tool.minutes));
        f64::from(check.minutes) + f64::from(check.money) + lacking.sum::<f64>()
    }

    /// What a check costs with everything it opens.
    fn alone(&self, complaint: &Complaint<'_>, check: &Check) -> f64 {
        self.itself(complaint, check) + self.opening(check.opens)
    }

    /// What it costs to open all of these, in minutes.
    fn opening(&self, openings: Openings) -> f64 {
        let places = (0..self.openings.len()).filter(|place| openings.0 >> place & 1 == 1);
        places.map(|place| self.openings[place]).sum()
    }

    /// The tools of a check that the owner lacks.
    fn lacking(&self, complaint: &Complaint<'_>, check: &Check) -> Vec<&Tool> {
        let lacks = |key: &String| self.tools.iter().find(|tool| tool.key == *key && !complaint.has(tool));
        check.tools.iter().filter_map(lacks).collect()
    }
}

/// The suspects without those that are hardly likely.
fn likely(mut suspects: Suspects<'_>) -> Suspects<'_> {
    let hardly = suspects.causes.partition_point(|suspect| suspect.chance >= LEAST_CHANCE);
    let dropped = suspects.causes.drain(hardly..).map(|suspect| suspect.chance);
    suspects.other += dropped.sum::<f64>();
    suspects
}

/// Whether a check is still to be made: not when it was skipped, found something, or was made often enough.
fn may_be_made(complaint: &Complaint<'_>, check: &Check) -> bool {
    let done_with = |answer: Answer| answer != Answer::NotFound;
    let answers = complaint.answers.iter().filter(|answered| answered.check == check.key);
    !answers.clone().any(|answered| done_with(answered.answer)) && answers.count() < MOST_LOOKS
}

/// The chance that a check finds the fault when it is made first.
fn gain(suspects: &Suspects<'_>, check: usize) -> f64 {
    suspects.causes.iter().map(|suspect| suspect.chance * link(&suspect.cause.found_by, check)).sum()
}

/// Writes down the rows one after the other.
struct Writer<'t, 'c> {
    trouble: &'t Trouble,
    complaint: &'c Complaint<'c>,
    evidence: Evidence<'c>,
    /// How likely each cause is at fault and was not found by the rows so far.
    left: Suspects<'t>,
    /// What the rows so far opened.
    open: Openings,
}

impl<'t> Writer<'t, '_> {
    /// The chance that the rows so far find nothing.
    fn nothing(&self) -> f64 {
        self.left.other + self.left.causes.iter().map(|suspect| suspect.chance).sum::<f64>()
    }

    fn row(&mut self, place: usize) -> Row<'t> {
        let (trouble, check) = (self.trouble, &self.trouble.checks[place]);
        let newly = Openings(check.opens.0 & !self.open.0);
        let shared = Openings(check.opens.0 & self.open.0);
        let finds = self.finds(place);
        let look = self.complaint.looks(&check.key) + 1;
        let row = Row {
            chance: finds.iter().map(|suspect| suspect.chance).sum(),
            cost: trouble.itself(self.complaint, check) + trouble.opening(newly),
            opens: newly.iter().collect(),
            lacks: trouble.lacking(self.complaint, check).into_iter().map(|tool| tool.key.as_str()).collect(),
            why: why::of(trouble, &self.evidence, &finds, shared, look),
            finds,
            look,
            check,
        };
        self.open.0 |= check.opens.0;
        for suspect in &mut self.left.causes {
            suspect.chance *= 1.0 - link(&suspect.cause.found_by, place);
        }
        row
    }

    /// What a check would find now, the likeliest first.
    fn finds(&self, place: usize) -> Vec<Suspect<'t>> {
        let nothing = self.nothing();
        let found = |suspect: &Suspect<'t>| {
            let chance = suspect.chance * link(&suspect.cause.found_by, place) / nothing;
            (chance > 0.0).then_some(Suspect { chance, ..*suspect })
        };
        let mut finds: Vec<_> = self.left.causes.iter().filter_map(found).collect();
        finds.sort_by(|a, b| b.chance.total_cmp(&a.chance));
        finds
    }
}

#[cfg(test)]
#[path = "plan_tests.rs"]
mod tests;
