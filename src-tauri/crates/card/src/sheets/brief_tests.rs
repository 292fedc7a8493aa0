//! The brief: what stands on it stands in the PDF, on one sheet where it has room there.
#![allow(clippy::unwrap_used)]

use hayro::hayro_syntax::Pdf;

use super::*;

fn brief(lines: usize) -> Brief {
    let line = |at: usize| format!("Line {at} of what was checked already on this invented car");
    Brief {
        lang: "en".to_owned(),
        title: "Brief for the workshop".to_owned(),
        parts: vec![BriefPart { title: "Checked".to_owned(), lines: (0..lines).map(line).collect() }],
        foot: "Observations and no diagnosis.".to_owned(),
    }
}

fn pages(brief: &Brief) -> usize {
    Pdf::new(brief_pdf(brief, 1_780_272_000).unwrap()).unwrap().pages().len()
}

#[test]
fn an_ordinary_brief_is_one_sheet_and_a_long_one_is_several() {
    assert_eq!(pages(&brief(0)), 1);
    assert_eq!(pages(&brief(35)), 1);
    assert!(pages(&brief(100)) > 1);
}

#[test]
fn markup_and_characters_without_a_glyph_are_only_text() {
    let mut brief = brief(1);
    brief.title = "#panic(\"x\") $ _a_ \u{202e}\u{1f697}".to_owned();
    brief.parts[0].lines.push(["Donaudampfschifffahrtsgesellschaft"; 9].concat());
    assert_eq!(pages(&brief), 1);
}

#[test]
fn the_same_brief_of_the_same_day_is_the_same_file() {
    assert_eq!(brief_pdf(&brief(3), 0).unwrap(), brief_pdf(&brief(3), 0).unwrap());
}
