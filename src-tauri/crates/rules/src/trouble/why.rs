//! Why a check stands where it stands.

use super::posterior::{Evidence, link, points};
use super::{Opening, Openings, Suspect, Trouble};

/// At most so many symptoms are named for one cause.
const MOST_SYMPTOMS: usize = 2;

/// A symptom is named when the cause brings it about at least this often.
const LEAST_LINK: f64 = 0.15;

/// A second cause is named when it makes up at least this share of what the check finds.
const LEAST_SHARE: f64 = 0.25;

/// A reason for a check in its place. Keys are those of the tables.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Why {
    /// It looks for a cause that is likely here; each row has this reason for one cause or two, the likelier
    /// first.
    LooksFor {
        /// The cause.
        cause: String,
    },
    /// A symptom that shows points at that cause.
    Symptom {
        /// The symptom.
        symptom: String,
        /// The cause.
        cause: String,
    },
    /// A code points at that cause.
    Code {
        /// The code.
        code: String,
        /// The cause.
        cause: String,
    },
    /// An item is overdue, the neglect of which leads to that cause.
    Overdue {
        /// The item's number in the catalogue.
        item: u32,
        /// The cause.
        cause: String,
    },
    /// Work was done lately that can have upset what would be that cause.
    Touched {
        /// The item's number in the catalogue.
        item: u32,
        /// How many days ago it was done.
        days: u32,
        /// The cause.
        cause: String,
    },
    /// The car has had that cause before.
    Before {
        /// The cause.
        cause: String,
    },
    /// What it needs open is open already for a check before it.
    Shares {
        /// What is open.
        opening: Opening,
    },
    /// A first look found nothing, and can have overlooked it.
    SecondLook,
}

/// Why a check stands where it stands, given what it would find there, what of its needs is open already, and
/// which look it is.
pub(super) fn of(
    trouble: &Trouble,
    evidence: &Evidence<'_>,
    finds: &[Suspect<'_>],
    shared: Openings,
    look: usize,
) -> Vec<Why> {
    let all: f64 = finds.iter().map(|suspect| suspect.chance).sum();
    let named = finds
        .iter()
        .enumerate()
        .filter(|(place, suspect)| *place == 0 || (*place == 1 && suspect.chance >= LEAST_SHARE * all));
    let mut why: Vec<_> = named.flat_map(|(_, suspect)| of_cause(trouble, evidence, suspect)).collect();
    why.extend(shared.iter().map(|opening| Why::Shares { opening }));
    why.extend((look > 1).then_some(Why::SecondLook));
    why
}

/// What speaks for one cause.
fn of_cause(trouble: &Trouble, evidence: &Evidence<'_>, suspect: &Suspect<'_>) -> Vec<Why> {
    let named = suspect.cause;
    let cause = || named.key.clone();
    let mut why = vec![Why::LooksFor { cause: cause() }];
    why.extend(symptoms(trouble, evidence, suspect));
    let codes = evidence.codes.iter().filter(|code| points(code, named) > 0.0);
    why.extend(codes.map(|code| Why::Code { code: code.code.clone(), cause: cause() }));
    let overdue = named.overdue.iter().filter(|item| evidence.is_overdue(**item));
    why.extend(overdue.map(|&item| Why::Overdue { item, cause: cause() }));
    let upset = evidence.upset(named);
    why.extend(upset.map(|(worked, _)| Why::Touched {
        item: worked.item,
        days: worked.days,
        cause: cause(),
    }));
    why.extend(evidence.had_before(named).then(|| Why::Before { cause: cause() }));
    why
}

/// The symptoms that speak for a cause, those first that few other faults show.
fn symptoms(trouble: &Trouble, evidence: &Evidence<'_>, suspect: &Suspect<'_>) -> Vec<Why> {
    let shown = evidence.asked.iter().filter(|(_, shows)| *shows);
    let mut speaking: Vec<_> = shown
        .filter_map(|&(place, _)| Some((trouble.symptoms.get(place)?, link(&suspect.cause.shows, place))))
        .filter(|(_, chance)| *chance >= LEAST_LINK)
        .map(|(symptom, chance)| (&symptom.key, chance / symptom.anyway))
        .collect();
    speaking.sort_by(|a, b| b.1.total_cmp(&a.1));
    let why = |(symptom, _): (&String, f64)| Why::Symptom {
        symptom: symptom.clone(),
        cause: suspect.cause.key.clone(),
    };
    speaking.into_iter().take(MOST_SYMPTOMS).map(why).collect()
}
