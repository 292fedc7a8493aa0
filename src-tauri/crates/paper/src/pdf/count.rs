//! How many pages a document has, for saying which of them a paper is.

use std::sync::Arc;
use std::thread;

use hayro::hayro_syntax::Pdf;

use super::{STACK, check_document, guard};

/// How many pages a PDF has; nothing where that cannot be told without danger.
///
/// A document that came with a book was never set here, so that it is looked over as one that comes in is.
pub fn page_count(bytes: &[u8]) -> Option<usize> {
    check_document(bytes).ok()?;
    guard::check(bytes).ok()?;
    let bytes = Arc::new(bytes.to_vec());
    let counter = thread::Builder::new().name("page count".to_owned()).stack_size(STACK);
    let counting = counter.spawn(move || Some(Pdf::new(bytes).ok()?.pages().len())).ok()?;
    counting.join().ok()?
}
