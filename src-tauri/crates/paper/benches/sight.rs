//! How long it takes to find and read the text on a photo, against decoding the same JPEG in the same run, so that
//! the ratio holds on any machine; and the most memory that the process ever held.
//!
//! Needs the networks: run `cargo xtask models`, and set `WELLKEPT_MODELS` to their folder.

use std::hint::black_box;
use std::ops::ControlFlow;
use std::path::PathBuf;
use std::time::{Duration, Instant};

use criterion::Criterion;
use image::ImageFormat;
use paper::{Prepared, Reader, encode, prepare};

#[path = "../tests/sight/draw.rs"]
#[allow(clippy::unwrap_used, clippy::cast_possible_truncation, clippy::cast_precision_loss, missing_docs)]
#[allow(clippy::cast_sign_loss, dead_code)]
mod draw;

type Outcome = Result<(), Box<dyn std::error::Error>>;

fn main() -> Outcome {
    let folder = PathBuf::from(std::env::var_os("WELLKEPT_MODELS").ok_or("WELLKEPT_MODELS is not set")?);
    let reader = Reader::open(&folder)?.ok_or("the networks are not there; run `cargo xtask models`")?;
    let camera = encode(&draw::photo(&draw::slip(draw::SLIP), (3024, 4032), draw::ALMOST_LEVEL))?;
    let kept = prepare(&camera)?;
    let text = reader.read(kept.jpeg(), &mut |_| ControlFlow::Continue(()))?;
    println!("12 MP, {:?}: {} rows", kept.photo(), text.0.len());

    let mut criterion = Criterion::default().sample_size(10).configure_from_args();
    criterion
        .bench_function("open the networks", |bencher| bencher.iter(|| black_box(Reader::open(&folder))));
    criterion.bench_function("prepare 12 MP", |bencher| bencher.iter(|| black_box(prepare(&camera))));
    criterion.bench_function("decode the kept photo", |bencher| bencher.iter(|| black_box(decoded(&kept))));
    criterion
        .bench_function("read the kept photo", |bencher| bencher.iter(|| black_box(read(&reader, &kept))));
    criterion.final_summary();
    ratio(&reader, &kept);
    most_memory();
    Ok(())
}

fn decoded(kept: &Prepared) -> bool {
    image::load_from_memory_with_format(kept.jpeg(), ImageFormat::Jpeg).is_ok()
}

fn read(reader: &Reader, kept: &Prepared) -> usize {
    reader.read(kept.jpeg(), &mut |_| ControlFlow::Continue(())).map_or(0, |text| text.0.len())
}

/// Decoding and reading by turns, so that what else the machine does falls on both; the least of each counts.
fn ratio(reader: &Reader, kept: &Prepared) {
    let (mut decoding, mut reading) = (Duration::MAX, Duration::MAX);
    for _ in 0..10 {
        decoding = decoding.min(timed(|| decoded(kept)));
        reading = reading.min(timed(|| read(reader, kept)));
    }
    println!(
        "decoding {decoding:?}, reading {reading:?}: {:.1} times",
        reading.as_secs_f64() / decoding.as_secs_f64()
    );
}

fn timed<T>(work: impl Fn() -> T) -> Duration {
    let start = Instant::now();
    black_box(work());
    start.elapsed()
}

/// What Linux says of the most memory that this process ever held at once.
fn most_memory() {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    status.lines().filter(|line| line.starts_with("VmHWM:")).for_each(|line| println!("most memory: {line}"));
}
