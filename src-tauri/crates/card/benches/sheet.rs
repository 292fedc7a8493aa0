//! How long a card of 120 visits takes: the square alone, the PDF warm, and reading the code.
//!
//! For the comparisons in `tests/browser/card-speed.mjs` and `tests/references/square_speed.py`, `--pages FOLDER` writes
//! that card as PDF and as pages in SVG, with the text of its square and its version and level, and `--beside pdf` and
//! `--beside square` make the PDF or the square once for each line of standard input and answer with the milliseconds
//! that this took.

#![allow(missing_docs, clippy::unwrap_used)]

#[path = "../tests/demo/mod.rs"]
mod demo;

use std::fs;
use std::hint::black_box;
use std::io::{self, BufRead};
use std::path::Path;
use std::time::Instant;

use card::{Fitted, SheetModel, SheetSize, Square, SquareLimit, fit, pdf, read, svg};
use criterion::Criterion;

const VISITS: usize = 120;

fn main() {
    let args: Vec<String> = std::env::args().skip(1).collect();
    match args.iter().map(String::as_str).collect::<Vec<_>>().as_slice() {
        ["--pages", folder, ..] => pages(Path::new(folder)),
        ["--beside", "pdf", ..] => {
            let mut sheets = Sheets::new();
            beside(|| drop(black_box(sheets.pdf())));
        }
        ["--beside", "square", ..] => {
            let fitted = fitted();
            beside(|| drop(black_box(square(&fitted))));
        }
        _ => measure(),
    }
}

/// Sheets of which none is a copy of the one before: the car has another name each time, and every visit another
/// reading and another workshop. Typst remembers what it laid out, and would otherwise have most of a sheet at hand.
struct Sheets {
    model: SheetModel,
    readings: Vec<i32>,
    made: i32,
}

impl Sheets {
    fn new() -> Sheets {
        let readings = demo::claims(VISITS).visits.iter().map(|visit| visit.reading).collect();
        Sheets { model: demo::sheet(VISITS), readings, made: 0 }
    }

    fn pdf(&mut self) -> Vec<u8> {
        self.made += 1;
        let (model, made) = (&mut self.model, self.made);
        model.issued = format!("issue {made}");
        model.car.name = format!("Heron {made}");
        for (visit, reading) in model.visits.iter_mut().zip(&self.readings) {
            visit.reading = demo::grouped(reading + made);
            visit.who = format!("workshop {made}");
        }
        pdf(black_box(model), &demo::options()).unwrap()
    }
}

fn limit() -> SquareLimit {
    SheetSize::A5.square_limit()
}

fn fitted() -> Fitted {
    fit(&demo::claims(VISITS), &demo::key(), &demo::viewer(), limit()).unwrap()
}

fn square(fitted: &Fitted) -> Square {
    Square::code(&demo::viewer(), black_box(&fitted.message), limit()).unwrap()
}

fn pages(folder: &Path) {
    for (at, page) in svg(&demo::sheet(VISITS), &demo::options()).unwrap().iter().enumerate() {
        fs::write(folder.join(format!("{at}.svg")), page).unwrap();
    }
    fs::write(folder.join("card.pdf"), Sheets::new().pdf()).unwrap();
    let fitted = fitted();
    fs::write(folder.join("square.txt"), fitted.message.text(&demo::viewer())).unwrap();
    let kind = format!("{} {:?}", fitted.square.version(), fitted.square.level());
    fs::write(folder.join("square.kind"), kind).unwrap();
}

fn beside(mut make: impl FnMut()) {
    for line in io::stdin().lock().lines() {
        line.unwrap();
        let start = Instant::now();
        make();
        println!("{:.3}", start.elapsed().as_secs_f64() * 1000.0);
    }
}

fn measure() {
    let mut criterion = Criterion::default().sample_size(20).configure_from_args();
    let claims = demo::claims(VISITS);
    let fitted = fitted();
    let text = fitted.message.text(&demo::viewer());
    println!(
        "{VISITS} visits: {} visits in the square, {:?}, {} characters",
        fitted.claims.visits.len(),
        fitted.square,
        text.len()
    );
    criterion.bench_function("sign and draw the square of 120 visits", |bencher| {
        bencher.iter(|| fit(black_box(&claims), &demo::key(), &demo::viewer(), limit()).unwrap());
    });
    criterion.bench_function("draw the square alone", |bencher| bencher.iter(|| square(&fitted)));
    criterion.bench_function("read the code of 120 visits", |bencher| {
        bencher.iter(|| read(black_box(&text)).unwrap());
    });
    let mut sheets = Sheets::new();
    criterion.bench_function("PDF of 120 visits, warm", |bencher| bencher.iter(|| sheets.pdf()));
    criterion.final_summary();
}
