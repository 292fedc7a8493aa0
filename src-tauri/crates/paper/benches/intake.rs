//! How long it takes to take in a photo of 12 megapixels, whole and by its two halves.
//!
//! The photo is drawn here: a pale slip with rows of dark strokes on a shaded table, with the grain of a sensor.

use std::hint::black_box;
use std::io;
use std::time::SystemTime;

use criterion::{BatchSize, Criterion};
use image::codecs::jpeg::JpegEncoder;
use image::{Rgb, RgbImage};
use paper::{PhotoStore, prepare};
use tempfile::TempDir;

const WIDTH: u32 = 4032;
const HEIGHT: u32 = 3024;

type Outcome = Result<(), Box<dyn std::error::Error>>;

fn main() -> Outcome {
    let mut criterion = Criterion::default().sample_size(20).configure_from_args();
    intake(&mut criterion)?;
    criterion.final_summary();
    Ok(())
}

fn intake(criterion: &mut Criterion) -> Outcome {
    let bytes = photo()?;
    let prepared = prepare(&bytes)?;
    println!("{} bytes in, {:?} out", bytes.len(), prepared.photo());

    criterion.bench_function("prepare 12 MP", |bencher| bencher.iter(|| black_box(prepare(&bytes))));
    criterion.bench_function("keep: write, sync, rename", |bencher| {
        let keep = |made: io::Result<(TempDir, PhotoStore)>| {
            made.map(|(folder, store)| (folder, store.keep(&prepared)))
        };
        bencher.iter_batched(empty_store, keep, BatchSize::PerIteration);
    });
    let (_folder, store) = empty_store()?;
    criterion
        .bench_function("keep: already there", |bencher| bencher.iter(|| black_box(store.keep(&prepared))));
    Ok(())
}

fn empty_store() -> io::Result<(TempDir, PhotoStore)> {
    let folder = tempfile::tempdir()?;
    let store = PhotoStore::open(folder.path(), SystemTime::UNIX_EPOCH).map_err(io::Error::other)?;
    Ok((folder, store))
}

fn photo() -> Result<Vec<u8>, image::ImageError> {
    let mut grain = 1u32;
    let picture = RgbImage::from_fn(WIDTH, HEIGHT, |x, y| {
        grain = grain.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let noise = grain >> 29;
        let on_slip = (1000..3000).contains(&x) && (200..2800).contains(&y);
        let stroke = on_slip && y % 60 < 24 && (x / 9 + y / 60 * 7) % 5 < 2;
        let light = match (stroke, on_slip) {
            (true, _) => 50,
            (false, true) => 225 - x / 80,
            (false, false) => 90 + y / 60,
        };
        Rgb([light + noise, light + noise / 2, light - light / 12 + noise]
            .map(|tone| u8::try_from(tone).unwrap_or(u8::MAX)))
    });
    let mut bytes = Vec::new();
    picture.write_with_encoder(JpegEncoder::new_with_quality(&mut bytes, 92))?;
    Ok(bytes)
}
