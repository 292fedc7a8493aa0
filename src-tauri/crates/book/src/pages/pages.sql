-- The pages: worked out from the entries, dropped and rebuilt whenever this file changes in meaning
-- (raise PAGES in pages/mod.rs). Keys come from the entries, so that a rebuild gives the very same rows.

-- One row for each line of a book, as it stands.
CREATE TABLE line (
    book    BLOB NOT NULL,
    subject BLOB NOT NULL,
    kind    INTEGER NOT NULL,
    day     INTEGER,           -- days since 1970; what the content names, else the day of writing
    shown   INTEGER,           -- millimetres on the instrument
    fuel    INTEGER NOT NULL,  -- 1 where the line is a reading with fuel
    content BLOB NOT NULL,     -- CBOR of the content as last amended
    written INTEGER NOT NULL,  -- milliseconds since 1970, of the first version
    writer  BLOB NOT NULL,     -- of the first version, with its number the rest of the fold order
    number  INTEGER NOT NULL,
    amended INTEGER NOT NULL DEFAULT 0,
    struck  TEXT,              -- why it was struck out; NULL when it was not
    PRIMARY KEY (book, subject)
) STRICT, WITHOUT ROWID;
CREATE INDEX line_kind ON line (book, kind, day);
CREATE INDEX line_fuel ON line (book, day, written) WHERE fuel = 1 AND struck IS NULL;

-- Every reading that counts, from readings and visits.
CREATE TABLE reading (
    book    BLOB NOT NULL,
    subject BLOB NOT NULL,
    day     INTEGER NOT NULL,
    shown   INTEGER NOT NULL,
    status  INTEGER NOT NULL,
    PRIMARY KEY (book, subject)
) STRICT, WITHOUT ROWID;

-- Every item done in a visit that counts.
CREATE TABLE done (
    book     BLOB NOT NULL,
    subject  BLOB NOT NULL,
    position INTEGER NOT NULL,
    item     INTEGER,          -- of the catalogue
    own      TEXT,             -- of the owner's own
    day      INTEGER NOT NULL,
    shown    INTEGER,
    PRIMARY KEY (book, subject, position),
    CHECK ((item IS NULL) <> (own IS NULL))
) STRICT, WITHOUT ROWID;

-- Every paper that counts, and the visit to which it belongs.
CREATE TABLE paper (
    book    BLOB NOT NULL,
    subject BLOB NOT NULL,
    photo   BLOB NOT NULL,
    width   INTEGER NOT NULL,
    height  INTEGER NOT NULL,
    filed   INTEGER NOT NULL,  -- milliseconds since 1970
    PRIMARY KEY (book, subject)
) STRICT, WITHOUT ROWID;
CREATE TABLE visit_paper (
    book  BLOB NOT NULL,
    visit BLOB NOT NULL,
    paper BLOB NOT NULL,
    PRIMARY KEY (book, visit, paper)
) STRICT, WITHOUT ROWID;
CREATE INDEX visit_paper_paper ON visit_paper (book, paper);

-- Entries that this version keeps without understanding them.
CREATE TABLE newer (
    book BLOB NOT NULL,
    hash BLOB NOT NULL,
    kind INTEGER NOT NULL,
    time INTEGER NOT NULL,
    PRIMARY KEY (book, hash)
) STRICT, WITHOUT ROWID;
