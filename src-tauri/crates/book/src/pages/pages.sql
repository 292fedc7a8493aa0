-- The pages: worked out from the entries, dropped and rebuilt whenever this file changes in meaning
-- (raise PAGES in pages/mod.rs). Keys come from the entries, so that a rebuild gives the very same rows.

-- One row for each line of a book, as it stands.
CREATE TABLE line (
    book    BLOB NOT NULL,
    subject BLOB NOT NULL,
    kind    INTEGER NOT NULL,
    day     INTEGER,           -- days since 1970; what the content names, else the day of writing
    shown   INTEGER,           -- millimetres on the instrument
    status  INTEGER,           -- of the odometer; NULL where the line is no reading
    -- Fuel taken at a reading; all of them NULL where there is none.
    level          INTEGER,    -- how far it was filled
    amount         INTEGER,    -- picolitres, or watt-hours of electricity
    amount_unit    INTEGER,    -- of volume, in which it was typed; NULL for electricity
    fuel           INTEGER,    -- its kind; NULL for the car's own
    price          INTEGER,    -- of one unit, in ten-thousandths of the main unit
    price_currency TEXT,
    total          INTEGER,    -- minor units
    total_currency TEXT,
    content BLOB NOT NULL,     -- CBOR of the content as last amended
    written INTEGER NOT NULL,  -- milliseconds since 1970, of the first version
    writer  BLOB NOT NULL,     -- of the first version, with its number the rest of the fold order
    number  INTEGER NOT NULL,
    amended INTEGER NOT NULL DEFAULT 0,
    struck  TEXT,              -- why it was struck out; NULL when it was not
    PRIMARY KEY (book, subject)
) STRICT, WITHOUT ROWID;
-- The kinds of which a book has few. Readings (kind 3) are most of it: whoever asks for them reads most lines anyway,
-- and an index of them would be one more page of the file that every reading writes to the disk.
CREATE INDEX line_rare ON line (book, kind) WHERE kind <> 3;

-- Where the versions of a line stand, its striking out among them; the first one stands in the line itself.
CREATE TABLE version (
    book    BLOB NOT NULL,
    subject BLOB NOT NULL,
    time    INTEGER NOT NULL,
    writer  BLOB NOT NULL,
    number  INTEGER NOT NULL,
    PRIMARY KEY (book, subject, time, writer, number)
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

-- Every value that was read off the engine's computer or a meter, and counts.
CREATE TABLE measured (
    book      BLOB NOT NULL,
    subject   BLOB NOT NULL,
    position  INTEGER NOT NULL,
    parameter INTEGER NOT NULL,
    day       INTEGER NOT NULL,
    value     INTEGER NOT NULL,  -- thousandths of the parameter's unit
    PRIMARY KEY (book, subject, position)
) STRICT, WITHOUT ROWID;

-- Every paper that counts, and the visit, reading or purchase to which it belongs.
CREATE TABLE paper (
    book     BLOB NOT NULL,
    subject  BLOB NOT NULL,
    photo    BLOB NOT NULL,
    width    INTEGER NOT NULL,
    height   INTEGER NOT NULL,
    filed    INTEGER NOT NULL,  -- milliseconds since 1970
    whole    BLOB,              -- the photo before it was straightened
    document BLOB,              -- of which it is a page
    page     INTEGER,
    PRIMARY KEY (book, subject)
) STRICT, WITHOUT ROWID;
-- Everything that any version of a paper that counts names, so that nothing which one of them needs is deleted.
CREATE TABLE kept (
    book    BLOB NOT NULL,
    subject BLOB NOT NULL,
    hash    BLOB NOT NULL,
    PRIMARY KEY (book, subject, hash)
) STRICT, WITHOUT ROWID;
CREATE INDEX kept_hash ON kept (hash);
CREATE TABLE tied (
    book    BLOB NOT NULL,
    subject BLOB NOT NULL,
    paper   BLOB NOT NULL,
    PRIMARY KEY (book, subject, paper)
) STRICT, WITHOUT ROWID;
CREATE INDEX tied_paper ON tied (book, paper);

-- Entries that this version keeps without understanding them.
CREATE TABLE newer (
    book BLOB NOT NULL,
    hash BLOB NOT NULL,
    kind INTEGER NOT NULL,
    time INTEGER NOT NULL,
    PRIMARY KEY (book, hash)
) STRICT, WITHOUT ROWID;
