//! How much of each thing a file may hold.

/// The most entries in one file.
pub const MOST_ENTRIES: u64 = 500_000;
/// The most bytes of one entry: 1 MiB.
pub const MOST_ENTRY_BYTES: usize = 1024 * 1024;
/// The most bytes of all entries with their signatures: 64 MiB.
pub const MOST_ENTRIES_BYTES: u64 = 64 * 1024 * 1024;
/// The most photos, and the most documents, in one file.
pub const MOST_PAPERS: usize = 100_000;
/// The most bytes of a manifest: 16 MiB.
pub const MOST_MANIFEST_BYTES: u64 = 16 * 1024 * 1024;
/// The most bytes of a kept photo: 16 MiB. One of 2400 x 2400 pixels of noise has less than half of that.
pub const MOST_PHOTO_BYTES: u64 = 16 * 1024 * 1024;
/// The work factor of a lock, as the power of two that scrypt takes for N, with r = 8 and p = 1: 17, which takes
/// 128 MiB. The OWASP Password Storage Cheat Sheet asks for at least this much.
pub const WORK_FACTOR: u8 = 17;
/// The largest work factor that is opened: 18, which takes 256 MiB; what age's own program writes.
pub const MOST_WORK: u8 = 18;
/// The most bytes of a passphrase.
pub const LONGEST_PASSPHRASE: usize = 1024;
