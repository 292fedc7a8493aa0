//! Screens: each one request, each one function, in the order of the places.

mod book;
mod brief;
mod check;
mod checks;
mod codes;
mod consumption;
mod costs;
mod due;
mod fills;
mod get;
mod guides;
mod handover;
mod helped;
mod measured;
mod odometer;
mod parts;
mod places;
mod prices;
mod pump;
mod sheet;
mod show;
mod stock;
mod trouble;
mod visits;

pub use codes::codes_of_text;
pub(crate) use consumption::used_by_year;
pub(crate) use places::{fingerprint, vehicle_line};
pub use sheet::vin_view;
pub(crate) use show::{bare_item, engine_from, engine_key, found_view, measure_key, money_view, unit_key};
pub(crate) use stock::{part_warnings, warned_numbers};
pub use trouble::refuse_elsewhere;
