# What stands on the printed card: its labels, then its sentences.

# ---- Labels

card-title = History card
card-vin = Identification number (VIN)
card-engine = Engine
card-first-use = First use
card-latest = Latest reading
card-next = Coming next
card-nothing-next = Nothing on the plan has a day or a reading yet.
card-history = Visits
card-no-visits = The book holds no visit yet.
card-day = Day
# $unit: km or mi
card-reading = Reading, { $unit }
card-work = Work
card-receipt = receipt in the book
card-photo = photo in the book
card-written-late = written down late
card-amended = amended
card-issued = Issued
card-key = Key
# $unit: km or mi
card-plot = Readings over the years, { $unit }
card-record = Work done
card-last-done = Last done
card-next-due = Next due
card-no-record = no record
card-writers = Who wrote in the book

# ---- The car and its visits

card-engine-petrol = Petrol
card-engine-diesel = Diesel
card-engine-petrol-hybrid = Petrol hybrid
card-engine-diesel-hybrid = Diesel hybrid
card-engine-gas = Gas
card-engine-electric = Electric
card-engine-other = Other
card-vin-hidden = left out by the owner
# $tail: its last six characters
card-vin-tail = … { $tail }
card-by-owner = own work
card-by-workshop = workshop
card-item-unknown = item { $number }, which this version does not know
# The mark between a number and its decimals; thousands stand apart by a space in every language.
card-decimal-mark = .

# $shown: visits on the sheet; $left-out: how many of them are too old for the square
card-visits-note = { $left-out ->
    [0] { $shown ->
        [0] No visits.
        [one] { $shown } visit, which the square holds too.
       *[other] { $shown } visits, all of which the square holds too.
    }
    [one] { $shown } visits; the square leaves out the oldest.
   *[other] { $shown } visits; the square leaves out the { $left-out } oldest.
}

# ---- What the history comes to

card-asked-oil = Oil
card-asked-belts = Belts and chain
card-asked-brakes = Brakes
card-asked-fluids = Fluids
card-asked-filters = Filters
card-asked-repairs = Repairs
# $count: further items that have no room on the card
card-more = and { $count } more in the book
# $count: visits with a receipt; $of: all visits
card-receipts = { $of ->
    [one] { $count ->
        [0] The visit has no receipt in the book.
       *[other] The visit has a receipt in the book.
    }
   *[other] { $count ->
        [0] None of the { $of } visits has a receipt in the book.
       *[other] { $count } of { $of } visits have a receipt in the book.
    }
}
# The gaps of the plot. $gaps: how many; $months: a number of months; $distance: a distance with its unit
card-plot-note = { $gaps ->
    [0] No time of more than { $months } months and no { $distance } without a visit in the book.
    [one] Dashed, on ruled ground: more than { $months } months or { $distance } without a visit in the book.
   *[other] Dashed, on ruled ground: more than { $months } months or { $distance } without a visit in the book, { $gaps } times.
}
# $count: how many times the instrument was replaced
card-plot-instruments = { $count ->
    [one] The instrument was replaced; the line tells how far the car had gone in all.
   *[other] The instrument was replaced { $count } times; the line tells how far the car had gone in all.
}
# $from, $to: the days of the first and last entry of one device
card-span = { $from } to { $to }
# $day: a day
card-handed-over = handed over on { $day }
# $count: owners one after the other; $since: the day of the last handover
card-owners = { $count ->
    [one] This book has had one owner so far.
   *[other] This book has had { $count } owners, the last since { $since }.
}
# $count: how many more devices wrote in the book
card-more-writers = and { $count } more

# ---- Outside a card that has to be cut out

# $turn: long or short; $fold: yes or no
card-handling = Print both sides at full size (100 %), turned about the { $turn ->
    [long] longer
   *[short] shorter
} edge; cut at the corner marks{ $fold ->
    [yes] , then fold at the dashed ones
   *[no] {""}
}.

# When something is due, in a narrow column under card-next. $day: the day; $reading: the reading with its unit
card-next-day = by { $day }
card-next-reading = by { $reading }
card-next-both = by { $day } or { $reading }

# ---- Beside the square

card-scan = Scan the square with a phone to read this history and check its signature.
card-scan-plain = Scan the square with a phone to see a summary of this card.
# $day: the day of signing; $key: the fingerprint of the key
card-unchanged = If it verifies, this history is unchanged since it was signed on { $day } with the key { $key }.
card-proves-not = A signature proves that nothing was changed afterwards; it does not prove that the work was done.
# Behind card-unchanged, where there is little room.
card-proves-not-short = This does not prove that the work was done.
card-unsigned = This square holds plain text and no signature, because no address is set on which a scanned card opens.
