//! Squares against the published capacities and sizes of ISO/IEC 18004.

#![allow(clippy::unwrap_used)]

use super::*;

/// Capacities in digits and bytes at level M, H and Q (ISO/IEC 18004, table 7, as derived by segno 1.6.6).
#[test]
fn a_text_takes_the_smallest_version_of_the_capacity_table() {
    // version, bytes at M
    for (version, bytes) in [(1, 14), (2, 26), (3, 42), (5, 84), (10, 213), (20, 666), (27, 1125), (40, 2331)]
    {
        let square = Square::plain(&"a".repeat(bytes), SquareLimit::LARGEST).unwrap();
        assert_eq!((square.version(), square.level()), (version, Level::M));
        assert_eq!(square.side(), 17 + 4 * u32::from(version));
        let longer = Square::plain(&"a".repeat(bytes + 1), SquareLimit::LARGEST);
        assert!(longer.is_err() || longer.unwrap().version() > version);
    }
}

#[test]
fn the_level_is_the_highest_that_the_version_holds() {
    let level = |bytes: usize| {
        let square = Square::plain(&"a".repeat(bytes), SquareLimit::LARGEST).unwrap();
        (square.version(), square.level())
    };
    // Version 10 holds 213, 151 and 119 bytes at M, Q and H, and version 9 holds 180 at M.
    assert_eq!(level(181), (10, Level::M));
    // Version 6 holds 106, 74 and 58; version 5 holds 84 at M.
    assert_eq!(level(58), (4, Level::M));
    assert_eq!(level(7), (1, Level::H));
    assert_eq!(level(11), (1, Level::Q));
    assert_eq!(level(14), (1, Level::M));
}

/// The numeric segment takes 10 bits for 3 digits, 7 for 2 and 4 for 1.
#[test]
fn a_code_has_a_byte_segment_and_a_numeric_segment() {
    let fits = |digits: usize, version| {
        let content =
            Content::Code { address: b"https://a.b/#", digits: "1".repeat(digits).leak().as_bytes() };
        content.fits(version, Level::M)
    };
    // Version 10-M holds 213 bytes of data and 16 + 4 bits of header: 1728 bits in all. The address takes
    // 4 + 16 + 104 bits and the numeric header 4 + 12, so 1588 bits are left: 476 digits.
    assert!(fits(476, 10));
    assert!(!fits(477, 10));
}

#[test]
fn a_limit_follows_from_the_printed_width() {
    // Version 1 has 21 modules and 8 of quiet zone: 29 at 0.40 mm are 11.6 mm; version 40 takes 74 mm.
    assert_eq!(SquareLimit::within_um(11_599), None);
    assert_eq!(SquareLimit::within_um(11_600).unwrap().version(), 1);
    assert_eq!(SquareLimit::within_um(73_999).unwrap().version(), 39);
    assert_eq!(SquareLimit::within_um(74_000).unwrap(), SquareLimit::LARGEST);
    assert_eq!(SquareLimit::within_um(u32::MAX).unwrap(), SquareLimit::LARGEST);
}

/// The worked example of DENSO WAVE (<https://www.qrcode.com/en/howto/code.html>): 50 alphanumeric characters at level M,
/// printed at 400 dpi with 4 dots a module, take 7.366 mm, and 9.398 mm with their margin.
#[test]
fn the_worked_example_of_a_printed_size_comes_out() {
    let bits = 4 + 9 + 50 / 2 * 11;
    let holds = |version: &u8| Bits::new(normal(*version)).max_len(EcLevel::M).is_ok_and(|room| bits <= room);
    let version = (1..=VERSION_MAX).find(holds).unwrap();
    let module_um = 4 * 25_400 / 400;
    assert_eq!((version, side_of(version) * module_um), (3, 7_366));
    assert_eq!((side_of(version) + 2 * QUIET_ZONE) * module_um, 9_398);
}

#[test]
fn what_does_not_fit_the_limit_is_refused() {
    let limit = SquareLimit::within_um(20_000).unwrap();
    assert_eq!(limit.version(), 6);
    assert!(Square::plain(&"a".repeat(106), limit).is_ok());
    assert_eq!(Square::plain(&"a".repeat(107), limit), Err(CardError::TextTooLong { version: 6 }));
}

/// The finder pattern in three corners, and the module that is always dark (ISO/IEC 18004, sections 6.3.3, 7.9.1).
#[test]
fn modules_are_where_the_standard_puts_them() {
    let square = Square::plain("Heron", SquareLimit::LARGEST).unwrap();
    let side = square.side();
    for (column, row) in [(0, 0), (side - 7, 0), (0, side - 7)] {
        for at in 0..7 {
            assert!(square.is_dark(column + at, row) && square.is_dark(column, row + at));
        }
        assert!(!square.is_dark(column + 1, row + 1));
    }
    assert!(square.is_dark(8, side - 8));
    assert!(!square.is_dark(side, 0) && !square.is_dark(0, side));
}

#[test]
fn runs_and_path_cover_exactly_the_dark_modules() {
    let square = Square::plain("Heron", SquareLimit::LARGEST).unwrap();
    let mut covered = vec![false; square.dark.len()];
    for (column, row, length) in square.runs() {
        for column in column..column + length {
            let at = (row * square.side() + column) as usize;
            assert!(!covered[at], "no module twice");
            covered[at] = true;
        }
    }
    assert_eq!(covered, square.dark);
    assert!(square.svg_path().starts_with("M0 0h7v1h-7z"));
    assert_eq!(square.svg_path().matches('M').count(), square.runs().len());
}
