//! Photos through the door: taken in, tied, and thrown away, after which the bytes are gone and the line says so.
#![allow(clippy::unwrap_used)]

use std::fmt::Write as _;
use std::fs;
use std::io::Cursor;
use std::path::{Path, PathBuf};

use door::{
    Clock, Door, ItemForm, LineContent, LineFilter, LineView, PhotoSize, Refusal, Request, Response,
    VehicleForm, VisitForm, WrittenView,
};
use image::{ImageFormat, Rgb, RgbImage};

struct Shelf {
    door: Door,
    book: String,
    folder: tempfile::TempDir,
}

fn shelf() -> Shelf {
    let folder = tempfile::tempdir().unwrap();
    let door = open(folder.path());
    let mut shelf = Shelf { door, book: String::new(), folder };
    shelf.book = shelf.add_car("Thistle");
    shelf
}

fn open(folder: &Path) -> Door {
    Door::open(folder, Clock::Fixed("2026-06-01".parse().unwrap())).unwrap()
}

/// A photo of its own for every `tint`.
fn photo(tint: u8, format: ImageFormat) -> Vec<u8> {
    let paper =
        RgbImage::from_fn(64, 96, |x, y| Rgb([tint, (x * 3).to_le_bytes()[0], (y * 2).to_le_bytes()[0]]));
    let mut bytes = Cursor::new(Vec::new());
    paper.write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

impl Shelf {
    fn add_car(&mut self, name: &str) -> String {
        let vehicle = VehicleForm {
            name: name.to_owned(),
            engine: "petrol".to_owned(),
            unit: "km".to_owned(),
            ..VehicleForm::default()
        };
        self.write(Request::AddVehicle { vehicle }).unwrap().book
    }

    fn write(&mut self, request: Request) -> Result<WrittenView, Refusal> {
        match self.door.ask(request)? {
            Response::Written(written) => Ok(written),
            other => panic!("{other:?}"),
        }
    }

    fn take_in(&mut self, tint: u8) -> String {
        self.door.take_in(&self.book, &photo(tint, ImageFormat::Png)).unwrap().papers.remove(0)
    }

    fn throw_away(&mut self, paper: &str) -> Result<WrittenView, Refusal> {
        let (book, paper) = (self.book.clone(), paper.to_owned());
        self.write(Request::ThrowAway { book, paper, why: "blurred".to_owned() })
    }

    fn visit(&mut self, papers: &[&str]) -> String {
        let visit = VisitForm {
            items: vec![ItemForm::Catalogue(1)],
            papers: papers.iter().map(|paper| (*paper).to_owned()).collect(),
            ..VisitForm::default()
        };
        self.write(Request::RecordVisit { book: self.book.clone(), visit, keep: false }).unwrap().subject
    }

    fn line(&mut self, subject: &str) -> LineView {
        let (book, subject) = (self.book.clone(), subject.to_owned());
        match self.door.ask(Request::Line { book, subject }).unwrap() {
            Response::Line(line) => line,
            other => panic!("{other:?}"),
        }
    }

    fn hash(&mut self, paper: &str) -> String {
        match self.line(paper).line.says {
            LineContent::Paper { paper } => paper.hash,
            other => panic!("{other:?}"),
        }
    }

    fn tray(&mut self) -> Vec<String> {
        let Response::Counter(counter) = self.door.ask(Request::Counter { book: self.book.clone() }).unwrap()
        else {
            panic!()
        };
        counter.tray.into_iter().map(|paper| paper.subject).collect()
    }

    /// How many photos the check looked at, and the codes of the faults that it found.
    fn check(&mut self) -> (usize, Vec<String>) {
        let Response::Check(check) = self.door.ask(Request::Check).unwrap() else { panic!() };
        (check.photos, check.faults.into_iter().map(|fault| fault.code).collect())
    }

    /// Every file of the photo store.
    fn files(&self) -> Vec<PathBuf> {
        let mut found = Vec::new();
        let mut folders = vec![self.folder.path().join("photos")];
        while let Some(folder) = folders.pop() {
            for entry in fs::read_dir(folder).unwrap() {
                let path = entry.unwrap().path();
                if path.is_dir() { folders.push(path) } else { found.push(path) }
            }
        }
        found
    }

    fn documents(&self) -> usize {
        self.files().iter().filter(|file| file.extension().is_some_and(|ending| ending == "pdf")).count()
    }

    /// Where the photo or the thumbnail of this hash lies.
    fn file(&self, tree: &str, hash: &str) -> PathBuf {
        self.folder.path().join("photos").join(tree).join(&hash[..2]).join(format!("{hash}.jpg"))
    }
}

#[test]
fn of_a_paper_that_is_thrown_away_the_bytes_go_and_the_line_stays() {
    let mut shelf = shelf();
    let (blurred, good) = (shelf.take_in(1), shelf.take_in(2));
    let hash = shelf.hash(&blurred);
    assert_eq!(shelf.files().len(), 4);
    let thrown = shelf.throw_away(&blurred).unwrap();
    assert_eq!((&thrown.subject, thrown.warnings.len()), (&blurred, 0));

    assert_eq!(shelf.tray(), std::slice::from_ref(&good));
    let kept = shelf.hash(&good);
    assert!(shelf.files().iter().all(|file| file.to_string_lossy().contains(&kept)), "{:?}", shelf.files());
    for size in [PhotoSize::Full, PhotoSize::Thumb] {
        assert_eq!(shelf.door.photo(&hash, size).unwrap_err().code, "photo-missing");
        shelf.door.photo(&kept, size).unwrap();
    }
    let line = shelf.line(&blurred).line;
    assert_eq!(line.struck.as_deref(), Some("blurred"));
    let filter = LineFilter::default();
    let Response::Lines(lines) = shelf.door.ask(Request::Lines { book: shelf.book.clone(), filter }).unwrap()
    else {
        panic!()
    };
    assert!(lines.lines.iter().any(|line| line.subject == blurred));
    assert_eq!(shelf.check(), (1, Vec::new()), "what was thrown away is not missed");
}

#[test]
fn what_was_thrown_away_stays_away_and_can_be_taken_in_again() {
    let mut shelf = shelf();
    let first = shelf.take_in(1);
    shelf.throw_away(&first).unwrap();
    assert_eq!(shelf.throw_away(&first).unwrap_err().code, "struck");
    let again = shelf.door.take_in(&shelf.book, &photo(1, ImageFormat::Png)).unwrap();
    assert_eq!(again.warnings.len(), 0, "it is a new paper");
    assert_ne!(again.papers[0], first);
    assert_eq!(shelf.tray(), again.papers);
    assert_eq!(shelf.hash(&again.papers[0]), shelf.hash(&first));
    // The old line names the same photo, which the new one needs.
    assert_eq!(shelf.check(), (1, Vec::new()));
    assert_eq!(shelf.files().len(), 2);
    assert_eq!(shelf.line(&first).line.struck.as_deref(), Some("blurred"));
}

#[test]
fn a_photo_that_another_book_holds_stays_until_both_are_done_with_it() {
    let mut shelf = shelf();
    let other = shelf.add_car("Heron");
    let here = shelf.take_in(1);
    let there = shelf.door.take_in(&other, &photo(1, ImageFormat::Png)).unwrap().papers.remove(0);
    shelf.throw_away(&here).unwrap();
    assert_eq!((shelf.files().len(), shelf.check()), (2, (1, Vec::new())));
    shelf.book = other;
    shelf.throw_away(&there).unwrap();
    assert!(shelf.files().is_empty());
}

#[test]
fn a_paper_of_a_visit_is_taken_off_it_first() {
    let mut shelf = shelf();
    let paper = shelf.take_in(1);
    let visit = shelf.visit(&[&paper]);
    assert_eq!(shelf.throw_away(&paper).unwrap_err().code, "paper-in-visit");
    assert_eq!(shelf.check(), (1, Vec::new()));
    let off = VisitForm { items: vec![ItemForm::Catalogue(1)], ..VisitForm::default() };
    let (book, why) = (shelf.book.clone(), String::new());
    shelf.write(Request::AmendVisit { book, subject: visit, visit: off, why, keep: false }).unwrap();
    shelf.throw_away(&paper).unwrap();
    assert!(shelf.files().is_empty());
    // Nor does a visit take a paper whose photo is gone.
    let visit = shelf.visit(&[]);
    let tie = Request::TiePaper { book: shelf.book.clone(), paper: paper.clone(), line: visit };
    assert_eq!(shelf.write(tie).unwrap_err().code, "struck");
    let visit =
        VisitForm { items: vec![ItemForm::Catalogue(1)], papers: vec![paper], ..VisitForm::default() };
    let record = Request::RecordVisit { book: shelf.book.clone(), visit, keep: false };
    assert_eq!(shelf.write(record).unwrap_err().field.as_deref(), Some("visit.papers"));
}

#[test]
fn only_papers_are_thrown_away_and_they_are_not_struck_out() {
    let mut shelf = shelf();
    let paper = shelf.take_in(1);
    let visit = shelf.visit(&[]);
    assert_eq!(shelf.throw_away(&visit).unwrap_err().code, "other-kind");
    assert_eq!(shelf.throw_away(&"0".repeat(32)).unwrap_err().code, "no-such-line");
    let (book, why) = (shelf.book.clone(), String::new());
    let strike = Request::StrikeOut { book, subject: paper.clone(), why };
    assert_eq!(shelf.write(strike).unwrap_err().code, "paper-not-struck");
    let (book, long) = (shelf.book.clone(), "x".repeat(2001));
    let refusal = shelf.write(Request::ThrowAway { book, paper: paper.clone(), why: long }).unwrap_err();
    assert_eq!((refusal.code.as_str(), refusal.field.as_deref()), ("text-too-long", Some("why")));
    assert_eq!((shelf.tray(), shelf.files().len()), (vec![paper], 2));
}

#[test]
fn a_photo_left_by_an_interruption_is_no_fault_and_is_cleared_away() {
    let mut shelf = shelf();
    let paper = shelf.take_in(1);
    let hash = shelf.hash(&paper);
    let bytes = shelf.door.photo(&hash, PhotoSize::Full).unwrap();
    shelf.throw_away(&paper).unwrap();
    // As if the power had failed between the entry and the photo.
    for tree in ["photos", "thumbs"] {
        fs::write(shelf.file(tree, &hash), &bytes).unwrap();
    }
    assert_eq!(shelf.files().len(), 2);
    assert_eq!(shelf.check(), (0, Vec::new()));
    assert!(shelf.files().is_empty());
}

#[test]
fn a_photo_that_cannot_be_deleted_is_told_of_and_tried_again() {
    let mut shelf = shelf();
    let paper = shelf.take_in(1);
    let hash = shelf.hash(&paper);
    let file = shelf.file("photos", &hash);
    // Where a folder lies, no file can be deleted.
    fs::remove_file(&file).unwrap();
    fs::create_dir(&file).unwrap();
    assert_eq!(shelf.throw_away(&paper).unwrap().warnings, ["photo-left"]);
    assert_eq!(shelf.line(&paper).line.struck.as_deref(), Some("blurred"));
    let refusal = shelf.door.ask(Request::Check).unwrap_err();
    assert!(refusal.values["path"].contains("photos"), "{refusal:?}");
    fs::remove_dir(&file).unwrap();
    assert_eq!(shelf.check(), (0, Vec::new()));
}

#[test]
fn a_webp_goes_in_as_the_same_paper_and_a_heic_does_not() {
    let mut shelf = shelf();
    let paper = shelf.take_in(1);
    // Both formats are lossless here, so the pixels are the same and the photo is.
    let known = shelf.door.take_in(&shelf.book, &photo(1, ImageFormat::WebP)).unwrap();
    assert_eq!((known.papers, known.warnings), (vec![paper], vec!["paper-known".to_owned()]));
    shelf.door.take_in(&shelf.book, &photo(2, ImageFormat::WebP)).unwrap();
    assert_eq!(shelf.tray().len(), 2);
    let refusal = shelf.door.take_in(&shelf.book, b"\0\0\0\x18ftypheic\0\0\0\0").unwrap_err();
    assert_eq!(
        (refusal.code.as_str(), refusal.values["format"].as_str()),
        ("image-foreign", "a HEIC picture")
    );
}

/// A sheet on a dark table, with its corners.
fn sheet_on_a_table() -> (Vec<u8>, [[f64; 2]; 4]) {
    let on_it = |x: u32, y: u32| (120..480).contains(&x) && (160..640).contains(&y);
    let shade = |x, y| if on_it(x, y) { [240, 238, 230] } else { [40, 36, 34] };
    let mut bytes = Cursor::new(Vec::new());
    let photo = RgbImage::from_fn(600, 800, |x, y| Rgb(shade(x, y)));
    photo.write_to(&mut bytes, ImageFormat::Png).unwrap();
    (bytes.into_inner(), [[0.2, 0.2], [0.8, 0.2], [0.8, 0.8], [0.2, 0.8]])
}

#[test]
fn the_corners_that_were_found_are_handed_out_and_none_are_made_up() {
    let mut shelf = shelf();
    let (photo, drawn) = sheet_on_a_table();
    let paper = shelf.door.take_in(&shelf.book, &photo).unwrap().papers.remove(0);
    let whole = shelf.door.whole_photo(&shelf.book, &paper).unwrap();
    let found = door::found_corners(&whole).unwrap().unwrap();
    for ([x, y], [across, down]) in found.into_iter().zip(drawn) {
        assert!((x - across).abs() < 0.03 && (y - down).abs() < 0.03, "{found:?}");
    }
    let plain = shelf.take_in(1);
    let whole = shelf.door.whole_photo(&shelf.book, &plain).unwrap();
    assert_eq!(door::found_corners(&whole).unwrap(), None);
}

/// A document of two pages that hold nothing, small and large.
fn document() -> Vec<u8> {
    let objects = [
        "<</Type/Catalog/Pages 2 0 R>>",
        "<</Type/Pages/Kids[3 0 R 4 0 R]/Count 2>>",
        "<</Type/Page/Parent 2 0 R/MediaBox[0 0 200 300]>>",
        "<</Type/Page/Parent 2 0 R/MediaBox[0 0 420 300]>>",
    ];
    let mut text = "%PDF-1.7\n".to_owned();
    let mut places = Vec::new();
    for (number, object) in (1..).zip(objects) {
        places.push(format!("{:010} 00000 n \n", text.len()));
        writeln!(text, "{number} 0 obj{object}endobj").unwrap();
    }
    let start = text.len();
    let table = places.concat();
    write!(text, "xref\n0 5\n0000000000 65535 f \n{table}trailer<</Size 5/Root 1 0 R>>\n").unwrap();
    write!(text, "startxref\n{start}\n%%EOF\n").unwrap();
    text.into_bytes()
}

#[test]
fn a_document_is_kept_as_it_is_and_each_page_is_a_paper() {
    let mut shelf = shelf();
    let filed = shelf.door.take_in(&shelf.book, &document()).unwrap();
    assert_eq!((filed.papers.len(), filed.warnings.len()), (2, 0));
    let again = shelf.door.take_in(&shelf.book, &document()).unwrap();
    assert_eq!((again.papers, again.warnings.len()), (filed.papers.clone(), 2));
    assert_eq!(shelf.documents(), 1);
    shelf.throw_away(&filed.papers[0]).unwrap();
    assert_eq!(shelf.documents(), 1);
    shelf.throw_away(&filed.papers[1]).unwrap();
    assert_eq!(shelf.files(), Vec::<PathBuf>::new(), "the last page takes the document with it");
}

#[test]
fn a_document_comes_out_as_it_came_in() {
    let mut shelf = shelf();
    let papers = shelf.door.take_in(&shelf.book, &document()).unwrap().papers;
    for (page, paper) in (1..).zip(&papers) {
        let kept = shelf.door.document(&shelf.book, paper).unwrap();
        let view = kept.view().unwrap();
        assert_eq!((view.page, view.pages), (page, Some(2)));
        assert_eq!(kept.read().unwrap(), document());
    }
    // Straightened or not, it is a page of the same document.
    let whole = shelf.door.whole_photo(&shelf.book, &papers[0]).unwrap();
    let corners = [[0.1, 0.1], [0.9, 0.1], [0.9, 0.9], [0.1, 0.9]];
    let straight = door::straighten_photo(&whole, corners).unwrap();
    shelf.door.put_straight(&shelf.book, &papers[0], Some(&straight)).unwrap();
    assert_eq!(shelf.door.document(&shelf.book, &papers[0]).unwrap().read().unwrap(), document());
}

#[test]
fn a_document_that_is_not_there_is_refused() {
    let mut shelf = shelf();
    let papers = shelf.door.take_in(&shelf.book, &document()).unwrap().papers;
    let (photo, visit) = (shelf.take_in(1), shelf.visit(&[&papers[1]]));
    for line in [&photo, &visit] {
        assert_eq!(shelf.door.document(&shelf.book, line).unwrap_err().code, "no-document");
    }
    let none = "0".repeat(32);
    assert_eq!(shelf.door.document(&shelf.book, &none).unwrap_err().code, "no-such-line");

    // The other page keeps the document on the disk, and the page that was thrown away does not give it out.
    shelf.throw_away(&papers[0]).unwrap();
    assert_eq!(shelf.door.document(&shelf.book, &papers[0]).unwrap_err().code, "thrown-away");
    let kept = shelf.door.document(&shelf.book, &papers[1]).unwrap();
    assert_eq!(kept.read().unwrap(), document());

    let file = shelf.files().into_iter().find(|file| file.extension().unwrap() == "pdf").unwrap();
    fs::write(&file, [document(), b"one byte more".to_vec()].concat()).unwrap();
    let refused = || (kept.read().unwrap_err().code, kept.view().unwrap_err().code);
    assert_eq!(refused(), ("document-changed".to_owned(), "document-changed".to_owned()));
    fs::remove_file(&file).unwrap();
    assert_eq!(refused(), ("document-missing".to_owned(), "document-missing".to_owned()));
}

#[test]
fn a_document_of_which_a_page_cannot_be_kept_leaves_nothing() {
    let mut shelf = shelf();
    let door::Intake::Document { pages, .. } = door::prepare_paper(&document()).unwrap() else { panic!() };
    let entries = |shelf: &mut Shelf| {
        let Response::Check(check) = shelf.door.ask(Request::Check).unwrap() else { panic!() };
        check.entries
    };
    let before = entries(&mut shelf);
    for page in &pages {
        // Where a folder lies, no photo can be renamed to.
        let file = shelf.file("photos", &page.photo().hash.to_string());
        fs::create_dir_all(&file).unwrap();
        shelf.door.take_in(&shelf.book, &document()).unwrap_err();
        assert_eq!((shelf.tray().len(), entries(&mut shelf)), (0, before));
        assert_eq!(shelf.files(), Vec::<PathBuf>::new(), "nor is a photo or the document left");
        fs::remove_dir(&file).unwrap();
    }
    // One page is in the tray of another car: what was there before is not taken away.
    let other = shelf.add_car("Heron");
    let there = shelf.door.take_in(&other, &document()).unwrap().papers;
    let kept = shelf.files().len();
    let file = shelf.file("photos", &pages[1].photo().hash.to_string());
    fs::remove_file(&file).unwrap();
    fs::create_dir(&file).unwrap();
    shelf.door.take_in(&shelf.book, &document()).unwrap_err();
    assert_eq!((shelf.tray().len(), there.len(), shelf.documents()), (0, 2, 1));
    fs::remove_dir(&file).unwrap();
    assert_eq!(shelf.door.take_in(&shelf.book, &document()).unwrap().papers.len(), 2);
    assert_eq!(shelf.files().len(), kept);
}

/// Has every file of the store count as written two hours ago.
fn age(shelf: &Shelf) {
    let earlier = std::time::SystemTime::now() - std::time::Duration::from_hours(2);
    for file in shelf.files() {
        fs::OpenOptions::new().write(true).open(file).unwrap().set_modified(earlier).unwrap();
    }
}

impl Shelf {
    fn unnamed(&mut self) -> usize {
        let Response::Check(check) = self.door.ask(Request::Check).unwrap() else { panic!() };
        assert_eq!(check.faults.len(), 0);
        check.unnamed
    }

    fn cleared(&mut self) -> usize {
        let Response::Rebuilt(rebuilt) = self.door.ask(Request::Rebuild).unwrap() else { panic!() };
        rebuilt.cleared
    }
}

#[test]
fn what_an_intake_left_before_its_entries_is_found_and_cleared_and_nothing_else_is() {
    let mut shelf = shelf();
    let (photo, _) = sheet_on_a_table();
    let paper = shelf.door.take_in(&shelf.book, &photo).unwrap().papers.remove(0);
    let whole = shelf.door.whole_photo(&shelf.book, &paper).unwrap();
    // Two versions of one paper, of which the pages of the book show the last: all three pictures are named.
    let drawn = [[0.1, 0.1], [0.9, 0.12], [0.85, 0.9], [0.1, 0.95]];
    let straight = door::straighten_photo(&whole, drawn).unwrap();
    shelf.door.put_straight(&shelf.book, &paper, Some(&straight)).unwrap();
    shelf.door.take_in(&shelf.book, &document()).unwrap();
    age(&shelf);
    let named = shelf.files();
    assert_eq!((shelf.unnamed(), shelf.cleared()), (0, 0));

    // As if the program had died between the photos and the entries: its files are there and nothing names them.
    let stray = shelf.folder.path().join("stray");
    let mut elsewhere = open(&stray);
    let vehicle = VehicleForm {
        name: "Heron".to_owned(),
        engine: "petrol".to_owned(),
        unit: "km".to_owned(),
        ..VehicleForm::default()
    };
    let Response::Written(car) = elsewhere.ask(Request::AddVehicle { vehicle }).unwrap() else { panic!() };
    let other = String::from_utf8(document()).unwrap().replace("420", "421").into_bytes();
    elsewhere.take_in(&car.book, &other).unwrap();
    for tree in ["photos", "thumbs", "documents"] {
        for folder in fs::read_dir(stray.join("photos").join(tree)).unwrap() {
            let folder = folder.unwrap();
            let to = shelf.folder.path().join("photos").join(tree).join(folder.file_name());
            fs::create_dir_all(&to).unwrap();
            for file in fs::read_dir(folder.path()).unwrap() {
                let file = file.unwrap();
                fs::copy(file.path(), to.join(file.file_name())).unwrap();
            }
        }
    }
    assert_eq!((shelf.unnamed(), shelf.cleared()), (0, 0), "so young, their entries may be on their way");
    age(&shelf);
    assert_eq!(shelf.unnamed(), 2, "one page and the document; the other page looks like one that is named");
    assert_eq!((shelf.cleared(), shelf.unnamed()), (2, 0));
    let (mut left, mut named) = (shelf.files(), named);
    left.sort();
    named.sort();
    assert_eq!(left, named);
}

#[test]
fn an_intake_that_is_stopped_leaves_nothing_and_the_next_one_goes_on() {
    let mut shelf = shelf();
    let intakes = door::Intakes::default();
    let book = shelf.book.clone();
    // Before it came, while it is worked on, and after that, before it is filed.
    intakes.stop("early");
    let refused = intakes.begin("early").prepare(&document(), &|| false).unwrap_err();
    assert_eq!(refused.code, "intake-stopped");
    let begun = intakes.begin("midway");
    let looks = std::sync::atomic::AtomicU32::new(0);
    let midway = || looks.fetch_add(1, std::sync::atomic::Ordering::Relaxed) == 3;
    assert_eq!(begun.prepare(&document(), &midway).unwrap_err().code, "intake-stopped");
    let progress = intakes.progress("midway").unwrap();
    assert_eq!((progress.done, progress.of), (3, 6));
    drop(begun);
    assert_eq!(intakes.progress("midway"), None, "a ticket is used once");
    let begun = intakes.begin("late");
    let intake = begun.prepare(&document(), &|| false).unwrap();
    intakes.stop("late");
    assert_eq!(begun.file(&mut shelf.door, &book, &intake).unwrap_err().code, "intake-stopped");
    assert_eq!((shelf.tray().len(), shelf.files()), (0, Vec::new()));

    let begun = intakes.begin("next");
    let intake = begun.prepare(&document(), &|| false).unwrap();
    assert_eq!(begun.file(&mut shelf.door, &book, &intake).unwrap().papers.len(), 2);
}

#[test]
fn pages_that_look_the_same_are_one_paper() {
    let mut shelf = shelf();
    let twice = String::from_utf8(document()).unwrap().replace("[0 0 420 300]", "[0 0 200 300]").into_bytes();
    let filed = shelf.door.take_in(&shelf.book, &twice).unwrap();
    assert_eq!(filed.papers[0], filed.papers[1]);
    assert_eq!((filed.warnings, shelf.tray().len()), (vec!["paper-known".to_owned()], 1));
}

#[test]
fn of_a_document_each_page_is_read() {
    let wanted = door::ToRead::file(&document(), "2026-06-01".parse().unwrap()).unwrap();
    let door::WantedFile::Pages(pages) = wanted else { panic!("{wanted:?}") };
    assert_eq!(pages.len(), 2);
}

/// A photo straightened by the owner, put back, and thrown away with everything that was kept for it.
#[test]
fn corners_drawn_by_the_owner_hold_until_he_takes_them_back() {
    let mut shelf = shelf();
    let paper = shelf.take_in(1);
    let (book, before) = (shelf.book.clone(), shelf.hash(&paper));
    let whole = shelf.door.whole_photo(&book, &paper).unwrap();
    let corners = [[0.1, 0.1], [0.9, 0.12], [0.85, 0.9], [0.1, 0.95]];
    let straight = door::straighten_photo(&whole, corners).unwrap();
    shelf.door.put_straight(&book, &paper, Some(&straight)).unwrap();
    assert_ne!(shelf.hash(&paper), before);
    assert_eq!(
        shelf.door.whole_photo(&book, &paper).unwrap(),
        whole,
        "corners are always drawn on the whole"
    );
    let again = shelf.door.take_in(&book, &photo(1, ImageFormat::Png)).unwrap();
    assert_eq!(again.papers.as_slice(), std::slice::from_ref(&paper), "the same photo is the same paper");
    shelf.door.put_straight(&book, &paper, None).unwrap();
    assert_eq!(shelf.hash(&paper), before);
    shelf.throw_away(&paper).unwrap();
    assert_eq!(shelf.files(), Vec::<PathBuf>::new());
}
