//! The store: the same photo once, nothing half, and every changed byte found.

use std::fs;
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime};

use image::imageops::FilterType;
use image::{DynamicImage, Rgb, RgbImage};
use paper::{LEFT_OVER_AGE, PaperError, PhotoStore};
use sha2::{Digest, Sha256};
use tempfile::TempDir;
use units::Hash;

use crate::draw::{jpeg, marked, pixels, png};

fn store() -> (TempDir, PhotoStore) {
    let folder = tempfile::tempdir().unwrap();
    let store = PhotoStore::open(folder.path(), SystemTime::UNIX_EPOCH).unwrap();
    (folder, store)
}

fn photo() -> Vec<u8> {
    jpeg(&marked(64, 48).resize_exact(800, 600, FilterType::Nearest))
}

/// All files below a folder, in ascending order.
fn files(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() { found.extend(files(&path)) } else { found.push(path) }
    }
    found.sort();
    found
}

fn path(root: &TempDir, tree: &str, hash: Hash) -> PathBuf {
    let name = hash.to_string();
    root.path().join(tree).join(&name[..2]).join(format!("{name}.jpg"))
}

#[test]
fn a_photo_is_kept_under_the_hash_of_its_bytes() {
    let (root, store) = store();
    let photo = store.take_in(&photo()).unwrap();
    let stored = fs::read(path(&root, "photos", photo.hash)).unwrap();
    assert_eq!(photo.hash, Hash(Sha256::digest(&stored).into()));
    assert_eq!(photo.bytes, stored.len() as u64);
    assert_eq!((photo.width, photo.height), (800, 600));
    assert_eq!(store.full(photo.hash).unwrap(), stored);
    assert_eq!(pixels(&store.thumb(photo.hash).unwrap()).dimensions(), (320, 240));
    assert!(store.has(photo.hash));
    store.check(photo.hash).unwrap();
}

#[test]
fn the_same_photo_twice_is_one_paper() {
    let (root, store) = store();
    let first = store.take_in(&photo()).unwrap();
    let written = |tree| fs::metadata(path(&root, tree, first.hash)).unwrap().modified().unwrap();
    let before = (written("photos"), written("thumbs"));
    assert_eq!(store.take_in(&photo()).unwrap(), first);
    assert_eq!((written("photos"), written("thumbs")), before);
    let expected = [path(&root, "photos", first.hash), path(&root, "thumbs", first.hash)];
    assert_eq!(files(root.path()), expected);
    assert_ne!(store.take_in(&png(&marked(64, 48))).unwrap().hash, first.hash);
}

#[test]
fn a_photo_that_is_not_there_is_not_found() {
    let (_root, store) = store();
    let hash = Hash([0xAB; 32]);
    assert!(!store.has(hash));
    for missing in [store.full(hash).map(drop), store.thumb(hash).map(drop), store.check(hash)] {
        let error = missing.unwrap_err();
        assert!(matches!(error, PaperError::NotFound(named) if named == hash));
        assert!(error.to_string().contains(&hash.to_string()));
    }
}

#[test]
fn a_photo_that_is_removed_leaves_nothing_and_can_be_taken_in_again() {
    let (root, store) = store();
    let other = store.take_in(&png(&marked(32, 32))).unwrap().hash;
    let kept = files(root.path());
    let hash = store.take_in(&photo()).unwrap().hash;
    store.remove(hash).unwrap();
    assert_eq!(files(root.path()), kept);
    assert!(!store.has(hash));
    assert!(matches!(store.thumb(hash), Err(PaperError::NotFound(_))));
    store.remove(hash).unwrap();
    store.check(other).unwrap();
    store.take_in(&photo()).unwrap();
    store.check(hash).unwrap();
}

#[test]
fn a_removal_that_was_interrupted_can_be_finished() {
    let (root, store) = store();
    let hash = store.take_in(&photo()).unwrap().hash;
    fs::remove_file(path(&root, "thumbs", hash)).unwrap();
    assert!(store.has(hash));
    store.remove(hash).unwrap();
    assert!(files(root.path()).is_empty());
}

#[test]
fn a_photo_that_cannot_be_removed_is_named() {
    let (root, store) = store();
    let hash = store.take_in(&photo()).unwrap().hash;
    let path = path(&root, "photos", hash);
    fs::remove_file(&path).unwrap();
    fs::create_dir(&path).unwrap();
    assert!(store.remove(hash).unwrap_err().to_string().contains(&hash.to_string()));
}

#[test]
fn a_flipped_byte_is_found_wherever_it_is() {
    let (root, store) = store();
    let photo = store.take_in(&png(&marked(32, 32))).unwrap();
    let path = path(&root, "photos", photo.hash);
    let whole = fs::read(&path).unwrap();
    for at in 0..whole.len() {
        let mut bytes = whole.clone();
        bytes[at] ^= 0x10;
        fs::write(&path, bytes).unwrap();
        assert!(
            matches!(store.check(photo.hash), Err(PaperError::Damaged(named)) if named == photo.hash),
            "byte {at}"
        );
    }
    fs::write(&path, &whole[..whole.len() - 1]).unwrap();
    assert!(matches!(store.check(photo.hash), Err(PaperError::Damaged(_))));
}

#[test]
fn taking_a_damaged_photo_in_again_mends_it() {
    let (root, store) = store();
    let hash = store.take_in(&photo()).unwrap().hash;
    fs::write(path(&root, "photos", hash), b"").unwrap();
    assert!(store.check(hash).is_err());
    store.take_in(&photo()).unwrap();
    store.check(hash).unwrap();
}

#[test]
fn a_lost_thumbnail_is_made_again() {
    let (root, store) = store();
    let hash = store.take_in(&photo()).unwrap().hash;
    let thumb = path(&root, "thumbs", hash);
    fs::remove_dir_all(root.path().join("thumbs")).unwrap();
    let made = pixels(&store.thumb(hash).unwrap());
    assert_eq!(made.dimensions(), (320, 240));
    assert!(made.get_pixel(20, 20).0[0] < 30 && made.get_pixel(300, 20).0[0] > 225);
    assert_eq!(fs::read(&thumb).unwrap(), store.thumb(hash).unwrap());
}

#[test]
fn a_thumbnail_that_never_reached_the_disk_is_made_again() {
    let (root, store) = store();
    let hash = store.take_in(&photo()).unwrap().hash;
    let path = path(&root, "thumbs", hash);
    let whole = fs::read(&path).unwrap();
    for left in [vec![], vec![0; whole.len()], whole[..whole.len() / 2].to_vec()] {
        fs::write(&path, left).unwrap();
        assert_eq!(pixels(&store.thumb(hash).unwrap()).dimensions(), (320, 240));
    }
}

#[test]
fn a_straightened_paper_and_the_whole_photo_are_both_kept() {
    let (root, store) = store();
    let prepared = paper::prepare(&slip()).unwrap();
    let whole = prepared.whole().unwrap().photo();
    let paper = store.keep(&prepared).unwrap();
    assert_eq!(paper, prepared.photo());
    assert_ne!(paper.hash, whole.hash);
    assert_eq!((whole.width, whole.height), (800, 600));
    assert_eq!(files(root.path()).len(), 4);
    for photo in [paper, whole] {
        store.check(photo.hash).unwrap();
        assert_eq!(pixels(&store.full(photo.hash).unwrap()).dimensions(), (photo.width, photo.height));
    }
    // Either is removed without the other.
    store.remove(paper.hash).unwrap();
    store.check(whole.hash).unwrap();
    store.remove(whole.hash).unwrap();
    assert!(files(root.path()).is_empty());
}

/// A white slip of 400 x 300 pixels on a dark table.
fn slip() -> Vec<u8> {
    let on_slip = |x: u32, y: u32| (200..600).contains(&x) && (150..450).contains(&y);
    jpeg(&DynamicImage::ImageRgb8(RgbImage::from_fn(800, 600, |x, y| {
        Rgb([if on_slip(x, y) { 240 } else { 60 }; 3])
    })))
}

#[test]
fn a_thumbnail_that_cannot_be_kept_is_shown_all_the_same() {
    let (root, store) = store();
    let hash = store.take_in(&photo()).unwrap().hash;
    fs::remove_dir_all(root.path().join("thumbs")).unwrap();
    fs::write(root.path().join("thumbs"), b"no folder").unwrap();
    assert_eq!(pixels(&store.thumb(hash).unwrap()).dimensions(), (320, 240));
}

#[test]
fn a_thumbnail_of_a_damaged_photo_names_the_photo() {
    let (root, store) = store();
    let hash = store.take_in(&photo()).unwrap().hash;
    fs::remove_file(path(&root, "thumbs", hash)).unwrap();
    fs::write(path(&root, "photos", hash), b"").unwrap();
    assert!(matches!(store.thumb(hash), Err(PaperError::Damaged(named)) if named == hash));
}

#[test]
fn what_an_interrupted_intake_left_is_swept_once_it_is_old() {
    let (root, store) = store();
    let photo = store.take_in(&photo()).unwrap();
    let kept = files(root.path());
    let left = path(&root, "photos", photo.hash).with_file_name(".intake-Ab3dEf.part");
    fs::write(&left, &store.full(photo.hash).unwrap()[..100]).unwrap();
    let written = fs::metadata(&left).unwrap().modified().unwrap();

    PhotoStore::open(root.path(), written - LEFT_OVER_AGE * 2).unwrap();
    PhotoStore::open(root.path(), written + LEFT_OVER_AGE).unwrap();
    assert!(left.exists(), "it may still be written at this age");
    PhotoStore::open(root.path(), written + LEFT_OVER_AGE + Duration::from_secs(1)).unwrap();
    assert_eq!(files(root.path()), kept);
}

#[test]
fn a_half_written_photo_has_no_name() {
    let (root, store) = store();
    let prepared = paper::prepare(&photo()).unwrap();
    let hash = prepared.photo().hash;
    // A file lies where the photo's folder must be, so the intake breaks off between thumbnail and photo.
    let obstacle = root.path().join("photos").join(&hash.to_string()[..2]);
    fs::write(&obstacle, b"").unwrap();
    assert!(store.keep(&prepared).unwrap_err().to_string().contains("photos"));
    assert!(!store.has(hash));
    assert_eq!(files(root.path()), [obstacle.clone(), path(&root, "thumbs", hash)]);

    fs::remove_file(obstacle).unwrap();
    store.keep(&prepared).unwrap();
    store.check(hash).unwrap();
}

#[test]
fn a_refused_file_leaves_nothing() {
    let (root, store) = store();
    assert!(store.take_in(b"PK\x03\x04 pretends to be a photo").is_err());
    assert!(store.take_in(&photo()[..2000]).is_err());
    assert!(files(root.path()).is_empty());
}

#[test]
fn a_store_where_a_file_lies_says_which() {
    let root = tempfile::tempdir().unwrap();
    let file = root.path().join("shelf");
    fs::write(&file, b"").unwrap();
    let error = PhotoStore::open(&file, SystemTime::UNIX_EPOCH).unwrap_err();
    assert!(error.to_string().contains(&*file.join("photos").to_string_lossy()), "{error}");
}
