//! Photos taken in as they come from cameras, scanners and people with other intentions.

#![allow(clippy::unwrap_used)]

mod corners;
mod documents;
mod draw;
mod hostile;
mod kinds;
mod metadata;
mod orientation;
mod slips;
mod store;
