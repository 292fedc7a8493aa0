//! How likely each cause is, given what is known of a trouble.

use super::weights::{
    BEFORE, CODE_ANYWAY, FALSE_ALARM, OTHER_CODE, OTHER_SHARE, OTHER_SHOWS, OVERDUE, RENEWED, RENEWED_DAYS,
    touched,
};
use super::{Answer, Cause, CodeSign, Complaint, Mend, Trouble, Worked};

/// A cause and how likely it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Suspect<'a> {
    /// The cause.
    pub cause: &'a Cause,
    /// The chance that it is the one, 0 to 1.
    pub chance: f64,
}

/// The causes that a car can have, the likeliest first.
///
/// The chances of the causes and of [`Suspects::other`] sum to 1.
#[derive(Debug, Clone, PartialEq)]
pub struct Suspects<'a> {
    /// Every cause that this car can have; of no chance is one that brings about nothing of what was told.
    pub causes: Vec<Suspect<'a>>,
    /// The chance that it is something that the table does not hold, 0 to 1.
    pub other: f64,
}

impl Suspects<'_> {
    /// The chance of the cause with this key; 0 for one that the car cannot have.
    pub fn chance(&self, key: &str) -> f64 {
        self.causes.iter().find(|suspect| suspect.cause.key == key).map_or(0.0, |suspect| suspect.chance)
    }
}

impl Trouble {
    /// How likely each cause is; see [the model](super).
    pub fn suspects(&self, complaint: &Complaint<'_>) -> Suspects<'_> {
        let evidence = Evidence::of(self, complaint);
        let prior: Vec<_> = self
            .causes
            .iter()
            .filter_map(|cause| Some((cause, cause.rate(complaint.vehicle)? * evidence.growth(cause))))
            .collect();
        let all: f64 = prior.iter().map(|(_, weight)| weight).sum();
        let other = all * OTHER_SHARE / (1.0 - OTHER_SHARE) * evidence.on_something_else();
        let weighed = |(cause, weight): (_, f64)| Suspect { cause, chance: weight * evidence.on(cause) };
        let mut causes: Vec<_> = prior.into_iter().map(weighed).collect();
        let sum = other + causes.iter().map(|suspect| suspect.chance).sum::<f64>();
        for suspect in &mut causes {
            suspect.chance /= sum;
        }
        causes.sort_by(|a, b| b.chance.total_cmp(&a.chance));
        Suspects { causes, other: other / sum }
    }
}

/// What speaks for and against causes, with keys resolved and what this car cannot have left out.
pub(super) struct Evidence<'a> {
    trouble: &'a Trouble,
    complaint: &'a Complaint<'a>,
    /// Places of the symptoms that were asked about, and whether they show; each once.
    pub asked: Vec<(usize, bool)>,
    /// Codes that point at a cause of the table.
    pub codes: Vec<&'a CodeSign>,
    /// Places of the checks that said something, and whether they found anything.
    answers: Vec<(usize, bool)>,
    bands: (f64, f64),
}

impl<'a> Evidence<'a> {
    pub fn of(trouble: &'a Trouble, complaint: &'a Complaint<'a>) -> Evidence<'a> {
        let asked = trouble.symptoms.iter().enumerate().filter_map(|(place, symptom)| {
            let among = |keys: &[String]| keys.contains(&symptom.key);
            let shows = among(&complaint.shown);
            ((shows || among(&complaint.absent)) && symptom.is_for(complaint.vehicle))
                .then_some((place, shows))
        });
        let known = |code: &&CodeSign| code.points.iter().any(|(key, _)| trouble.cause(key).is_some());
        let said = complaint.answers.iter().filter_map(|answered| {
            let place = trouble.checks.iter().position(|check| check.key == answered.check)?;
            (answered.answer != Answer::Skipped).then_some((place, answered.answer == Answer::Found))
        });
        Evidence {
            trouble,
            complaint,
            asked: asked.collect(),
            codes: complaint.codes.iter().filter(known).collect(),
            answers: said.collect(),
            bands: trouble.bands.times(complaint.age(), complaint.distance),
        }
    }

    /// By how much the age and the distance of the car multiply the rate of a cause.
    fn growth(&self, cause: &Cause) -> f64 {
        cause.growth.times(self.bands.0, self.bands.1)
    }

    /// By how much everything that is known multiplies the weight of a cause.
    fn on(&self, cause: &Cause) -> f64 {
        let absent = self.asked.iter().filter(|(_, shows)| !shows);
        let absent = absent.map(|&(place, _)| 1.0 - or(self.anyway(place), link(&cause.shows, place)));
        let answers = self.answers.iter().map(|&(check, found)| answer(cause, check, found));
        self.book(cause) * self.told(cause) * absent.chain(answers).product::<f64>()
    }

    /// How likely the symptoms that show and the codes are all there when this is the cause, and not every one of
    /// them would be there anyway.
    fn told(&self, cause: &Cause) -> f64 {
        let symptoms = self.asked.iter().filter(|(_, shows)| *shows);
        let symptoms = symptoms.map(|&(place, _)| (self.anyway(place), link(&cause.shows, place)));
        let codes = self.codes.iter().map(|code| (CODE_ANYWAY, points(code, cause)));
        let (there, anyway) = symptoms.chain(codes).fold((1.0, 1.0), |(there, all), (anyway, brings)| {
            (there * or(anyway, brings), all * anyway * (1.0 - brings))
        });
        there - anyway
    }

    /// How likely a symptom shows whatever the cause.
    fn anyway(&self, place: usize) -> f64 {
        self.trouble.symptoms.get(place).map_or(0.0, |symptom| symptom.anyway)
    }

    /// The same for something that the table does not hold.
    fn on_something_else(&self) -> f64 {
        let symptoms =
            self.asked.iter().map(|&(_, shows)| if shows { OTHER_SHOWS } else { 1.0 - OTHER_SHOWS });
        let codes = self.codes.iter().map(|_| OTHER_CODE);
        let answers = self.answers.iter().map(|&(_, found)| if found { FALSE_ALARM } else { 1.0 });
        symptoms.chain(codes).chain(answers).product()
    }

    /// What the book says: overdue, worked on, and had before.
    fn book(&self, cause: &Cause) -> f64 {
        let neglected = cause.overdue.iter().any(|item| self.is_overdue(*item));
        let overdue = if neglected { OVERDUE } else { 1.0 };
        let before = if self.had_before(cause) { BEFORE } else { 1.0 };
        overdue * before * self.worked(cause)
    }

    /// Whether a catalogue item is overdue.
    pub fn is_overdue(&self, item: u32) -> bool {
        self.complaint.overdue.contains(&item)
    }

    /// Whether this car has had this cause before.
    pub fn had_before(&self, cause: &Cause) -> bool {
        self.complaint.before.contains(&cause.key)
    }

    /// The work that can have upset what would then be the cause, the latest of it.
    pub fn upset(&self, cause: &Cause) -> Option<(Worked, f64)> {
        let worked = self.complaint.worked.iter().filter(|worked| cause.touched.contains(&worked.item));
        let latest = worked.min_by_key(|worked| worked.days)?;
        Some((*latest, touched(latest.days)?))
    }

    /// By how much what was done to the car raises or lowers a cause.
    fn worked(&self, cause: &Cause) -> f64 {
        let Mend::Items(items) = &cause.mend else {
            return self.upset(cause).map_or(1.0, |(_, times)| times);
        };
        let renewed = |worked: &&Worked| items.contains(&worked.item) && worked.days <= RENEWED_DAYS;
        match self.upset(cause) {
            Some((_, times)) => times,
            None if self.complaint.worked.iter().any(|worked| renewed(&worked)) => RENEWED,
            None => 1.0,
        }
    }
}

/// How likely one of two things that do not hang together happens: the noisy OR.
pub(super) fn or(one: f64, other: f64) -> f64 {
    // Written so that nothing added to one is one to the last digit.
    one * (1.0 - other) + other
}

/// The chance with which a code points at a cause; 0 when it does not.
pub(super) fn points(code: &CodeSign, cause: &Cause) -> f64 {
    let points = code.points.iter().filter(|(key, _)| *key == cause.key);
    points.map(|(_, chance)| chance.clamp(0.0, 1.0)).fold(0.0, f64::max)
}

/// The chance of a link; 0 where there is none.
pub(super) fn link(links: &[(usize, f64)], place: usize) -> f64 {
    links.iter().find(|(other, _)| *other == place).map_or(0.0, |&(_, chance)| chance)
}

/// How likely a check says what it said when this is the cause. One that found nothing says nothing against
/// causes that it does not look for: false alarms are rare enough to leave that out.
fn answer(cause: &Cause, check: usize, found: bool) -> f64 {
    let finds = link(&cause.found_by, check);
    if found { finds.max(FALSE_ALARM) } else { 1.0 - finds }
}

#[cfg(test)]
#[path = "posterior_tests.rs"]
mod tests;
