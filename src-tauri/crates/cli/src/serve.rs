//! The local server: the same ui in a browser, for this machine and this user alone.
//!
//! It listens on 127.0.0.1 only. The address that it prints bears a random token, which becomes a cookie on the
//! first load; whatever comes without it, or under another Host or from another Origin, is refused.

mod books;
mod documents;
mod intake;

use std::path::{Component, Path, PathBuf};
use std::process::ExitCode;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex, PoisonError};

use axum::Router;
use axum::body::Bytes;
use axum::extract::{DefaultBodyLimit, Query, Request, State};
use axum::http::{HeaderMap, StatusCode, Uri, header};
use axum::middleware::{self, Next};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use door::{
    BriefPage, CardLang, CardOptions, CardPaper, CardSize, Door, Gathered, Intakes, PaperReader, PhotoSize,
    Refusal, ReportOptions, VinShown,
};
use serde::Deserialize;
use words::Words;

/// The largest body: a photo of 64 MiB.
const LARGEST_BODY: usize = 64 * 1024 * 1024 + 1024;
const COOKIE: &str = "wellkept";
const POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self'; style-src-attr 'unsafe-inline'; \
    img-src 'self' blob:; font-src 'self'; connect-src 'self'; form-action 'none'; base-uri 'none'; \
    frame-ancestors 'none'";

/// What every request needs.
struct Server {
    door: Mutex<Door>,
    reader: PaperReader,
    intakes: Intakes,
    books: books::Books,
    token: String,
    host: String,
    ui: PathBuf,
}

impl Server {
    async fn with<T: Send + 'static>(
        self: Arc<Self>,
        ask: impl FnOnce(&mut Door) -> Result<T, Refusal> + Send + 'static,
    ) -> Result<T, Refused> {
        let asked = tokio::task::spawn_blocking(move || {
            ask(&mut self.door.lock().unwrap_or_else(PoisonError::into_inner)).map_err(Refused)
        });
        asked.await.unwrap_or_else(|error| Err(Refused(door::refuse_file("127.0.0.1", &error))))
    }
}

/// A refusal as a status and its JSON.
struct Refused(Refusal);

impl IntoResponse for Refused {
    fn into_response(self) -> Response {
        (StatusCode::UNPROCESSABLE_ENTITY, axum::Json(self.0)).into_response()
    }
}

/// Serves until it is ended.
pub fn serve(door: Door, port: u16, words: &Words) -> Result<ExitCode, Refusal> {
    let refused = |error: &dyn std::fmt::Display| door::refuse_file("127.0.0.1", error);
    let runtime =
        tokio::runtime::Builder::new_multi_thread().enable_all().build().map_err(|error| refused(&error))?;
    runtime.block_on(async {
        let listener =
            tokio::net::TcpListener::bind(("127.0.0.1", port)).await.map_err(|error| refused(&error))?;
        let address = listener.local_addr().map_err(|error| refused(&error))?;
        let token = token()?;
        println!("{}", words.say("cli-serving", &[]));
        println!("http://{address}/?token={token}");
        let server = Server {
            door: Mutex::new(door),
            reader: PaperReader::new(None),
            intakes: Intakes::default(),
            books: books::Books::default(),
            token,
            host: address.to_string(),
            ui: ui_folder(),
        };
        axum::serve(listener, router(Arc::new(server)))
            .with_graceful_shutdown(async {
                // Without a signal to wait for, the server simply stays.
                if tokio::signal::ctrl_c().await.is_err() {
                    std::future::pending::<()>().await;
                }
            })
            .await
            .map_err(|error| refused(&error))?;
        Ok(ExitCode::SUCCESS)
    })
}

fn token() -> Result<String, Refusal> {
    let mut random = [0_u8; 16];
    getrandom::fill(&mut random).map_err(|error| door::refuse_file("getrandom", &error))?;
    Ok(random.iter().fold(String::new(), |text, byte| text + &format!("{byte:02x}")))
}

/// The built ui: beside the program once installed, in the source tree before.
fn ui_folder() -> PathBuf {
    let installed = std::env::current_exe().ok().and_then(|program| Some(program.parent()?.join("ui")));
    installed
        .filter(|folder| folder.is_dir())
        .unwrap_or_else(|| Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../ui/dist"))
}

fn router(server: Arc<Server>) -> Router {
    Router::new()
        .route("/ask", post(ask))
        .route("/paper", post(intake::paper))
        .route("/paper/stop", post(intake::stop))
        .route("/paper/progress", get(intake::progress))
        .route("/read", post(read))
        .route("/straighten", post(straighten))
        .route("/corners", get(corners))
        .route("/photo/{hash}/{size}", get(photo))
        .route("/document/{book}/{paper}", get(documents::about))
        .route("/document/{book}/{paper}/{name}", get(documents::open))
        .route("/card.pdf", get(card))
        .route("/brief.pdf", post(brief))
        .route("/report.pdf", post(report))
        .route("/handover", post(books::hand_over))
        .route("/handover/{ticket}/{name}", get(books::fetch))
        .route("/receive", post(books::bring).layer(DefaultBodyLimit::disable()))
        .route("/receive/open", post(books::receive))
        .fallback(get(file))
        .layer(DefaultBodyLimit::max(LARGEST_BODY))
        .layer(middleware::from_fn_with_state(server.clone(), guard))
        .with_state(server)
}

/// Lets only the browser in that was given the address, and only from its own page.
async fn guard(State(server): State<Arc<Server>>, request: Request, next: Next) -> Response {
    let headers = request.headers();
    let named = |name| headers.get(name).and_then(|value| value.to_str().ok());
    let own_origin = |origin: &str| origin == format!("http://{}", server.host);
    if named(header::HOST) != Some(server.host.as_str()) || !named(header::ORIGIN).is_none_or(own_origin) {
        return StatusCode::FORBIDDEN.into_response();
    }
    if let Some(token) = request.uri().query().and_then(|query| query.strip_prefix("token=")) {
        return if same(token, &server.token) {
            welcome(&server.token)
        } else {
            StatusCode::FORBIDDEN.into_response()
        };
    }
    if !has_cookie(headers, &server.token) {
        return StatusCode::FORBIDDEN.into_response();
    }
    let mut response = next.run(request).await;
    let policy = header::HeaderValue::from_static(POLICY);
    // What was written elsewhere comes with a stricter one.
    response.headers_mut().entry(header::CONTENT_SECURITY_POLICY).or_insert(policy);
    response
        .headers_mut()
        .insert(header::X_CONTENT_TYPE_OPTIONS, header::HeaderValue::from_static("nosniff"));
    response.headers_mut().insert(header::REFERRER_POLICY, header::HeaderValue::from_static("no-referrer"));
    response
}

/// Turns the token of the address into a cookie, so that it does not stay in the address bar.
fn welcome(token: &str) -> Response {
    let cookie = format!("{COOKIE}={token}; HttpOnly; SameSite=Strict; Path=/");
    ([(header::SET_COOKIE, cookie)], Redirect::to("/")).into_response()
}

fn has_cookie(headers: &HeaderMap, token: &str) -> bool {
    let cookies = headers.get_all(header::COOKIE).iter().filter_map(|cookie| cookie.to_str().ok());
    let mut pairs =
        cookies.flat_map(|cookies| cookies.split(';')).filter_map(|pair| pair.trim().split_once('='));
    pairs.any(|(name, value)| name == COOKIE && same(value, token))
}

/// Compares without telling by the time it takes how much was right.
fn same(a: &str, b: &str) -> bool {
    a.len() == b.len() && a.bytes().zip(b.bytes()).fold(0, |sum, (a, b)| sum | (a ^ b)) == 0
}

async fn ask(State(server): State<Arc<Server>>, body: Bytes) -> Result<axum::Json<door::Response>, Refused> {
    let request = serde_json::from_slice(&body).map_err(|error| Refused(door::refuse_request(&error)))?;
    server.with(move |door| door.ask(request)).await.map(axum::Json)
}

#[derive(Deserialize)]
struct Book {
    book: String,
}

/// Does slow work that needs no door.
async fn aside<T: Send + 'static>(
    work: impl FnOnce() -> Result<T, Refusal> + Send + 'static,
) -> Result<T, Refused> {
    let done = tokio::task::spawn_blocking(work).await;
    done.map_err(|error| Refused(door::refuse_request(&error)))?.map_err(Refused)
}

#[derive(Deserialize)]
struct Paper {
    book: String,
    paper: String,
}

/// Says so to the work when the browser no longer waits for it.
#[derive(Default)]
struct StopWhenDropped(Arc<AtomicBool>);

impl Drop for StopWhenDropped {
    fn drop(&mut self) {
        self.0.store(true, Ordering::Relaxed);
    }
}

/// Reads a paper.
async fn read(
    State(server): State<Arc<Server>>,
    Query(Paper { book, paper }): Query<Paper>,
) -> Result<axum::Json<door::Response>, Refused> {
    let wanted = server.clone().with(move |door| door.to_read(&book, &paper)).await?;
    let waiting = StopWhenDropped::default();
    let stop = waiting.0.clone();
    let receipt = aside(move || server.reader.read(&wanted, &|| stop.load(Ordering::Relaxed))).await?;
    drop(waiting);
    Ok(axum::Json(door::Response::Receipt(Box::new(receipt))))
}

/// The corners of the paper on its photo; `null` where they are not beyond doubt.
async fn corners(
    State(server): State<Arc<Server>>,
    Query(Paper { book, paper }): Query<Paper>,
) -> Result<axum::Json<Option<[[f64; 2]; 4]>>, Refused> {
    let whole = server.with(move |door| door.whole_photo(&book, &paper)).await?;
    Ok(axum::Json(aside(move || door::found_corners(&whole)).await?))
}

/// Straightens a paper between the corners given, or puts the photo back as it was taken.
async fn straighten(
    State(server): State<Arc<Server>>,
    Query(Paper { book, paper }): Query<Paper>,
    axum::Json(corners): axum::Json<Option<[[f64; 2]; 4]>>,
) -> Result<axum::Json<door::Response>, Refused> {
    let (of, which) = (book.clone(), paper.clone());
    let whole = server.clone().with(move |door| door.whole_photo(&of, &which)).await?;
    let straight =
        aside(move || corners.map(|corners| door::straighten_photo(&whole, corners)).transpose()).await?;
    let written = server.with(move |door| door.put_straight(&book, &paper, straight.as_ref())).await?;
    Ok(axum::Json(door::Response::Written(written)))
}

async fn photo(
    State(server): State<Arc<Server>>,
    axum::extract::Path((hash, size)): axum::extract::Path<(String, String)>,
) -> Result<Response, Refused> {
    let size = if size == "thumb" { PhotoSize::Thumb } else { PhotoSize::Full };
    let jpeg = server.with(move |door| door.photo(&hash, size)).await?;
    // A photo that is thrown away has to be gone, and not wait in a cache.
    let headers = [(header::CONTENT_TYPE, "image/jpeg"), (header::CACHE_CONTROL, "no-store")];
    Ok((headers, jpeg).into_response())
}

#[derive(Deserialize)]
struct CardQuery {
    book: String,
    #[serde(default)]
    size: CardSize,
    #[serde(default)]
    paper: CardPaper,
    #[serde(default)]
    vin: VinShown,
    #[serde(default)]
    hide_names: bool,
    #[serde(default)]
    prices: bool,
    #[serde(default)]
    lang: CardLang,
    viewer: Option<String>,
}

async fn card(
    State(server): State<Arc<Server>>,
    Query(query): Query<CardQuery>,
) -> Result<Response, Refused> {
    let CardQuery { book, size, paper, vin, hide_names, prices, lang, viewer } = query;
    let options = CardOptions { size, paper, vin, hide_names, prices, lang, viewer };
    let gathered = server.with(move |door| door.card(&book, &options)).await?;
    let pdf = set(gathered).await?;
    let name = "attachment; filename=\"wellkept-card.pdf\"";
    Ok(([(header::CONTENT_TYPE, "application/pdf"), (header::CONTENT_DISPOSITION, name)], pdf)
        .into_response())
}

/// Of a brief the page already has every line, so that it is given back set and not kept.
async fn brief(
    State(server): State<Arc<Server>>,
    axum::Json(page): axum::Json<BriefPage>,
) -> Result<Response, Refused> {
    let gathered = server.with(move |door| door.brief(page)).await?;
    let pdf = set(gathered).await?;
    Ok(([(header::CONTENT_TYPE, "application/pdf")], pdf).into_response())
}

async fn report(
    State(server): State<Arc<Server>>,
    Query(Book { book }): Query<Book>,
    axum::Json(options): axum::Json<ReportOptions>,
) -> Result<Response, Refused> {
    let gathered = server.with(move |door| door.report(&book, &options)).await?;
    let pdf = set(gathered).await?;
    Ok(([(header::CONTENT_TYPE, "application/pdf")], pdf).into_response())
}

/// A sheet takes long to set, so that the door is held only while it is gathered.
async fn set(gathered: Gathered) -> Result<Vec<u8>, Refused> {
    aside(move || gathered.pdf()).await
}

/// A file of the built ui.
async fn file(State(server): State<Arc<Server>>, uri: Uri) -> Response {
    let wanted = uri.path().trim_start_matches('/');
    let wanted = Path::new(if wanted.is_empty() { "index.html" } else { wanted });
    if !wanted.components().all(|part| matches!(part, Component::Normal(_))) {
        return StatusCode::NOT_FOUND.into_response();
    }
    match tokio::fs::read(server.ui.join(wanted)).await {
        Ok(bytes) => ([(header::CONTENT_TYPE, media_type(wanted))], bytes).into_response(),
        Err(_) => StatusCode::NOT_FOUND.into_response(),
    }
}

fn media_type(path: &Path) -> &'static str {
    match path.extension().and_then(|extension| extension.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("svg") => "image/svg+xml",
        Some("woff2") => "font/woff2",
        Some("png") => "image/png",
        _ => "application/octet-stream",
    }
}
