//! Book files through the browser: one is packed and then fetched, one is brought and then opened.
//!
//! A file that is brought is opened by a request of its own, so that a wrong passphrase does not cost bringing it
//! again. Both files have no name on this machine and are gone when the server ends.

use std::fs::File;
use std::future::poll_fn;
use std::io::{Seek, SeekFrom, Write};
use std::pin::Pin;
use std::sync::{Arc, Mutex, PoisonError};
use std::task::{Context, Poll, ready};

use axum::body::{Body, Bytes, HttpBody};
use axum::extract::{Path, Query, State};
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use door::{HandoverForm, Refusal};
use http_body::Frame;
use serde::Deserialize;
use tokio::io::{AsyncRead, ReadBuf};

use super::{Book, Refused, Server, aside, same, token};

/// The files that are on their way.
#[derive(Default)]
pub struct Books {
    packed: Mutex<Option<Waiting>>,
    brought: Mutex<Option<File>>,
}

/// A packed file that waits to be fetched under its ticket.
struct Waiting {
    ticket: String,
    file: File,
}

#[derive(Deserialize)]
pub struct HandOver {
    form: HandoverForm,
    #[serde(default)]
    passphrase: String,
    /// The name under which the browser saves the file.
    name: String,
}

#[derive(Deserialize)]
pub struct Opening {
    #[serde(default)]
    passphrase: String,
}

/// Packs a book, hands it over, and answers the address from which the file is fetched.
pub async fn hand_over(
    State(server): State<Arc<Server>>,
    Query(Book { book }): Query<Book>,
    axum::Json(asked): axum::Json<HandOver>,
) -> Result<axum::Json<door::Response>, Refused> {
    let HandOver { form, passphrase, name } = asked;
    let packing = server.clone().with(move |door| door.pack_up(&book, &form)).await?;
    let packed = aside(move || packing.nameless(&passphrase)).await?;
    let (mut view, file) = server.clone().with(move |door| door.hand_over_nameless(packed)).await?;
    let ticket = token().map_err(Refused)?;
    view.path = format!("/handover/{ticket}/{}", plain(&name));
    *held(&server.books.packed) = file.map(|file| Waiting { ticket, file });
    Ok(axum::Json(door::Response::Packed(view)))
}

/// A name stands in an address and in a header, so only what is plain in both is left of it.
pub(super) fn plain(name: &str) -> String {
    let is_plain = |letter: char| letter.is_ascii_alphanumeric() || matches!(letter, '-' | '.' | '_');
    name.chars().map(|letter| if is_plain(letter) { letter } else { '-' }).collect()
}

/// The file that was packed last, as often as it is asked for.
pub async fn fetch(
    State(server): State<Arc<Server>>,
    Path((ticket, name)): Path<(String, String)>,
) -> Result<Response, Refused> {
    let again = |waiting: &Waiting| {
        let mut file = waiting.file.try_clone()?;
        file.seek(SeekFrom::Start(0))?;
        Ok::<_, std::io::Error>((file.metadata()?.len(), file))
    };
    let found = held(&server.books.packed)
        .as_ref()
        .filter(|waiting| same(&waiting.ticket, &ticket))
        .map(again)
        .transpose()
        .map_err(|error| broken(&error))?;
    let Some((length, file)) = found else { return Ok(StatusCode::NOT_FOUND.into_response()) };
    let disposition = format!("attachment; filename=\"{}\"", plain(&name));
    let headers = [
        (header::CONTENT_TYPE, "application/octet-stream".to_owned()),
        (header::CONTENT_LENGTH, length.to_string()),
        (header::CONTENT_DISPOSITION, disposition),
        (header::CACHE_CONTROL, "no-store".to_owned()),
    ];
    let body = FileBody { file: tokio::fs::File::from_std(file), buffer: vec![0; 64 * 1024] };
    Ok((headers, Body::new(body)).into_response())
}

/// Takes the bytes of a book file in, as they come.
pub async fn bring(State(server): State<Arc<Server>>, mut body: Body) -> Result<StatusCode, Refused> {
    let mut file = server.clone().with(|door| door.scratch_file()).await?;
    while let Some(frame) = poll_fn(|context| Pin::new(&mut body).poll_frame(context)).await {
        let bytes = frame.map_err(|error| broken(&error))?.into_data().unwrap_or_default();
        file = aside(move || file.write_all(&bytes).map(|()| file).map_err(|error| refuse(&error))).await?;
    }
    *held(&server.books.brought) = Some(file);
    Ok(StatusCode::NO_CONTENT)
}

/// Opens the file that was brought, and takes the book in.
pub async fn receive(
    State(server): State<Arc<Server>>,
    axum::Json(Opening { passphrase }): axum::Json<Opening>,
) -> Result<axum::Json<door::Response>, Refused> {
    let again = held(&server.books.brought).as_ref().map(File::try_clone).transpose();
    // Without a file there is nothing in it, and that is no book.
    let file = match again.map_err(|error| broken(&error))? {
        Some(file) => file,
        None => server.clone().with(|door| door.scratch_file()).await?,
    };
    let mut book = aside(move || {
        let mut file = file;
        file.seek(SeekFrom::Start(0)).map_err(|error| refuse(&error))?;
        door::open_book_file(file, &passphrase)
    })
    .await?;
    let mut book = server
        .clone()
        .with(move |door| {
            door.examine(&mut book)?;
            Ok(book)
        })
        .await?;
    let book = aside(move || {
        book.keep_papers()?;
        Ok(book)
    })
    .await?;
    let received = server.clone().with(move |door| door.take_book_in(&book)).await?;
    *held(&server.books.brought) = None;
    Ok(axum::Json(door::Response::Received(Box::new(received))))
}

fn held<T>(mutex: &Mutex<T>) -> std::sync::MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

fn refuse(error: &dyn std::fmt::Display) -> Refusal {
    door::refuse_file("127.0.0.1", error)
}

fn broken(error: &dyn std::fmt::Display) -> Refused {
    Refused(refuse(error))
}

/// A file that is sent as it is read, and not held in memory.
struct FileBody {
    file: tokio::fs::File,
    buffer: Vec<u8>,
}

impl HttpBody for FileBody {
    type Data = Bytes;
    type Error = std::io::Error;

    fn poll_frame(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
    ) -> Poll<Option<Result<Frame<Bytes>, std::io::Error>>> {
        let FileBody { file, buffer } = &mut *self;
        let mut read = ReadBuf::new(buffer);
        if let Err(error) = ready!(Pin::new(file).poll_read(context, &mut read)) {
            return Poll::Ready(Some(Err(error)));
        }
        let bytes = Bytes::copy_from_slice(read.filled());
        Poll::Ready((!bytes.is_empty()).then(|| Ok(Frame::data(bytes))))
    }
}
