# Why something was not done: one sentence for each refusal, with what was wrong and what would be right.
# The part after `refusal-` is the refusal's code. Days come as YYYY-MM-DD, readings with their unit.

# ---- Days

# $text: what was typed
refusal-day-form = ‘{ $text }’ is no day; write it as 2026-05-31.
# $day: the day
refusal-day-future = { $day } lies in the future; give the day on which it happened.
refusal-day-range = The day lies outside the years 1900 to 2199; check the year.

# ---- Readings

refusal-not-a-number = ‘{ $text }’ is no whole number; write the digits that the instrument shows, such as 98420.
refusal-reading-empty = The reading is missing; write the digits that the instrument shows.
refusal-reading-too-long = A reading has at most seven digits; leave out tenths and the trip counter.
# $reading: the new one; $than, $on: the earlier one and its day, which may be the same day
refusal-reading-lower = { $reading } is lower than the { $than } of { $on }; correct it, or keep it if the instrument really shows this.
# $reading: the new one; $than, $on: the later one and its day
refusal-reading-higher = { $reading } is higher than the { $than } read later, on { $on }; correct the reading or the day, or keep it if it is right.
# $reading: the new one; $per-day: how far the car would have gone each day; $from, $to: between which days
refusal-reading-too-fast = With { $reading } the car would have gone { $per-day } a day from { $from } to { $to }; correct it, or keep it if it is right.
refusal-status = ‘{ $text }’ is no status of a reading; it is actual, exceeds-limits or not-actual.
refusal-yearly = ‘{ $text }’ is no distance a year; write a whole number between 1 and 1{"\u00A0"}000{"\u00A0"}000, or leave it empty.
refusal-instrument-order = The old instrument’s last reading is lower than the { $than } of { $on }; write what it showed last.

# ---- Fuel, quantities, money

refusal-fuel-kind = ‘{ $text }’ is nothing that this car takes; choose one of the kinds that are offered, or correct the engine on the car’s sheet.
refusal-fuel-unit = ‘{ $text }’ is no unit of it; a fuel is counted in litre, us-gallon or imperial-gallon, and electricity in kilowatt-hour.
refusal-fuel-amount = ‘{ $text }’ is no amount; write a number above 0 and up to 1{"\u00A0"}000 with at most three decimals.
refusal-fuel-two-needed = The amount is missing; write it, or write the price of one unit and the total, from which it follows.
# $amount: how much, as typed; $unit: of it; $price: of one unit, with its currency; $total, $worked-out: with their currency
refusal-fuel-disagrees = { $amount } { $unit ->
    [us-gallon] US gallons
    [imperial-gallon] imperial gallons
    [kilowatt-hour] kWh
   *[litre] litres
} at { $price } makes { $worked-out }, and not { $total }; correct one of the three, or keep them if they are as printed.
refusal-consumption-unit = ‘{ $text }’ is no unit of consumption; choose one of those that are offered.
refusal-fill = ‘{ $text }’ is no kind of fill; it is full, part or missed.
refusal-quantity = ‘{ $text }’ is no quantity; write a number above 0 and below 1{"\u00A0"}000{"\u00A0"}000 with at most three decimals.
refusal-measure = ‘{ $text }’ is no measure; it is piece, litre, set, kilogram or metre.
# $decimals: how many the currency has
refusal-money = ‘{ $text }’ is no amount in { $currency }; write a number, with at most { $decimals } decimals and nothing between the thousands.
refusal-currency = ‘{ $text }’ is no currency; write its three letters, such as EUR.
refusal-currency-missing = The amount has no currency; name it by its three letters, such as EUR.

# ---- The vehicle

# $most: how many characters it may have
refusal-name-length = The name is empty or too long; write 1 to { $most } characters on one line.
refusal-name-control = The name holds a tab, a line break or another sign that can not be seen; write it on one line, without it.
refusal-text-too-long = The text has more than { $most } characters; shorten it.
refusal-engine = ‘{ $text }’ is no kind of engine; choose one from the list.
refusal-unit = ‘{ $text }’ is no unit of an instrument; it is km or mi.
# $length: how many characters were given
refusal-vin-length = A vehicle identification number has 17 characters, and this one has { $length }; copy it once more from the registration paper.
refusal-vin-character = ‘{ $character }’ at position { $position } cannot stand in a vehicle identification number; it has digits and letters other than I, O and Q.

# ---- Visits and the plan

refusal-items-missing = The visit says nothing that was done; name at least one item.
# $typed: what was typed; $key: the key that it is nearly
refusal-item-mistyped = ‘{ $typed }’ is no item of the catalogue, but ‘{ $key }’ is; words of your own must differ more from it.
refusal-item-unknown = There is no item { $number } in the catalogue; choose one from the list.
refusal-own-item-name = The name of an item of your own has 1 to { $most } characters on one line.
# $most: how many rows
# $known: every one there is
refusal-stakes = How much an item of your own matters is one of { $known }; of an item of the catalogue the catalogue says it.
refusal-too-many = There are more than { $most } rows; split the visit in two.
refusal-part-empty = A part needs a name or a number; write one of the two, or remove the line.
refusal-parts-missing = Nothing was named that was bought; name at least one part or fluid.
refusal-part-number-missing = The number has neither a letter nor a digit; write it as it stands on the part or its box.
refusal-mark = A part is not marked '{ $text }'; it is wrong for this car, superseded, or not marked.
refusal-interval-empty = The interval is empty; write a distance, a time or both.
refusal-interval-distance = ‘{ $text }’ is no distance of an interval; write a whole number between 1 and 1{"\u00A0"}000{"\u00A0"}000.
refusal-interval-months = ‘{ $text }’ is no time of an interval; write months between 0.5 and 600, in steps of a half.
# $text: the key of a fitting
refusal-fitting = ‘{ $text }’ is nothing that the sheet asks about; choose one of the fittings that it lists.
# $text: the key of a kind of part or fluid
refusal-kind = ‘{ $text }’ is no kind that this item tells apart; choose one of its kinds, or leave it empty.
# $text: the key of a finding
refusal-finding = ‘{ $text }’ is no finding; write ‘within-limits’, or one that the item lists.
refusal-not-measured = Nothing is measured on this item; leave the value empty.
# $text: what was typed for a measured value
refusal-measurement = ‘{ $text }’ is no measured value; write up to six digits and three decimals, such as 3.1.
# $value: what was typed; $unit: its unit; $least, $most: what a gauge shows
refusal-measurement-range = { $value } { $unit } cannot be; the gauge shows { $least } to { $most } { $unit }.
# $text: the key of what was measured
refusal-parameter = ‘{ $text }’ is nothing that is measured here; choose one of the list.
refusal-measured-missing = No value was given; write at least one.
refusal-measured-unread = Nothing in this text is a value that is kept; paste lines such as ‘STFT1 2.3 %’ or ‘Battery 12.48 V’.
# $day: a day that has passed
refusal-trouble-empty = Nothing is said of what is wrong; write a word, tick a symptom or paste a scan.
refusal-symptom-elsewhere = This car cannot show ‘{ $text }’; choose a symptom from its list.
refusal-nothing-told = Nothing was told; name a symptom with --symptom KEY or a code with --code CODE, and ‘wellkept symptoms’ lists the symptoms.
refusal-not-a-code = ‘{ $text }’ is no trouble code; one is a letter of P, C, B or U, a digit from 0 to 3 and three digits more, as P0301.
refusal-misread-code = ‘{ $text }’ is no trouble code; if you mean { $meant }, write it so, with digits and without gaps.
refusal-answer-form = ‘{ $text }’ is no answer to a check; write CHECK=found, CHECK=not or CHECK=skipped.
refusal-no-codes = There is no trouble code and no answer of a scanner in this text; a code is written as P0301, an answer as 43 01 35.
refusal-symptom-unknown = ‘{ $text }’ is no symptom; choose one from the list.
refusal-check-unknown = ‘{ $text }’ is no check; choose one from the list.
refusal-cause-unknown = ‘{ $text }’ is no cause; choose one from the list, or leave it empty.
refusal-tool-unknown = ‘{ $text }’ is no tool that a check needs; choose one from the list.
refusal-guide-unknown = There is no guide ‘{ $text }’ for this car; choose one from the list.
refusal-value-unknown = ‘{ $text }’ is no number that a guide asks for; choose one from the list.
refusal-day-past = { $day } has passed; choose today or a later day.
refusal-item-not-missing = This item is on the plan of this car already, unless it was switched off.
refusal-item-not-planned = This item has no next time that could have a day of its own: give it an interval, or switch it on; a look round the car is part of no visit.
refusal-item-other-engine = No car with this engine has that; should yours have it all the same, give the item an interval.

# ---- Papers

refusal-file-empty = The file is empty; choose a JPEG, PNG or WebP photo, or a PDF.
refusal-not-an-image = The file is no JPEG, PNG or WebP photo and no PDF; take a photo of the paper, or save it as a JPEG.
# $format: the kind of file that it is
refusal-image-foreign = The file is { $format }, and a paper comes in as a JPEG, PNG or still WebP photo or a PDF; take a photo of the paper, or save it as a JPEG.
# $width, $height: in pixels; $most: in million pixels
refusal-image-too-large = The picture has { $width } × { $height } pixels, and a photo may have at most { $most } million; save it smaller.
# $most: how many
refusal-too-many-pages = The document has more than { $most } pages; save those that matter as a document of their own.
# $path: what was named
refusal-no-plain-file = ‘{ $path }’ is no file that can be read from its beginning to its end; name a photo or a document.
# $most: in MiB
refusal-file-too-large = The file is larger than { $most } MiB; save the photo smaller.
refusal-shared-begun = The program ended while it took this file in; look into the tray, and share it once more if it is not there.
refusal-shared-not-copied = The other app did not hand this file over; share it once more, or save it on the device and choose it at the counter.
refusal-shared-too-many = So many files wait that no more were taken; share the others once these are in the tray.
refusal-image-damaged = The picture is damaged or cut short; copy it once more from where it was taken.
refusal-image-unsupported = The picture is of a rare kind that cannot be opened; save it as a plain JPEG.
refusal-document-damaged = The PDF cannot be opened: it is damaged, locked or too large; save it anew without a password, or photograph it.
refusal-no-document = There is no PDF of this: only a paper that came in as a PDF keeps it; a photo is kept as a picture.
refusal-document-missing = The PDF of this paper is not on this device: an earlier owner kept it, or it was lost; bring it back from a backup.
refusal-document-changed = The stored PDF is no longer the one that was taken in; bring it back from a backup.
refusal-thrown-away = This paper was thrown away, and what was kept of it is deleted; take it in once more if you still have it.
refusal-corners = No paper can lie between these corners; put each corner of the paper in its own place.
refusal-reading-not-installed = Reading papers is not installed on this device; type in what the receipt says.
refusal-models-damaged = What reads papers, in { $path }, is damaged; install it anew.
refusal-stopped = Reading was stopped; start it again when there is time.
refusal-intake-stopped = Taking the file in was stopped; choose it once more to take it in.
refusal-photo-missing = The photo { $hash } is no longer in the store; bring it back from a backup.
refusal-photo-damaged = The stored photo { $hash } is damaged; bring it back from a backup, or take the paper in once more.
refusal-paper-tied = The paper already belongs to a line; choose one that waits in the tray.
refusal-paper-in-visit = The paper belongs to a line of the book; take it off that line first, then throw it away.
refusal-paper-not-struck = A paper is not struck out, because without its photo it is no longer readable; throw it away instead.

# ---- The shelf and its books

# $path: a file or folder
refusal-disk-full = The disk is full, so nothing was written and nothing is lost; make room and try again.
refusal-read-only = ‘{ $path }’ may not be written; allow writing there, or choose another folder.
refusal-file = ‘{ $path }’ could not be read or written ({ $reason }); check that its disk can be reached.
refusal-shelf-in-use = Another copy of the program has this shelf open; close it and try again.
refusal-shelf-newer = This shelf was written by a newer version of the program; update the program to read it.
refusal-shelf-damaged = The shelf’s database is damaged and was set aside whole as ‘{ $path }’; bring the shelf back from a backup, or start again to begin a new one.
refusal-shelf-not-empty = The demo needs an empty shelf, and this one has vehicles; choose another folder for it.
refusal-key-damaged = This device’s key in ‘{ $path }’ is damaged; put a copy of it back.
refusal-no-such-book = There is no such book on this shelf; choose one of its vehicles.
refusal-no-such-line = There is no such line in this book; it may belong to another vehicle.
refusal-other-kind = The line is of another kind; a reading is amended by a reading and a visit by a visit.
refusal-struck = The line is struck out already; write a new one instead.
refusal-not-an-id = ‘{ $text }’ is no id; take it from an answer of the program.
refusal-entry = An entry is not in its proper form ({ $reason }); take the file from its source again.
refusal-signature = The signature of entry { $hash } does not verify; take the file from its source again.
refusal-gap = Entry { $hash } follows one that is missing; take the whole book.
# $key: the fingerprint of a key; $number: of the entry, counted from 1; $day: when it says it was written
refusal-fork = The key { $key } wrote another entry { $number } on { $day } than the one that stands in your book; from there on one of the two books was rewritten, so nothing was taken in.
# $day: of the handover
refusal-left-out = The handover of { $day } names entry { $number } of the key { $key }, which is missing or another one; someone cut the book short, so nothing was taken in.

# ---- Handing a book over, and taking one in

refusal-handed-over = This book was handed over on { $day } and is read-only here; take the handover back to write in it again.
refusal-others-handover = Another device handed the book over, and only that one can take it back.
# $why: taken: something stands there; refused: the system says $reason
refusal-handover-no-name = The book is handed over and read-only here, but its file could not be named ‘{ $path }’ ({ $why ->
    [taken] something else has that name by now
   *[refused] { $reason }
}); hand it over again under another name, and the same file is written.
refusal-written-meanwhile = Something was written in the book while its file was being made, so it was not handed over; hand it over again.
refusal-handover-other-file = The file is no book that was handed over; ask for the file that the last owner’s program wrote.
refusal-handover-cut-short = The file ends before the book does, so nothing was taken in; copy it once more from where it came.
refusal-handover-damaged = The file is damaged ({ $reason }), so nothing was taken in; copy it once more from where it came.
refusal-handover-newer = The file is of version { $version }, which this program does not know; update the program.
refusal-handover-locked = The file is locked; give the passphrase that the last owner chose.
refusal-handover-passphrase = This passphrase does not open the file; ask the last owner for the right one.
refusal-handover-work = The lock of the file asks for scrypt work of 2^{ $work }, and at most 2^{ $most } is done; have it locked anew.
refusal-handover-too-much = The book has more than the { $most } { $what ->
    [entries] entries
    [entry-bytes] bytes of entries
    [paper-bytes] bytes of one paper
   *[papers] papers
} that one file may hold; hand it over without its papers.
refusal-handover-unnamed = The file holds something that no line of the book names ({ $hash }), so nothing was taken in; ask for the file that the last owner’s program wrote.
refusal-handover-changed = A paper in the file is not what the book says it is ({ $hash }), so nothing was taken in; copy the file once more from where it came.
refusal-handover-stream = The file could not be read or written ({ $reason }); check that its disk can be reached.
refusal-passphrase-length = A passphrase has from 1 to { $most } bytes; choose a shorter one.
refusal-file-exists = There is a file ‘{ $path }’ already; choose another name.

# ---- The database and the device

refusal-database = The database refuses ({ $reason }); check the shelf, and bring it back from a backup if the check finds faults.
refusal-randomness = This device gives no random numbers, without which nothing can be signed; restart it and try again.
refusal-catalogue = The program’s own catalogue is wrong ({ $reason }); install the program again.
refusal-request = The request is not understood ({ $reason }); update the program or the page that sent it.

# ---- Cards

refusal-address = ‘{ $text }’ is no address for cards; write one such as https://card.example/ of at most 120 plain characters, without ‘#’.
refusal-card-no-reading = The card needs a reading; write one first.
refusal-report-no-reading = The report needs a reading; write one first.
refusal-card-does-not-fit = The card does not fit a readable square even without visits; choose a larger size, or shorten the car’s name, the items’ names or the address.
refusal-card-setting = The card could not be set ({ $reason }); this is a fault of the program, and the book is unharmed.
refusal-card-file-too-large = The file is larger than { $most } MiB; a photo or a PDF of the card needs far less.
refusal-card-picture-too-large = The picture has more than { $most } million pixels; take one in the camera’s normal size.
refusal-card-no-picture = The file is no PNG, JPEG or PDF that can be read; take a photo of the card, or use the PDF itself.
refusal-card-no-square = No square could be read; take the picture from straight above, in even light, with the white margin in view.
refusal-card-plain = The square holds plain text without a signature, so there is nothing to verify; read the text itself.
refusal-card-digits = The code is incomplete or miscopied; scan or copy the whole square again.
refusal-card-version = The code is of version { $version }, which this program does not know; use a newer one.
refusal-card-damaged = The code is no signed card, or it is damaged; scan the square again.
refusal-card-signature = The signature does not verify; the card was changed after it was signed, so do not trust it.
refusal-card-content = The signature is right, but what it signs is no card; whoever signed it did not write a card.

# ---- Anything else

refusal-shelf-empty = The shelf holds no vehicle yet; add one first.
refusal-which-vehicle = The shelf holds several vehicles; name one of them with --vehicle: { $names }.
refusal-no-such-vehicle = There is no vehicle named ‘{ $name }’ on this shelf; it holds: { $names }.
refusal-not-handed-over = The book has not been handed over, so there is nothing to take back.
refusal-passphrase-empty = The file with the passphrase is empty; write the passphrase into it.
refusal-passphrases-differ = The two passphrases differ, so nothing was written; type the same one twice.
refusal-other = This can not be done ({ $code }); update the program.
