//! A file goes out and comes in as it was; anything else is refused in one sentence, and nothing is written.
#![allow(clippy::unwrap_used)]

use std::fs::{self, File};
use std::io::{Seek, SeekFrom, Write};
use std::path::PathBuf;
use std::time::SystemTime;

use book::content::{Content, PageContent, PaperContent, VehicleContent};
use book::entry::{Signed, Writer};
use book::{Change, Shelf, Stamp};
use paper::{Kept, PhotoStore};
use proptest::prelude::*;
use rules::vehicle::{Conditions, EngineKind, Equipment};
use tar::{Builder, Header};
use units::cbor::{self, CborValue, MapWriter};
use units::{BookId, DistanceUnit, Hash};

use super::*;

/// A household with one book and one paper, a page of a document, and a folder for files.
struct House {
    folder: tempfile::TempDir,
    shelf: Shelf,
    book: BookId,
    store: PhotoStore,
    papers: Vec<(Kept, Hash)>,
}

fn stamp(count: u64) -> Stamp {
    let mut random = [0; 10];
    random[..8].copy_from_slice(&count.to_be_bytes());
    Stamp { now: 1_700_000_000_000 + count * 1_000, random }
}

fn vehicle() -> VehicleContent {
    VehicleContent {
        name: "Thistle".to_owned(),
        make_model: String::new(),
        vin: None,
        engine: EngineKind::Petrol,
        unit: DistanceUnit::Kilometre,
        first_use: None,
        from_new: false,
        yearly: None,
        conditions: Conditions::default(),
        equipment: Equipment::default(),
        values: [].into(),
    }
}

/// The smallest file that is taken for a PDF.
const PDF: &[u8] = b"%PDF-1.4\n%%EOF\n";

fn house() -> House {
    let folder = tempfile::tempdir().unwrap();
    let store = PhotoStore::open(&folder.path().join("photos"), SystemTime::now()).unwrap();
    let picture = image::RgbImage::from_fn(40, 60, |x, y| {
        image::Rgb([u8::try_from(x).unwrap(), u8::try_from(y).unwrap(), 7])
    });
    let jpeg = paper::encode(&picture).unwrap();
    let photo = store.take_in(&jpeg).unwrap();
    let document = store.keep_document(PDF).unwrap();
    let mut shelf = Shelf::in_memory(Writer::from_secret(&[1; 32])).unwrap();
    let book = shelf.begin(stamp(0), vehicle()).unwrap().book;
    let page = Some(PageContent { document, number: 1 });
    let paper = PaperContent { photo: photo.hash, width: 40, height: 60, whole: None, page };
    shelf.append(stamp(1), book, Change::Begin(Content::Paper(paper))).unwrap();
    let papers = vec![(Kept::Photo, photo.hash), (Kept::Document, document)];
    House { folder, shelf, book, store, papers }
}

impl House {
    fn contents(&self) -> Contents {
        let (papers, store) = (self.papers.clone(), self.store.clone());
        Contents { book: self.book, entries: self.shelf.entries(self.book).unwrap(), papers, store }
    }

    fn packed(&self, passphrase: Option<&str>) -> Vec<u8> {
        let passphrase = passphrase.map(|text| Passphrase::new(text.to_owned()).unwrap());
        let mut bytes = Vec::new();
        pack(&self.contents(), passphrase.as_ref(), &mut bytes).unwrap();
        bytes
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    /// A store that holds nothing yet.
    fn other_store(&self) -> PhotoStore {
        PhotoStore::open(&self.path("other"), SystemTime::now()).unwrap()
    }
}

fn open(bytes: &[u8], passphrase: Option<&str>) -> Result<Parcel, ExchangeError> {
    let mut file = tempfile::tempfile().unwrap();
    file.write_all(bytes).unwrap();
    file.seek(SeekFrom::Start(0)).unwrap();
    let passphrase = passphrase.map(|text| Passphrase::new(text.to_owned()).unwrap());
    Parcel::open(file, passphrase.as_ref())
}

fn refused(bytes: &[u8]) -> ExchangeError {
    open(bytes, None).map(drop).unwrap_err()
}

/// An archive of our own making: members in any order with any bytes.
fn archive(members: &[(&str, &[u8])]) -> Vec<u8> {
    let mut builder = Builder::new(Vec::new());
    for (name, bytes) in members {
        let mut header = Header::new_ustar();
        // Written as bytes, because a path of another kind would be refused before it is there.
        header.as_mut_bytes()[..name.len()].copy_from_slice(name.as_bytes());
        header.set_size(bytes.len() as u64);
        header.set_mode(0o644);
        header.set_cksum();
        builder.append(&header, *bytes).unwrap();
    }
    builder.into_inner().unwrap()
}

fn sequence(entries: &[Signed]) -> Vec<u8> {
    let item = |signed: &Signed| {
        let pair = [signed.bytes.clone(), signed.signature.to_vec()].map(CborValue::Bytes);
        cbor::encode(&CborValue::Array(pair.to_vec()))
    };
    entries.iter().flat_map(item).collect()
}

fn manifest(book: BookId, entries: u64, bytes: usize, photos: &[CborValue]) -> Vec<u8> {
    let map = MapWriter::new().put(1, &1_u64).put(2, &book).put(3, &entries).put(4, &(bytes as u64));
    cbor::encode(&map.put(5, &photos.to_vec()).put(6, &Vec::<CborValue>::new()).finish())
}

#[test]
fn a_book_and_its_papers_come_out_as_they_went_in() {
    let house = house();
    for passphrase in [None, Some("a long day at the lake")] {
        let bytes = house.packed(passphrase);
        let mut parcel = open(&bytes, passphrase).unwrap();
        assert_eq!(parcel.book(), house.book);
        assert_eq!(parcel.entries(), house.shelf.entries(house.book).unwrap());
        let store = house.other_store();
        let new = parcel.keep_papers(&store).unwrap();
        for (kept, hash) in &house.papers {
            store.check_kept(*kept, *hash).unwrap();
        }
        // The store is the same one the second time.
        assert_eq!(new, if passphrase.is_none() { 2 } else { 0 });
    }
}

#[test]
fn the_same_book_gives_the_same_bytes_unless_it_is_locked() {
    let house = house();
    assert_eq!(house.packed(None), house.packed(None));
    assert_ne!(house.packed(Some("x")), house.packed(Some("x")));
    // Nothing of the book can be read in a locked file.
    let locked = house.packed(Some("x"));
    assert!(locked.starts_with(b"age-encryption.org/v1\n-> scrypt "));
    assert!(!locked.windows(7).any(|window| window == b"Thistle"));
    assert!(house.packed(None).windows(7).any(|window| window == b"Thistle"));
}

#[test]
fn a_locked_file_opens_with_its_passphrase_alone() {
    let house = house();
    let bytes = house.packed(Some("Wälzlager 7"));
    assert!(matches!(open(&bytes, None), Err(ExchangeError::Locked)));
    assert!(matches!(open(&bytes, Some("Walzlager 7")), Err(ExchangeError::WrongPassphrase)));
    open(&bytes, Some("Wälzlager 7")).unwrap();
    // One that is not locked needs none, and one that is given does no harm.
    open(&house.packed(None), Some("anything")).unwrap();
    assert!(matches!(Passphrase::new(String::new()), Err(ExchangeError::Passphrase)));
    assert!(matches!(Passphrase::new("x".repeat(1025)), Err(ExchangeError::Passphrase)));
}

#[test]
fn every_cut_is_refused() {
    let house = house();
    let bytes = house.packed(None);
    // The last two blocks are the zeros at the end of the archive, which may be missing.
    for end in (0..bytes.len() - 1024).step_by(97) {
        let refused = refused(&bytes[..end]);
        let expected =
            matches!(refused, ExchangeError::CutShort | ExchangeError::OtherFile | ExchangeError::Damaged(_));
        assert!(expected, "cut at {end}: {refused:?}");
    }
    let locked = house.packed(Some("x"));
    for end in [1, 30, 120, locked.len() / 2, locked.len() - 1] {
        open(&locked[..end], Some("x")).unwrap_err();
    }
}

/// Any changed byte of what the file holds is found, in its form, its hash or, on the shelf, its signature.
#[test]
fn every_changed_byte_is_refused() {
    let house = house();
    let bytes = house.packed(None);
    let mut shelf = Shelf::in_memory(Writer::from_secret(&[2; 32])).unwrap();
    let before = house.shelf.entries(house.book).unwrap();
    for at in (0..bytes.len()).step_by(13) {
        let mut changed = bytes.clone();
        changed[at] ^= 0x20;
        let Ok(parcel) = open(&changed, None) else { continue };
        // What was changed is either padding, or the shelf refuses it.
        if shelf.try_merge(parcel.entries()).is_ok() {
            assert_eq!(parcel.entries(), before, "byte {at}");
        }
    }
    let mut locked = house.packed(Some("x"));
    let last = locked.len() - 1;
    locked[last] ^= 1;
    assert!(matches!(open(&locked, Some("x")), Err(ExchangeError::Damaged(_))));
}

#[test]
fn another_file_is_said_to_be_one() {
    let photo = paper::encode(&image::RgbImage::new(30, 30)).unwrap();
    for bytes in [&b""[..], b"x", &[0; 2000], PDF, &photo, &archive(&[("photos/a.jpg", b"x")])] {
        assert!(matches!(refused(bytes), ExchangeError::OtherFile), "{:?}", &bytes[..bytes.len().min(9)]);
    }
}

#[test]
fn a_newer_version_is_told_from_a_damaged_file() {
    let newer = cbor::encode(&MapWriter::new().put(1, &2_u64).put(9, &true).finish());
    assert!(matches!(refused(&archive(&[("manifest.cbor", &newer)])), ExchangeError::Newer(2)));
    let none = cbor::encode(&MapWriter::new().put(1, &0_u64).finish());
    assert!(matches!(refused(&archive(&[("manifest.cbor", &none)])), ExchangeError::Damaged(_)));
}

#[test]
fn members_stand_where_the_manifest_says_and_nowhere_else() {
    let house = house();
    let entries = sequence(&house.shelf.entries(house.book).unwrap());
    let plain = manifest(house.book, 2, entries.len(), &[]);
    let head = ("manifest.cbor", plain.as_slice());
    let body = ("entries.cbor", entries.as_slice());
    open(&archive(&[head, body]), None).unwrap();
    let wrong: [&[(&str, &[u8])]; 6] = [
        &[head, ("../entries.cbor", &entries)],
        &[head, ("/entries.cbor", &entries)],
        &[head, body, ("photos/../../x.jpg", b"x")],
        &[head, body, body],
        &[head, ("entries.cbor", &entries[1..])],
        &[body, head],
    ];
    for members in wrong {
        let refused = refused(&archive(members));
        let expected = matches!(refused, ExchangeError::Damaged(_) | ExchangeError::OtherFile);
        assert!(expected, "{:?}: {refused:?}", members.iter().map(|(name, _)| name).collect::<Vec<_>>());
    }
    assert!(matches!(refused(&archive(&[head])), ExchangeError::CutShort));
}

#[test]
fn a_link_is_no_member() {
    let house = house();
    let entries = sequence(&house.shelf.entries(house.book).unwrap());
    let mut bytes = archive(&[
        ("manifest.cbor", &manifest(house.book, 2, entries.len(), &[])),
        ("entries.cbor", &entries),
    ]);
    // The second header stands after the first and one block of manifest; byte 156 of a header is its kind.
    let mut header = Header::from_byte_slice(&bytes[1024..1536]).clone();
    header.set_entry_type(tar::EntryType::Symlink);
    header.set_cksum();
    bytes[1024..1536].copy_from_slice(header.as_bytes());
    assert!(matches!(refused(&bytes), ExchangeError::Damaged(_)));
}

#[test]
fn what_no_entry_names_is_refused() {
    let house = house();
    let entries = sequence(&house.shelf.entries(house.book).unwrap());
    let hash = Hash([9; 32]);
    let listed = CborValue::Array(vec![CborValue::Bytes(hash.0.to_vec()), CborValue::from(1)]);
    let head = manifest(house.book, 2, entries.len(), &[listed]);
    let name = format!("photos/{hash}.jpg");
    let bytes = archive(&[("manifest.cbor", &head), ("entries.cbor", &entries), (&name, b"x")]);
    assert!(matches!(refused(&bytes), ExchangeError::Unnamed(found) if found == hash));
}

#[test]
fn a_photo_that_is_another_one_is_named() {
    let house = house();
    let (_, photo) = house.papers[0];
    let bytes = house.packed(None);
    let jpeg = house.store.full(photo).unwrap();
    let at = bytes.windows(jpeg.len()).position(|window| window == jpeg).unwrap();
    let mut changed = bytes.clone();
    changed[at + jpeg.len() / 2] ^= 1;
    assert!(matches!(refused(&changed), ExchangeError::Changed(hash) if hash == photo));
}

/// A name that is true to its bytes does not make a photo of them.
#[test]
fn bytes_that_are_no_photo_are_not_kept() {
    let mut house = house();
    let fake = b"<svg onload='x'/>".to_vec();
    let hash = Hash(<sha2::Sha256 as sha2::Digest>::digest(&fake).into());
    let paper = PaperContent { photo: hash, width: 1, height: 1, whole: None, page: None };
    house.shelf.append(stamp(2), house.book, Change::Begin(Content::Paper(paper))).unwrap();
    let entries = sequence(&house.shelf.entries(house.book).unwrap());
    let listed =
        CborValue::Array(vec![CborValue::Bytes(hash.0.to_vec()), CborValue::from(fake.len() as u64)]);
    let head = manifest(house.book, 3, entries.len(), &[listed]);
    let name = format!("photos/{hash}.jpg");
    let bytes = archive(&[("manifest.cbor", &head), ("entries.cbor", &entries), (&name, &fake)]);
    let store = house.other_store();
    let mut parcel = open(&bytes, None).unwrap();
    assert!(matches!(parcel.keep_papers(&store), Err(ExchangeError::Paper(_))));
    assert!(!store.has(hash));
}

#[test]
fn when_one_paper_can_not_be_kept_none_of_the_new_ones_stays() {
    let house = house();
    let bytes = house.packed(None);
    let store = house.other_store();
    // A file stands where the folder of the document belongs.
    let document = house.papers[1].1;
    fs::write(house.path("other").join("documents").join(format!("{:02x}", document.0[0])), b"x").unwrap();
    let mut parcel = open(&bytes, None).unwrap();
    assert!(parcel.keep_papers(&store).is_err());
    assert!(!store.has(house.papers[0].1));
}

#[test]
fn bounds_are_held_before_memory_is_taken() {
    let book = BookId([7; 16]);
    let most = |entries, bytes| archive(&[("manifest.cbor", &manifest(book, entries, bytes, &[]))]);
    let too_many = refused(&most(MOST_ENTRIES + 1, 10));
    assert!(matches!(too_many, ExchangeError::TooMuch { what: What::Entries, .. }));
    let too_large = refused(&most(1, 64 * 1024 * 1024 + 1));
    assert!(matches!(too_large, ExchangeError::TooMuch { what: What::EntryBytes, .. }));
    // A header may claim any size, and no more is read than is there.
    let bytes =
        archive(&[("manifest.cbor", &manifest(book, 1, 64 * 1024 * 1024, &[])), ("entries.cbor", b"short")]);
    refused(&bytes);
    let mut house = house();
    house.papers.push((Kept::Photo, Hash([3; 32])));
    assert!(matches!(
        pack(&house.contents(), None, std::io::sink()),
        Err(ExchangeError::Paper(paper::PaperError::NotFound(_)))
    ));
}

#[test]
fn a_place_that_is_taken_is_left_alone() {
    let house = house();
    let path = house.path("out.wellkept");
    let mut target = Target::begin(&path).unwrap();
    target.fill(|out| pack(&house.contents(), None, out)).unwrap();
    assert!(!path.exists(), "not before it is whole");
    assert_eq!(target.finish().unwrap(), path);
    Parcel::open(File::open(&path).unwrap(), None).unwrap();
    assert!(matches!(Target::begin(&path), Err(ExchangeError::Exists(_))));
    // One that appears meanwhile is not written over either.
    let late = house.path("late.wellkept");
    let target = Target::begin(&late).unwrap();
    fs::write(&late, b"mine").unwrap();
    assert!(matches!(target.finish(), Err(ExchangeError::Exists(_))));
    assert_eq!(fs::read(&late).unwrap(), b"mine");
    let parts = fs::read_dir(house.folder.path()).unwrap();
    let left = parts.filter(|part| part.as_ref().unwrap().file_name().to_string_lossy().ends_with(".part"));
    assert_eq!(left.count(), 0);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(256))]

    #[test]
    fn no_bytes_do_harm(bytes in proptest::collection::vec(any::<u8>(), 0..4096)) {
        prop_assert!(open(&bytes, None).is_err());
    }

    #[test]
    fn no_member_does_harm(head in proptest::collection::vec(any::<u8>(), 0..600), body in any::<Vec<u8>>()) {
        let bytes = archive(&[("manifest.cbor", &head), ("entries.cbor", &body)]);
        prop_assert!(open(&bytes, None).is_err());
    }
}
