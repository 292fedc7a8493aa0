//! Papers through the browser: each file comes with a ticket, under which its page asks how far it is and stops it.

use std::sync::atomic::Ordering;
use std::sync::{Arc, PoisonError};

use axum::body::Bytes;
use axum::extract::{Query, State};
use axum::http::StatusCode;
use door::IntakeProgress;
use serde::Deserialize;

use super::{Refused, Server, StopWhenDropped, aside};

#[derive(Deserialize)]
pub struct Coming {
    book: String,
    ticket: String,
}

#[derive(Deserialize)]
pub struct Ticket {
    ticket: String,
}

/// Takes a file in. It ends when it is stopped, and when the browser no longer waits for it.
pub async fn paper(
    State(server): State<Arc<Server>>,
    Query(Coming { book, ticket }): Query<Coming>,
    body: Bytes,
) -> Result<axum::Json<door::Response>, Refused> {
    let waiting = StopWhenDropped::default();
    let stop = waiting.0.clone();
    let filed = aside(move || {
        let begun = server.intakes.begin(&ticket);
        // The paper is worked on before the door is taken, so that other screens do not wait for it.
        let intake = begun.prepare(&body, &|| stop.load(Ordering::Relaxed))?;
        begun.file(&mut server.door.lock().unwrap_or_else(PoisonError::into_inner), &book, &intake)
    });
    let filed = filed.await?;
    drop(waiting);
    Ok(axum::Json(door::Response::Filed(filed)))
}

/// Stops the intake of a ticket.
pub async fn stop(State(server): State<Arc<Server>>, Query(Ticket { ticket }): Query<Ticket>) -> StatusCode {
    server.intakes.stop(&ticket);
    StatusCode::NO_CONTENT
}

/// How far the intake of a ticket is; `null` where none is under way.
pub async fn progress(
    State(server): State<Arc<Server>>,
    Query(Ticket { ticket }): Query<Ticket>,
) -> axum::Json<Option<IntakeProgress>> {
    axum::Json(server.intakes.progress(&ticket))
}
