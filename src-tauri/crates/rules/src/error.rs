//! The one error type of this room.

/// Why something that was said about a car cannot be so.
///
/// Each message says what was wrong and what would be right.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum RulesError {
    /// The identification number is too short or too long.
    #[error("a vehicle identification number has 17 characters, and this one has {0}")]
    VinLength(usize),
    /// The identification number holds a character that none has.
    #[error(
        "'{character}' at position {position} cannot stand in a vehicle identification number; \
         it has digits and letters other than I, O and Q"
    )]
    VinCharacter {
        /// What stands there.
        character: char,
        /// Where, counted from 1.
        position: usize,
    },
    /// An interval names neither a distance nor a time.
    #[error("an interval needs a distance, a time or both")]
    IntervalEmpty,
    /// The distance of an interval is out of range.
    #[error("an interval of {0} is out of range; it lies between 1 and 1000000")]
    IntervalDistance(u32),
    /// The time of an interval is out of range.
    #[error("an interval of {0} months is out of range; it lies between 0.5 and 600")]
    IntervalTime(units::HalfMonths),
    /// A text is no interval.
    #[error("'{0}' is no interval; write a distance as '15000 km' and a time as '12 months'")]
    IntervalText(String),
    /// The short end of a range is longer than its long end, or names what the long end does not.
    #[error("the short end of a range must name what its long end names, and be no longer")]
    IntervalRange,
    /// The name of an item of the owner's own is empty, too long or runs over several lines.
    #[error("the name of an item has 1 to 80 characters on one line")]
    OwnName,
    /// A text is no measured value.
    #[error("'{0}' is no measured value; it has up to six digits and up to three decimals, such as 3.1")]
    Measurement(String),
    /// The catalogue has a row that cannot be so.
    #[error("the catalogue is wrong at {place}: {problem}")]
    Catalogue {
        /// Which row, by its key, or the head of the table.
        place: String,
        /// What is wrong with it.
        problem: String,
    },
}
