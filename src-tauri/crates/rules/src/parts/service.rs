//! How long a part lasts: from its fitting to the next time that its item was done with a part.

use std::collections::BTreeMap;

use units::Day;

use super::{Fitted, Moment, Span};
use crate::upkeep::ItemRef;

/// How long the last part of an item lasted, and how long the present one has been in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Service {
    /// From the last part's fitting to that of the one after it; `None` while there is none after it, or no
    /// last one in the book.
    pub lasted: Option<Span>,
    /// From the present part's fitting to now; `None` when no such part is in.
    pub present: Option<Span>,
}

/// The moments at which each item was done with a part, oldest first, one a day.
#[derive(Debug, Default)]
pub(super) struct Timeline<'a> {
    moments: BTreeMap<&'a ItemRef, Vec<Moment>>,
}

/// How long the parts of one item lasted that were in it before the present ones, whichever they were; `None`
/// when it was done with a part only once. `fitted` may come in any order.
///
/// Several parts of one day were fitted together. Where only some of an item's parts were renewed, as with a
/// single wiper blade, the book does not tell which stayed in, and all count as renewed.
pub fn lasted<'a>(item: &ItemRef, fitted: impl IntoIterator<Item = Fitted<'a>>) -> Option<Span> {
    let of_item = fitted.into_iter().filter(|fitted| fitted.item == Some(item));
    let mut moments: Vec<_> = of_item.map(|fitted| fitted.at).collect();
    one_a_day(&mut moments);
    match moments[..] {
        [.., last, present] => Some(Span::between(last, present)),
        _ => None,
    }
}

impl<'a> Timeline<'a> {
    pub fn new(fitted: impl IntoIterator<Item = Fitted<'a>>) -> Timeline<'a> {
        let mut moments: BTreeMap<&ItemRef, Vec<Moment>> = BTreeMap::new();
        for Fitted { item, at, .. } in fitted {
            if let Some(item) = item {
                moments.entry(item).or_default().push(at);
            }
        }
        for moments in moments.values_mut() {
            one_a_day(moments);
        }
        Timeline { moments }
    }

    /// How long the part lasts that was last fitted for this item on this day.
    ///
    /// While it is in, the last one is the one before it; once another came in its place, it is itself the last.
    pub fn service(&self, item: &ItemRef, fitted: Day, now: Moment) -> Service {
        let moments = self.moments.get(item).map_or(&[][..], Vec::as_slice);
        let later = moments.partition_point(|moment| moment.day <= fitted);
        match (&moments[..later], &moments[later..]) {
            ([.., itself], [next, ..]) => {
                Service { lasted: Some(Span::between(*itself, *next)), present: None }
            }
            ([.., last, present], []) => Service {
                lasted: Some(Span::between(*last, *present)),
                present: Some(Span::between(*present, now)),
            },
            ([present], []) => Service { lasted: None, present: Some(Span::between(*present, now)) },
            ([], _) => Service::default(),
        }
    }
}

/// Orders moments by day and makes one of those that share a day.
fn one_a_day(moments: &mut Vec<Moment>) {
    moments.sort_by_key(|moment| moment.day);
    moments.dedup_by(|later, kept| {
        let same = later.day == kept.day;
        if same {
            *kept = kept.or_farther(*later);
        }
        same
    });
}

#[cfg(test)]
#[path = "service_tests.rs"]
mod tests;
