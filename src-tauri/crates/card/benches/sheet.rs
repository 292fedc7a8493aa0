//! How long a card of 120 visits takes: the square alone, the PDF warm, and reading the code.

#![allow(missing_docs, clippy::unwrap_used)]

#[path = "../tests/demo/mod.rs"]
mod demo;

use std::hint::black_box;

use card::{SheetSize, fit, pdf, read};
use criterion::{Criterion, criterion_group, criterion_main};

fn sheet(criterion: &mut Criterion) {
    let claims = demo::claims(120);
    let limit = SheetSize::A5.square_limit();
    let fitted = fit(&claims, &demo::key(), &demo::viewer(), limit).unwrap();
    let text = fitted.message.text(&demo::viewer());
    println!(
        "120 visits: {} visits in the square, {:?}, {} characters",
        fitted.claims.visits.len(),
        fitted.square,
        text.len()
    );

    criterion.bench_function("sign and draw the square of 120 visits", |bencher| {
        bencher.iter(|| fit(black_box(&claims), &demo::key(), &demo::viewer(), limit).unwrap());
    });
    criterion.bench_function("read the code of 120 visits", |bencher| {
        bencher.iter(|| read(black_box(&text)).unwrap());
    });
    // The day changes each time, so that no sheet is a copy of the one before.
    let mut model = demo::sheet(120);
    let mut made = 0;
    criterion.bench_function("PDF of 120 visits, warm", |bencher| {
        bencher.iter(|| {
            made += 1;
            model.issued = format!("issue {made}");
            pdf(black_box(&model), &demo::options()).unwrap()
        });
    });
}

criterion_group! { name = benches; config = Criterion::default().sample_size(20); targets = sheet }
criterion_main!(benches);
