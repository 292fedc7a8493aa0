//! A PDF as it came in: what it is, for the page, and its bytes, for a tab in which the browser shows it.

use std::sync::Arc;

use axum::extract::{Path, State};
use axum::http::header;
use axum::response::{IntoResponse, Response};

use super::books::plain;
use super::{Refused, Server, aside};

/// Whoever wrote a receipt is a stranger, so that even the scripts of the ui are none of its own. It is not
/// sandboxed: a browser keeps its viewer apart from this address by itself, and some leave a sandboxed PDF blank.
const POLICY: &str = "default-src 'none'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'";

/// What the PDF of a paper is.
pub async fn about(
    State(server): State<Arc<Server>>,
    Path((book, paper)): Path<(String, String)>,
) -> Result<axum::Json<door::Response>, Refused> {
    let document = server.with(move |door| door.document(&book, &paper)).await?;
    Ok(axum::Json(door::Response::Document(aside(move || document.view()).await?)))
}

/// The PDF of a paper, under the name by which the browser would save it.
pub async fn open(
    State(server): State<Arc<Server>>,
    Path((book, paper, name)): Path<(String, String, String)>,
) -> Result<Response, Refused> {
    let document = server.with(move |door| door.document(&book, &paper)).await?;
    let pdf = aside(move || document.read()).await?;
    let headers = [
        (header::CONTENT_TYPE, "application/pdf".to_owned()),
        (header::CONTENT_DISPOSITION, format!("inline; filename=\"{}\"", plain(&name))),
        (header::CONTENT_SECURITY_POLICY, POLICY.to_owned()),
        // What is thrown away has to be gone, and not wait in a cache.
        (header::CACHE_CONTROL, "no-store".to_owned()),
    ];
    Ok((headers, pdf).into_response())
}
