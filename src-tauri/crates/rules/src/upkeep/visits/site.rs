//! Where a job is done, and on which days that can be.

use units::Day;

/// Where a job is done. Jobs that are done at different places are never done at the same visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Site {
    /// By the owner, on any day.
    Home,
    /// In a workshop, from Monday to Friday. Public holidays, and workshops that open on Saturdays, are not known
    /// here; the owner can pin a day.
    Workshop,
    /// At an office or an inspection, from Monday to Friday as well.
    Office,
}

/// The days on which a site is open, counted from today.
#[derive(Debug, Clone, Copy)]
pub(super) struct OpenDays {
    today: Day,
    on_weekends: bool,
}

impl Site {
    /// Every site.
    pub const ALL: [Site; 3] = [Site::Home, Site::Workshop, Site::Office];

    /// Its name in messages: lower-case.
    pub const fn key(self) -> &'static str {
        match self {
            Site::Home => "home",
            Site::Workshop => "workshop",
            Site::Office => "office",
        }
    }

    pub(super) fn open_days(self, today: Day) -> OpenDays {
        OpenDays { today, on_weekends: self == Site::Home }
    }
}

impl OpenDays {
    /// Whether a job can be done on this day.
    fn is_open(self, day: i32) -> bool {
        self.on_weekends || !self.today.plus_days(day).is_weekend()
    }

    /// This day or the last open one before it; nothing if that is over.
    pub(super) fn before(self, day: i32) -> Option<i32> {
        (day - 2..=day).rev().find(|day| self.is_open(*day)).filter(|day| *day >= 0)
    }

    /// This day or the first open one after it.
    pub(super) fn after(self, day: i32) -> i32 {
        (day..day + 3).find(|day| self.is_open(*day)).unwrap_or(day)
    }

    /// The last open day up to this one, or the first after it where there is none.
    pub(super) fn by(self, day: i32) -> i32 {
        self.before(day).unwrap_or_else(|| self.after(day))
    }
}
