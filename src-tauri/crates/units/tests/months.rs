//! Where whole and half months end, against an independent implementation: dateutil's `relativedelta`.
//!
//! `tests/references/month_vectors.py` writes the file, and a test beside it asks dateutil again.
#![allow(clippy::unwrap_used)]

use units::{Day, HalfMonths};

const CASES: &str = include_str!("../../../../tests/references/data/months.txt");

#[test]
fn months_end_where_dateutil_says() {
    let mut checked = 0;
    for line in CASES.lines() {
        let [from, half_months, to] = line.split(' ').collect::<Vec<_>>().try_into().unwrap();
        let (from, to): (Day, Day) = (from.parse().unwrap(), to.parse().unwrap());
        assert_eq!(from.plus(HalfMonths(half_months.parse().unwrap())), to, "{line}");
        checked += 1;
    }
    assert!(checked > 2_000, "{checked}");
}
