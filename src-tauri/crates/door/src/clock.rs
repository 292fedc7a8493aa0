//! What day it is. Nothing below the door ever asks.

use std::time::{SystemTime, UNIX_EPOCH};

use units::Day;

/// Where the time comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Clock {
    /// The device's own clock and calendar.
    Device,
    /// Noon of this day, for a look at another day and for the demo.
    Fixed(Day),
}

const MILLIS_A_DAY: u64 = 86_400_000;

impl Clock {
    /// Today, by the calendar where the device is.
    pub fn today(self) -> Day {
        match self {
            Clock::Fixed(day) => day,
            Clock::Device => {
                let date = chrono::Local::now().date_naive();
                Day::from_epoch(date.to_epoch_days()).unwrap_or_else(|_| epoch())
            }
        }
    }

    /// Milliseconds since 1970-01-01, UTC.
    pub fn now(self) -> u64 {
        match self {
            Clock::Device => {
                let since = SystemTime::now().duration_since(UNIX_EPOCH).unwrap_or_default();
                u64::try_from(since.as_millis()).unwrap_or(u64::MAX)
            }
            Clock::Fixed(day) => u64::try_from(day.epoch()).unwrap_or(0) * MILLIS_A_DAY + MILLIS_A_DAY / 2,
        }
    }
}

/// The day on which something was written, in UTC.
pub(crate) fn day_of(millis: u64) -> Day {
    i32::try_from(millis / MILLIS_A_DAY)
        .ok()
        .and_then(|days| Day::from_epoch(days).ok())
        .unwrap_or_else(epoch)
}

fn epoch() -> Day {
    Day::from_ymd(1970, 1, 1).unwrap_or_else(|_| unreachable!("1970-01-01 lies within the range of days"))
}
