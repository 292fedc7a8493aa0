//! Something is wrong with the car: what it may be, what to look at first and why, and when to stop first.
//!
//! - [`Trouble`] is what the trade knows: the tables `data/symptoms.toml`, `data/causes.toml` and
//!   `data/checks.toml`, read once.
//! - [`Complaint`] is what is known of one trouble: symptoms, codes, what is overdue, what was worked on,
//!   answers so far.
//! - [`Trouble::suspects`] gives the causes with how likely each is, [`Trouble::plan`] the checks in the
//!   order that costs least, each with why it stands there, and [`Trouble::stop_first`] what must be read
//!   before any list.
//! - [`codes`] explains trouble codes.
//!
//! Nothing here is a diagnosis. Every number of the tables is common practice, and the owner's handbook,
//! local rules and whoever is licensed for the work come first.
//!
//! # The model: one cause, and a noisy OR for each symptom
//!
//! One cause is at fault, out of those in the table that this car can have and one more, 'something else'.
//! For each, with `p` the chances of the tables:
//!
//! ```text
//! weight(cause) = rate(engine) * band(age, distance) * overdue * touched or renewed * before
//!   * (  product over symptoms that show of   1 - (1 - anyway(symptom)) * (1 - shows(cause, symptom))
//!        * product over codes of              1 - (1 - anyway(code)) * (1 - points(code, cause))
//!      - product over symptoms that show of   anyway(symptom) * (1 - shows(cause, symptom))
//!        * product over codes of              anyway(code) * (1 - points(code, cause))  )
//!   * product over symptoms asked, absent of      (1 - anyway(symptom)) * (1 - shows(cause, symptom))
//!   * product over answers of
//!       found:     the chance that the check finds this cause, or of a false alarm where that is higher
//!       not found: 1 - the chance that the check finds this cause
//! chance(cause) = weight(cause) / sum of all weights
//! ```
//!
//! What is taken away is the chance that all that was told is there anyway, and nothing of it comes of the cause: an
//! owner who asks does so because of something, and what brings about nothing of it is not what he looks for, however
//! often it turns up. Where nothing was told, or nothing of which the tables know a cause, 'something else' is certain.
//!
//! A symptom that nobody was asked about, and a check that could not be made, say nothing. Each symptom is a
//! noisy OR (Pearl, Probabilistic Reasoning in Intelligent Systems, 1988; its leak is `anyway`) and together
//! they are a naive Bayes model over single causes (Heckerman, Breese and Rommelse 1995 troubleshoot under
//! the same single fault). This was chosen because a mechanic can judge each number by itself ('how likely
//! does this alone bring that about?'), because no table needs a row for a pair, and because the order of
//! checks below is exact only under a single fault. Its price: two symptoms that come of the same thing count
//! as two witnesses, so the chances are bolder than they should be, and two faults at once are found one
//! after the other.
//!
//! # The order: least expected cost until the fault is found
//!
//! The cost of a check is its minutes, its money put in minutes, the tools that the owner lacks, and whatever
//! must be opened for it that no check before it opened. With `S` the checks before it,
//!
//! ```text
//! expected cost = sum over checks of cost(check, given what S opened) * P(S found nothing)
//! P(S found nothing) = sum over causes of chance(cause)
//!                        * product over S of (1 - its chance to find the cause)
//! ```
//!
//! Where checks are independent and nothing is shared, the best order is by chance over cost (Kadane and
//! Simon, Annals of Statistics 5(2), 1977; Heckerman, Breese and Rommelse, Communications of the ACM 38(3),
//! 1995). With shared openings, and with checks that find the same causes, it is not. `P(S found nothing)`
//! depends only on the set `S`, so the best order is found exactly over subsets (Held and Karp's dynamic
//! programme, 1962) for up to [`order::EXACT`] checks, and beyond that built block by block and improved,
//! with a bound below which no order can go. See [`order`].
//!
//! A check that found nothing may have overlooked the fault: it stands in the list once more with its chance
//! lowered by just that, which is the published rule for overlooked faults (Chew, Annals of Mathematical
//! Statistics 38(2), 1967): look next where `p * a^m * (1 - a) / c` is largest. See [`order::overlooked`].

pub mod codes;
mod complaint;
mod kinds;
mod openings;
pub mod order;
mod plan;
mod posterior;
mod stop;
mod table;
mod tables;
mod weights;
mod why;

pub use complaint::{Answer, Answered, CodeSign, Complaint, Worked};
pub use kinds::{About, Cause, Check, Growth, Mend, Rates, Symptom, Tool};
pub use openings::{Opening, Openings};
pub use plan::{Plan, Row};
pub use posterior::{Suspect, Suspects};
pub use stop::{Danger, Sign, Stop, Urgency};
pub use table::Trouble;
pub use why::Why;

#[cfg(test)]
mod case_notes;
#[cfg(test)]
mod content_tests;
#[cfg(test)]
mod drawn_cases;
#[cfg(test)]
mod trial;
