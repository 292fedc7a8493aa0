//! Penalties counted for many lines at once, against the same counted module by module, and masks against those that the
//! crate `qrcode` chooses.

#![allow(clippy::unwrap_used)]

use qrcode::bits::Bits;
use qrcode::ec::construct_codewords;
use qrcode::{EcLevel, QrCode, Version};

use super::*;

/// The same penalties, module by module.
fn plainly(dark: &[bool]) -> u32 {
    let side = dark.len().isqrt();
    let rows: Vec<Vec<bool>> = dark.chunks(side).map(<[bool]>::to_vec).collect();
    let columns: Vec<Vec<bool>> = (0..side).map(|at| rows.iter().map(|row| row[at]).collect()).collect();
    let runs = |line: &Vec<bool>| -> usize {
        line.chunk_by(|one, next| one == next).map(|run| if run.len() < 5 { 0 } else { run.len() - 2 }).sum()
    };
    let finders = |line: &Vec<bool>| {
        let light = |from: usize, to: usize| line.iter().take(to).skip(from).all(|dark| !dark);
        let looks = |at: &usize| {
            line[*at..*at + 7] == [true, false, true, true, true, false, true]
                && (light(at.saturating_sub(4), *at) || light(at + 7, at + 11))
        };
        (0..=side - 7).filter(looks).count()
    };
    let square = |at: &usize| {
        let (row, column) = (at / (side - 1), at % (side - 1));
        let four =
            [(0, 0), (0, 1), (1, 0), (1, 1)].map(|(down, right)| dark[(row + down) * side + column + right]);
        four == [true; 4] || four == [false; 4]
    };
    let lines: usize = rows.iter().chain(&columns).map(|line| runs(line) + 40 * finders(line)).sum();
    let squares = (0..(side - 1) * (side - 1)).filter(square).count();
    let many = dark.iter().filter(|dark| **dark).count();
    let fives = (20 * many).abs_diff(10 * dark.len()) / dark.len();
    u32::try_from(lines + 3 * squares + 10 * fives).unwrap()
}

/// A text of its own for each version.
fn bits(version: i16) -> Bits {
    let mut bits = Bits::new(Version::Normal(version));
    bits.push_numeric_data(format!("31415926{version}").as_bytes()).unwrap();
    bits.push_terminator(EcLevel::M).unwrap();
    bits
}

fn drawn(version: i16) -> Vec<bool> {
    let code = QrCode::with_bits(bits(version), EcLevel::M).unwrap();
    code.into_colors().into_iter().map(|color| color == Color::Dark).collect()
}

#[test]
fn many_lines_at_once_come_to_what_each_comes_to() {
    for version in 1..=40 {
        let symbol = drawn(version);
        let other: Vec<bool> = symbol.iter().map(|dark| !dark).collect();
        for symbol in [symbol, other] {
            assert_eq!(penalty(&symbol), plainly(&symbol), "{version}");
        }
    }
}

#[test]
fn a_single_colour_is_penalised_for_all_it_is() {
    let white = vec![false; 21 * 21];
    // 42 lines of 21 alike, 400 squares, and ten times five per cent too few.
    assert_eq!(penalty(&white), 42 * (3 + 16) + 400 * 3 + 100);
    assert_eq!(plainly(&white), penalty(&white));
}

/// The crate `qrcode` weighs the balance of dark and light a little otherwise, which seldom decides.
#[test]
fn nearly_every_symbol_is_masked_as_another_implementation_does() {
    let masked_as_there = |version: &i16| {
        let codewords = bits(*version).into_bytes();
        let (data, checks) = construct_codewords(&codewords, Version::Normal(*version), EcLevel::M).unwrap();
        let mut symbol = Canvas::new(Version::Normal(*version), EcLevel::M);
        symbol.draw_all_functional_patterns();
        symbol.draw_data(&data, &checks);
        best_masked(&symbol) == drawn(*version)
    };
    assert!((1..=40).filter(masked_as_there).count() >= 36);
}
