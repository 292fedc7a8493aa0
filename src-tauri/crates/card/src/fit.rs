//! Making a history fit its square: the oldest visits go first, and their number is told.

use ed25519_dalek::SigningKey;

use crate::{CardError, Claims, CodeError, Message, Square, SquareLimit, ViewerAddress};

/// A card that fits its square.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fitted {
    /// The claims as signed; [`Claims::left_out`] counts all visits that the card does not carry.
    pub claims: Claims,
    /// The signed message.
    pub message: Message,
    /// The square that holds it.
    pub square: Square,
}

/// A text that fits its square.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlainFitted {
    /// The text in the square.
    pub text: String,
    /// The square that holds it.
    pub square: Square,
    /// How many lines at the end were left out.
    pub left_out: usize,
}

/// Signs the claims, leaving out as many of the oldest visits as it takes for the square to stay within `limit`.
///
/// Visits left out are added to [`Claims::left_out`], so that the card tells the true count. The first visit
/// that remains counts from 1970-01-01 and reading 0, like every first visit.
pub fn fit(
    claims: &Claims,
    key: &SigningKey,
    viewer: &ViewerAddress,
    limit: SquareLimit,
) -> Result<Fitted, CardError> {
    let mut claims = claims.clone();
    claims.visits.sort_by_key(|visit| visit.day);
    let attempt = |kept: usize| attempt(&claims, kept, key, viewer, limit);
    largest_that_fits(claims.visits.len(), attempt)?.ok_or(CardError::DoesNotFit { version: limit.version() })
}

/// Joins as many of the lines, from the first, as fit a square of text within `limit`.
///
/// Where some were left out, what `note` says of their number is the last line, because the text is all that a phone
/// shows.
pub fn fit_plain(
    lines: &[String],
    note: impl Fn(usize) -> String,
    limit: SquareLimit,
) -> Result<PlainFitted, CardError> {
    let attempt = |kept: usize| {
        let left_out = lines.len() - kept;
        let noted = (left_out > 0).then(|| note(left_out));
        let text = lines[..kept].iter().cloned().chain(noted).collect::<Vec<_>>().join("\n");
        let fitted = Square::plain(&text, limit);
        unless_too_long(fitted.map(|square| PlainFitted { text, square, left_out }))
    };
    largest_that_fits(lines.len(), attempt)?
        .filter(|fitted| fitted.left_out < lines.len())
        .ok_or(CardError::TextTooLong { version: limit.version() })
}

/// Signs with only the latest `kept` visits; none when the square would be too large.
fn attempt(
    claims: &Claims,
    kept: usize,
    key: &SigningKey,
    viewer: &ViewerAddress,
    limit: SquareLimit,
) -> Result<Option<Fitted>, CardError> {
    let dropped = claims.visits.len() - kept;
    let visits = claims.visits[dropped..].to_vec();
    let left_out = claims.left_out.saturating_add(u32::try_from(dropped).unwrap_or(u32::MAX));
    let claims = Claims { visits, left_out, ..claims.clone() };
    let fitted = crate::sign(&claims, key).map_err(CardError::from).and_then(|message| {
        let square = Square::code(viewer, &message, limit)?;
        Ok(Fitted { claims, message, square })
    });
    unless_too_long(fitted)
}

/// The result for the largest count up to `all` that fits, by bisection; none when not even 0 fits.
fn largest_that_fits<T>(
    all: usize,
    attempt: impl Fn(usize) -> Result<Option<T>, CardError>,
) -> Result<Option<T>, CardError> {
    if let Some(whole) = attempt(all)? {
        return Ok(Some(whole));
    }
    let (mut fits, mut exceeds) = (0, all);
    let mut best = attempt(0)?;
    while best.is_some() && exceeds - fits > 1 {
        let middle = fits.midpoint(exceeds);
        match attempt(middle)? {
            Some(fitted) => (best, fits) = (Some(fitted), middle),
            None => exceeds = middle,
        }
    }
    Ok(best)
}

/// Tells what is too long for the square from what is wrong.
fn unless_too_long<T>(fitted: Result<T, CardError>) -> Result<Option<T>, CardError> {
    match fitted {
        Ok(fitted) => Ok(Some(fitted)),
        Err(CardError::TextTooLong { .. } | CardError::Code(CodeError::TooLarge)) => Ok(None),
        Err(other) => Err(other),
    }
}

#[cfg(test)]
#[path = "fit_tests.rs"]
mod tests;
