-- The ink. A row is never changed and never deleted; what stands beside the bytes is read from them, for the index.
--
-- Every index is one more page of the file that each commit writes to the disk, so there is one. It keeps hashes
-- unique too: two rows with one hash would have the same bytes, and with them the same book, writer and number.
CREATE TABLE entry (
    place     INTEGER PRIMARY KEY,
    book      BLOB NOT NULL CHECK (length(book) = 16),
    writer    BLOB NOT NULL CHECK (length(writer) = 32),
    number    INTEGER NOT NULL CHECK (number >= 0),
    time      INTEGER NOT NULL CHECK (time >= 0),
    subject   BLOB NOT NULL CHECK (length(subject) = 16),
    hash      BLOB NOT NULL CHECK (length(hash) = 32),
    bytes     BLOB NOT NULL,
    signature BLOB NOT NULL CHECK (length(signature) = 64),
    UNIQUE (book, writer, number)
) STRICT;

-- What belongs to this device and to no book.
CREATE TABLE setting (
    name  TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
