//! How long it takes to take in a photo of 12 megapixels, whole and by its two halves.
//!
//! The photo is drawn here: a pale slip with rows of dark strokes on a shaded table, with the grain of a sensor.
//!
//! For the comparison in `tests/sharp`, `--photo FILE` writes that photo, and `--beside FILE FOLDER` takes it in once for
//! each line of standard input and answers with the milliseconds that this took.

use std::fs;
use std::hint::black_box;
use std::io::{self, BufRead};
use std::path::Path;
use std::time::{Instant, SystemTime};

use criterion::{BatchSize, Criterion};
use image::codecs::jpeg::JpegEncoder;
use image::{Rgb, RgbImage};
use paper::{PhotoStore, Prepared, find_corners, prepare};
use tempfile::TempDir;

const WIDTH: u32 = 4032;
const HEIGHT: u32 = 3024;

type Outcome = Result<(), Box<dyn std::error::Error>>;

fn main() -> Outcome {
    let args: Vec<String> = std::env::args().skip(1).collect();
    match args.iter().map(String::as_str).collect::<Vec<_>>().as_slice() {
        ["--photo", file, ..] => Ok(fs::write(file, photo()?)?),
        ["--beside", file, folder, ..] => beside(Path::new(file), Path::new(folder)),
        _ => measure(),
    }
}

fn beside(file: &Path, folder: &Path) -> Outcome {
    for (round, line) in io::stdin().lock().lines().enumerate() {
        line?;
        let bytes = fs::read(file)?;
        // A store of its own, because a photo that is there already is not written again.
        let store = PhotoStore::open(&folder.join(round.to_string()), SystemTime::UNIX_EPOCH)?;
        let start = Instant::now();
        store.take_in(&bytes)?;
        println!("{:.3}", start.elapsed().as_secs_f64() * 1000.0);
    }
    Ok(())
}

fn measure() -> Outcome {
    let mut criterion = Criterion::default().sample_size(20).configure_from_args();
    intake(&mut criterion)?;
    criterion.final_summary();
    Ok(())
}

fn intake(criterion: &mut Criterion) -> Outcome {
    let bytes = photo()?;
    let prepared = prepare(&bytes)?;
    println!(
        "{} bytes in, {:?} out, cut out of {:?}",
        bytes.len(),
        prepared.photo(),
        prepared.whole().map(Prepared::photo)
    );

    criterion.bench_function("prepare 12 MP", |bencher| bencher.iter(|| black_box(prepare(&bytes))));
    let upright = image::load_from_memory(prepared.whole().unwrap_or(&prepared).jpeg())?.into_rgb8();
    criterion
        .bench_function("find the corners", |bencher| bencher.iter(|| black_box(find_corners(&upright))));
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
        let noise = grain >> 28;
        let on_slip = (1000..3000).contains(&x) && (200..2800).contains(&y);
        let printed = (1100..2900).contains(&x) && (320..2680).contains(&y);
        let stroke = printed && y % 60 < 24 && (x / 9 + y / 60 * 7) % 5 < 2;
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
