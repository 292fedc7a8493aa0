//! # window: the face on Android and the desktop
//!
//! Hands each request to the door and each answer back, serves photos under `photo:`, and writes a card or a
//! PDF that came in where the system keeps documents. It must never hold a rule or a line of SQL, and nothing
//! here takes longer than handing something over: photos are worked on before the door is taken.
#![expect(clippy::needless_pass_by_value, reason = "the framework hands a command its arguments by value")]

mod shared;
mod started;

use std::fs::File;
use std::io::{Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Mutex, PoisonError};

use door::{
    BriefPage, CardOptions, Clock, Door, Gathered, HandoverForm, IntakeProgress, Intakes, PaperReader,
    PhotoSize, Refusal, ReportOptions, Request, Response,
};
use shared::Shared;
use started::Started;
use tauri::http::{Response as Answer, StatusCode, header};
use tauri::ipc::{InvokeBody, Request as Call};
use tauri::{AppHandle, Manager, State};

/// The door, or why it did not open: the ui asks, and is told.
struct Opened(Mutex<Result<Door, Refusal>>);

impl Opened {
    fn with<T>(&self, ask: impl FnOnce(&mut Door) -> Result<T, Refusal>) -> Result<T, Refusal> {
        // A panic while the door was held leaves nothing half written: every change is one transaction.
        let mut opened = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        match opened.as_mut() {
            Ok(door) => ask(door),
            Err(refusal) => Err(refusal.clone()),
        }
    }
}

/// The number of the paper being read: whoever reads under an earlier one stops.
#[derive(Default)]
struct Turn(AtomicU64);

impl Turn {
    /// Stops whatever is being read, and gives the number for what comes next.
    fn next(&self) -> u64 {
        self.0.fetch_add(1, Ordering::Relaxed) + 1
    }

    fn is_over(&self, number: u64) -> bool {
        self.0.load(Ordering::Relaxed) != number
    }
}

/// Answers a request of the ui.
#[tauri::command(async)]
fn ask(opened: State<'_, Opened>, request: Request) -> Result<Response, Refusal> {
    opened.with(|door| door.ask(request))
}

/// Takes in the raw bytes of a photo for the book named in the header `book`, until [`stop_intake`] is called with the
/// ticket in the header `ticket`.
#[tauri::command(async)]
fn take_in(
    opened: State<'_, Opened>,
    intakes: State<'_, Intakes>,
    call: Call<'_>,
) -> Result<Response, Refusal> {
    let named = |name| call.headers().get(name).and_then(|value| value.to_str().ok()).unwrap_or_default();
    let (book, begun) = (named("book"), intakes.begin(named("ticket")));
    let bytes = match call.body() {
        InvokeBody::Raw(bytes) => bytes.as_slice(),
        InvokeBody::Json(_) => &[],
    };
    let intake = begun.prepare(bytes, &|| false)?;
    opened.with(|door| begun.file(door, book, &intake)).map(Response::Filed)
}

/// Gives up the file that is taken in under a ticket.
#[tauri::command(async)]
fn stop_intake(intakes: State<'_, Intakes>, ticket: &str) {
    intakes.stop(ticket);
}

/// How far the file is that is taken in under a ticket.
#[tauri::command(async)]
fn intake_progress(intakes: State<'_, Intakes>, ticket: &str) -> Option<IntakeProgress> {
    intakes.progress(ticket)
}

/// Reads a paper, until another is to be read or [`stop_reading`] is called.
#[tauri::command(async)]
fn read_paper(
    opened: State<'_, Opened>,
    reader: State<'_, PaperReader>,
    turn: State<'_, Turn>,
    book: &str,
    paper: &str,
) -> Result<Response, Refusal> {
    let number = turn.next();
    let wanted = opened.with(|door| door.to_read(book, paper))?;
    reader.read(&wanted, &|| turn.is_over(number)).map(|receipt| Response::Receipt(Box::new(receipt)))
}

/// Gives up the paper that is being read, if there is one.
#[tauri::command(async)]
fn stop_reading(turn: State<'_, Turn>) {
    turn.next();
}

/// The corners of the paper on its photo; nothing where they are not beyond doubt.
#[tauri::command(async)]
fn find_corners(
    opened: State<'_, Opened>,
    book: &str,
    paper: &str,
) -> Result<Option<[[f64; 2]; 4]>, Refusal> {
    door::found_corners(&opened.with(|door| door.whole_photo(book, paper))?)
}

/// Straightens a paper between the corners given, or puts the photo back as it was taken.
#[tauri::command(async)]
fn straighten(
    opened: State<'_, Opened>,
    book: &str,
    paper: &str,
    corners: Option<[[f64; 2]; 4]>,
) -> Result<Response, Refusal> {
    let whole = opened.with(|door| door.whole_photo(book, paper))?;
    let straight = corners.map(|corners| door::straighten_photo(&whole, corners)).transpose()?;
    opened.with(|door| door.put_straight(book, paper, straight.as_ref())).map(Response::Written)
}

/// Writes the card as PDF into the documents, and answers the path.
#[tauri::command(async)]
fn save_card(
    app: AppHandle,
    opened: State<'_, Opened>,
    book: &str,
    options: CardOptions,
) -> Result<String, Refusal> {
    save_sheet(&app, "wellkept-card.pdf", &opened.with(|door| door.card(book, &options))?)
}

/// Writes the brief for a workshop as PDF into the documents, and answers the path.
#[tauri::command(async)]
fn save_brief(app: AppHandle, opened: State<'_, Opened>, page: BriefPage) -> Result<String, Refusal> {
    save_sheet(&app, "wellkept-brief.pdf", &opened.with(|door| door.brief(page))?)
}

/// Writes the full report as PDF into the documents, and answers the path.
#[tauri::command(async)]
fn save_report(
    app: AppHandle,
    opened: State<'_, Opened>,
    book: &str,
    options: ReportOptions,
) -> Result<String, Refusal> {
    save_sheet(&app, "wellkept-report.pdf", &opened.with(|door| door.report(book, &options))?)
}

/// Sets a sheet, which takes long and needs no door, and writes it into the documents.
fn save_sheet(app: &AppHandle, name: &str, gathered: &Gathered) -> Result<String, Refusal> {
    door::save(&documents(app)?.join(name), &gathered.pdf()?)
}

/// What the PDF of a paper is.
#[tauri::command(async)]
fn document(opened: State<'_, Opened>, book: &str, paper: &str) -> Result<Response, Refusal> {
    opened.with(|door| door.document(book, paper))?.view().map(Response::Document)
}

/// Writes the PDF of a paper into the documents, as it came in, and answers the path.
#[tauri::command(async)]
fn save_document(
    app: AppHandle,
    opened: State<'_, Opened>,
    book: &str,
    paper: &str,
    name: &str,
) -> Result<String, Refusal> {
    let document = opened.with(|door| door.document(book, paper))?;
    // Two receipts of one day bear the same name.
    door::save(&free(&documents(&app)?, name), &document.read()?)
}

/// Packs a book for the next owner into the documents, and hands it over.
#[tauri::command(async)]
fn hand_over(
    app: AppHandle,
    opened: State<'_, Opened>,
    book: &str,
    form: HandoverForm,
    passphrase: &str,
    name: &str,
) -> Result<Response, Refusal> {
    let packing = opened.with(|door| door.pack_up(book, &form))?;
    let packed = packing.save(&free(&documents(&app)?, name), passphrase)?;
    opened.with(|door| door.hand_over(packed)).map(Response::Packed)
}

fn documents(app: &AppHandle) -> Result<PathBuf, Refusal> {
    let paths = app.path();
    let folder = paths.document_dir().or_else(|_| paths.app_data_dir());
    let folder = folder.map_err(|error| door::refuse_file("documents", &error))?;
    let made = std::fs::create_dir_all(&folder);
    made.map(|()| folder.clone()).map_err(|error| door::refuse_file(&folder.display().to_string(), &error))
}

/// A path in a folder at which nothing stands yet; only the last part of the name is taken.
fn free(folder: &Path, name: &str) -> PathBuf {
    let name = Path::new(Path::new(name).file_name().unwrap_or("book.wellkept".as_ref()));
    let stem = name.file_stem().unwrap_or_default().to_string_lossy().into_owned();
    let ending = name.extension().unwrap_or_default().to_string_lossy().into_owned();
    let numbered = (2..u32::MAX).map(|number| folder.join(format!("{stem}-{number}.{ending}")));
    let mut paths = std::iter::once(folder.join(name)).chain(numbered);
    paths.find(|path| !path.exists()).unwrap_or_else(|| folder.join(name))
}

/// A book file that is on its way in, piece by piece.
#[derive(Default)]
struct Brought(Mutex<Option<File>>);

/// Takes a piece of a book file in. The header `first` says that it begins a new one.
#[tauri::command(async)]
fn bring_book(opened: State<'_, Opened>, brought: State<'_, Brought>, call: Call<'_>) -> Result<(), Refusal> {
    let mut brought = brought.0.lock().unwrap_or_else(PoisonError::into_inner);
    if call.headers().contains_key("first") {
        *brought = Some(opened.with(|door| door.scratch_file())?);
    }
    match (&mut *brought, call.body()) {
        (Some(file), InvokeBody::Raw(bytes)) => {
            file.write_all(bytes).map_err(|error| door::refuse_file("book", &error))
        }
        _ => Err(door::refuse_request(&"a piece of a file without a beginning")),
    }
}

/// Opens the file that was brought, and takes the book in.
#[tauri::command(async)]
fn receive_book(
    opened: State<'_, Opened>,
    brought: State<'_, Brought>,
    passphrase: &str,
) -> Result<Response, Refusal> {
    let refused = |error: std::io::Error| door::refuse_file("book", &error);
    let again = {
        let brought = brought.0.lock().unwrap_or_else(PoisonError::into_inner);
        brought.as_ref().map(File::try_clone).transpose().map_err(refused)?
    };
    let mut file = again.ok_or_else(|| door::refuse_request(&"no file was brought"))?;
    file.seek(SeekFrom::Start(0)).map_err(refused)?;
    let mut book = door::open_book_file(file, passphrase)?;
    opened.with(|door| door.examine(&mut book))?;
    book.keep_papers()?;
    let received = opened.with(|door| door.take_book_in(&book))?;
    *brought.0.lock().unwrap_or_else(PoisonError::into_inner) = None;
    Ok(Response::Received(Box::new(received)))
}

/// Where the shelf stands: `--shelf DIR`, else the folder that the system gives the program.
fn shelf(app: &AppHandle, named: Option<PathBuf>) -> PathBuf {
    named.unwrap_or_else(|| app.path().app_data_dir().unwrap_or_default().join("shelf"))
}

/// Answers `photo://localhost/HASH/thumb` and `…/full`.
fn photo(opened: &Opened, path: &str) -> Answer<Vec<u8>> {
    let mut parts = path.split('/').filter(|part| !part.is_empty());
    let hash = parts.next().unwrap_or_default();
    let size = match parts.next() {
        Some("thumb") => PhotoSize::Thumb,
        _ => PhotoSize::Full,
    };
    let (status, body) = match opened.with(|door| door.photo(hash, size)) {
        Ok(jpeg) => (StatusCode::OK, jpeg),
        Err(_) => (StatusCode::NOT_FOUND, Vec::new()),
    };
    let mut answer = Answer::new(body);
    *answer.status_mut() = status;
    // A photo that is thrown away has to be gone, and not wait in a cache.
    let headers = [(header::CONTENT_TYPE, "image/jpeg"), (header::CACHE_CONTROL, "no-store")];
    for (name, value) in headers {
        answer.headers_mut().insert(name, header::HeaderValue::from_static(value));
    }
    answer
}

/// Opens the window and stays until it is closed.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() {
    let built = tauri::Builder::default()
        .invoke_handler(tauri::generate_handler![
            ask,
            take_in,
            stop_intake,
            intake_progress,
            read_paper,
            stop_reading,
            find_corners,
            straighten,
            save_card,
            save_brief,
            save_report,
            document,
            save_document,
            hand_over,
            bring_book,
            receive_book,
            shared::shared,
            shared::take_shared,
            shared::leave_shared
        ])
        .register_asynchronous_uri_scheme_protocol("photo", |context, request, responder| {
            let app = context.app_handle().clone();
            tauri::async_runtime::spawn_blocking(move || {
                responder.respond(photo(&app.state::<Opened>(), request.uri().path()));
            });
        })
        .setup(|app| {
            let started = Started::read(std::env::args_os().skip(1));
            let shelf = shelf(app.handle(), started.shelf);
            app.manage(Opened(Mutex::new(Door::open(&shelf, Clock::Device))));
            app.manage(Shared::new(&shelf, started.files));
            app.manage(Turn::default());
            app.manage(Intakes::default());
            app.manage(Brought::default());
            // The models come with the program where the system unpacks its resources, or lie beside it.
            let shipped = app.path().resource_dir().ok().map(|folder| folder.join("models"));
            app.manage(PaperReader::new(shipped.filter(|folder| folder.is_dir()).as_deref()));
            Ok(())
        })
        .run(tauri::generate_context!());
    if let Err(error) = built {
        eprintln!("the window can not be opened: {error}");
        std::process::exit(1);
    }
}
