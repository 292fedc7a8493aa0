-- The ink. A row is never changed and never deleted; what stands beside the bytes is read from them, for the index.
CREATE TABLE entry (
    place     INTEGER PRIMARY KEY AUTOINCREMENT,
    book      BLOB NOT NULL CHECK (length(book) = 16),
    writer    BLOB NOT NULL CHECK (length(writer) = 32),
    number    INTEGER NOT NULL CHECK (number >= 0),
    time      INTEGER NOT NULL CHECK (time >= 0),
    subject   BLOB NOT NULL CHECK (length(subject) = 16),
    hash      BLOB NOT NULL UNIQUE CHECK (length(hash) = 32),
    bytes     BLOB NOT NULL,
    signature BLOB NOT NULL CHECK (length(signature) = 64),
    UNIQUE (book, writer, number)
) STRICT;

-- The order in which a book is folded.
CREATE INDEX entry_fold ON entry (book, time, writer, number);
-- The versions of a line.
CREATE INDEX entry_subject ON entry (book, subject);

-- What belongs to this device and to no book.
CREATE TABLE setting (
    name  TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
