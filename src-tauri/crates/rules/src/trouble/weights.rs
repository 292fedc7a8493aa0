//! What evidence weighs that stands in no row of the tables: the assumptions of the model.
//!
//! No source gives these numbers; each is common practice, put in a number.

/// The share of all troubles that are none of the causes in the table.
pub(super) const OTHER_SHARE: f64 = 0.05;

/// How likely a cause outside the table shows any one symptom.
pub(super) const OTHER_SHOWS: f64 = 0.1;

/// How likely any one code is stored that has nothing to do with the cause: of the several hundred that there
/// are, a car in trouble has one or two of those.
pub(super) const CODE_ANYWAY: f64 = 0.005;

/// How likely a cause outside the table stores any one code.
pub(super) const OTHER_CODE: f64 = 0.02;

/// How likely a check seems to find something though the fault lies elsewhere.
pub(super) const FALSE_ALARM: f64 = 0.03;

/// By how much an overdue item raises what comes of neglecting it.
pub(super) const OVERDUE: f64 = 2.0;

/// By how much a cause is raised that this car has had before: its mending may not have held, and what
/// brought it about once is often still there.
pub(super) const BEFORE: f64 = 2.0;

/// By how much an item that was done lately and would have mended the cause lowers it.
pub(super) const RENEWED: f64 = 0.3;

/// For how many days it lowers it.
pub(super) const RENEWED_DAYS: u32 = 365;

/// By how much work nearby raises what it can have upset, by the days since: up to so many days, so many
/// times.
const TOUCHED: [(u32, f64); 3] = [(7, 6.0), (30, 3.0), (90, 1.5)];

/// By how much work of so many days ago raises what it can have upset; `None` when it is too long ago.
pub(super) fn touched(days: u32) -> Option<f64> {
    TOUCHED.iter().find(|(until, _)| days <= *until).map(|(_, times)| *times)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn work_fades_with_the_days_and_is_forgotten() {
        assert_eq!(touched(0), Some(6.0));
        assert_eq!(touched(7), Some(6.0));
        assert_eq!(touched(8), Some(3.0));
        assert_eq!(touched(90), Some(1.5));
        assert_eq!(touched(91), None);
    }
}
