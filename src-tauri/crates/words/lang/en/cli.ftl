# What the terminal says beside the answers themselves.

# $vehicles: how many; $entries: how many in all
cli-demo-written = The shelf now holds the invented household: { $vehicles ->
    [one] one vehicle
   *[other] { $vehicles } vehicles
} with { $entries } entries.
cli-shelf-empty = The shelf holds no vehicle yet; add one, or fill the shelf with the invented household by the command ‘demo’.
cli-reading-written = Written: { $reading } on { $day }.
cli-visit-written = Written: a visit on { $day }.
# $path: the file
cli-paper-written = Filed: ‘{ $path }’ waits in the tray.
cli-paper-tied = Filed: ‘{ $path }’ is tied to the line.
cli-paper-there = ‘{ $path }’ stands at that line already: nothing was written.
cli-paper-known = ‘{ $path }’ is known: the book holds the same photo already.
# $why: the sentence of the refusal
cli-file-refused = { $path }: { $why }
# $page: which page of a document; $pages: how many it has
cli-read-page = Page { $page } of { $pages }
cli-card-written = The card is in { $path }.
cli-report-written = The report is in { $path }.
cli-document-written = The PDF is in { $path }, as it came in.
cli-keep-hint = Give --keep to write it all the same.
cli-which-vehicle = The shelf holds several vehicles; name one of them with --vehicle: { $names }.
cli-no-such-vehicle = There is no vehicle named ‘{ $name }’ on this shelf; it holds: { $names }.
cli-vin-right = { $vin }: the check digit is right.
cli-vin-wrong = { $vin }: the check digit is wrong, { $expected } would be right; only North America requires one, so the number may still be true.
cli-check-well = All is well: { $entries } entries and { $photos } photos verified.
cli-check-faults = { $faults ->
    [one] One fault was found
   *[other] { $faults } faults were found
} among { $entries } entries and { $photos } photos.
# $left: how many photos an earlier owner kept
cli-check-left = { $left ->
    [one] One photo
   *[other] { $left } photos
} stayed with an earlier owner.
# $unnamed: how many photos and documents no entry names
cli-check-unnamed = { $unnamed ->
    [one] One photo or document on the disk belongs to no entry, as after a paper was cut off on its way in; 'wellkept rebuild' deletes it.
   *[other] { $unnamed } photos and documents on the disk belong to no entry, as after papers were cut off on their way in; 'wellkept rebuild' deletes them.
}
cli-rebuilt = The pages were worked out again from { $entries } entries.
# $cleared: how many photos and documents were deleted
cli-rebuilt-cleared = { $cleared ->
    [one] One photo or document that belonged to no entry was deleted.
   *[other] { $cleared } photos and documents that belonged to no entry were deleted.
}
cli-serving = Open this address in a browser on this machine; Ctrl+C ends it:
cli-verdict-unchanged = The signature verifies: unchanged since it was signed on { $day } with the key { $key }.
cli-verdict-own-key = The key belongs to this device.
cli-verdict-other-key = The key belongs to another device; compare it with the one that the seller shows.
cli-verdict-work-not-proved = This does not prove that the work was done; the receipts in the book do, as far as they go.

# Handing a book over and taking one in.
cli-passphrase = The passphrase of the file:
cli-passphrase-choose = A passphrase to lock the file with (empty for none):
cli-passphrase-again = Once more:
# $entries, $papers: how many
cli-handover-written = The book is in { $path }: { $entries } entries and { $papers ->
    [0] no photos or documents
    [one] one photo or document
   *[other] { $papers } photos and documents
}.
cli-handover-locked = It is locked; tell the next owner the passphrase by another way.
cli-handover-open = It is not locked: whoever has the file can read the book.
cli-handover-read-only = The book is read-only here from now on; should the sale fall through, ‘handover --take-back’ undoes that.
cli-handover-taken-back = The handover of { $day } is taken back; the book can be written in again.
cli-papers-missing = { $count ->
    [one] One photo or document is missing:
   *[other] { $count } photos and documents are missing:
}
cli-never-handed-over = No line of this book hands it over, so whoever gave you the file may go on writing in it; ask for the file of a handover.
cli-papers-stayed = The photos and documents stayed with the last owner.
# $name: the vehicle; $new: entries that were not on the shelf before
cli-received = The book of { $name } stands on the shelf: { $entries } entries and { $papers ->
    [0] no new photos or documents
    [one] one new photo or document
   *[other] { $papers } new photos and documents
}, every signature verified. Go on writing in it.
cli-received-more = The book of { $name } was on the shelf: { $new ->
    [0] nothing of the { $entries } entries in the file is new
    [one] one of the { $entries } entries in the file is new
   *[other] { $new } of the { $entries } entries in the file are new
}, every signature verified.
# $key: a fingerprint; $from, $to: days
cli-writer = { $key } wrote { $entries ->
    [one] one entry on { $from }
   *[other] { $entries } entries from { $from } to { $to }
}
cli-words = The last owner says: { $words }

# An old card held against a book or a newer card.
cli-compare-old = The old card was signed on { $day } with the key { $key }.
# $same: visits that are as printed
cli-compare-book-unchanged = The book holds everything that the card vouches for, unchanged ({ $same } visits as printed).
cli-compare-book-differs = The book does not hold everything that the card vouches for ({ $same } visits as printed).
cli-compare-card-unchanged = The newer card contains the older one unchanged ({ $same } visits as printed).
cli-compare-card-differs = The newer card does not contain the older one ({ $same } visits as printed).
cli-compare-book-key-known = Its key has written in this book.
cli-compare-book-key-unknown = Its key has written nothing in this book: it is another car’s, or the history was written anew under another key.
cli-compare-card-key-known = The same key signed both.
cli-compare-card-key-unknown = Another key signed the newer card, as after a change of owner or device.
cli-compare-car-unknown = Not both show an identification number, so it is not certain that they are of one car.
# $count: visits
cli-compare-left-out = { $count ->
    [one] One older visit was
   *[other] { $count } older visits were
} left out of the newer card so that it fits, and could not be compared.
# $entries: how many; $newest: a day; $since: entries written later
cli-moment-found = When the card was printed the book held { $entries } entries, the newest of { $newest }; each of them stands in it still, unchanged; { $since ->
    [0] nothing was written since.
    [one] one was written since.
   *[other] { $since } were written since.
}
cli-moment-not-found = The book never was what the card vouches for: at least one of the entries of that day was left out or replaced, or the card is of another book.
cli-moment-no-head = The card carries no head of its book, so only its visits could be compared.
cli-moment-too-many = Several devices wrote so much at the same time that it can not be said whether the book was what the card vouches for.
cli-moment-late = { $late ->
    [one] One entry bears
   *[other] { $late } entries bear
} an earlier time and came in later, from another device or with a clock set back.
# $day: the visit’s; $then, $now: a visit; $was, $is: a reading, a day or a number
cli-difference-other-car = They are of different cars: the identification numbers differ.
cli-difference-first-use = The day of first use was { $was } on the old card and is { $is } now.
cli-difference-not-newer = The second card was issued before the first; give the older one first.
cli-difference-latest-reading = The old card’s latest reading, { $was }, is not there, or a lower or earlier one follows it.
cli-difference-instrument = The instrument replaced on { $day } (from { $was } to { $is }) is not there.
cli-difference-fewer = The old card’s book held { $was } visits, the newer one’s { $is }.
cli-difference-missing = missing     { $then }
cli-difference-changed = changed     { $then }
                now { $now }
cli-difference-amended = amended     { $then }
                now { $now }
cli-difference-struck-out = struck out  { $then }
cli-difference-added = added later  { $now }

# What an item stands at.
cli-state-overdue = overdue
cli-state-due = due
cli-state-soon = soon
cli-state-ahead = ahead
cli-state-no-record = no record
cli-state-not-for-this-car = not for this car
# Why an item is not for this car. $things: what it lacks
cli-missing-engine = no car with this engine has it
cli-missing-lacks = it does not have: { $things }

# $early, $late: days
cli-between = between { $early } and { $late }
# Why: $phase, first, after or every; $interval and $source.
cli-why = { $phase ->
    [first] the first time after { $interval }
    [after] once, within { $interval }
   *[every] every { $interval }
} ({ $source })
cli-months = { $months } months
cli-month = 1 month
cli-source-handbook = handbook
cli-source-owner = your own
cli-source-regulation = regulation: { $name }
cli-source-published = published: { $name }
cli-source-common-practice = common practice
cli-source-papers = your own papers
cli-from-done = last done { $day }
cli-from-first-use = counted from first use on { $day }
cli-from-nothing = never recorded
# $item: what was done that calls for this; $day: when
cli-from-other = called for by { $item } on { $day }
cli-tightened-short-trips = shortened by short trips
cli-tightened-towing = shortened by towing
cli-tightened-dust = shortened by dust
cli-tightened-standing = shortened by standing traffic
cli-tightened-turbo = shortened for a turbocharged engine
cli-tightened-turbo-unknown = shortened as long as nobody said whether it has a turbocharger
cli-goes-with = as often as { $item }
# $kind: the kind of part or fluid that is fitted
cli-kind = { $kind } fitted
# $finding: what was found; $day: when
cli-seen = found { $finding } on { $day }
# $items: the works among which a finding leaves the choice
cli-undecided = which of these it means is not said, so write the finding there: { $items }
# Where what was measured decides when it is due. $limit: with its unit
cli-seen-limit = so that the limit of { $limit } comes first

# The visits ahead.
# Where a visit is made.
cli-site-home = at home
cli-site-workshop = workshop
cli-site-office = papers
cli-no-visits = Nothing falls due in the next 24 months, as far as the book tells.
cli-visits-unproven = There are too many jobs to be certain that no other plan is cheaper.
# $low, $high: money; $unpriced: how many times something without a known price is due
cli-spend = The next 12 months: { $low } to { $high }, by what was paid the last three times{ $unpriced ->
    [0] .
   *[other] ; { $unpriced } more without a known price.
}
# $count: how many jobs were never recorded and may be due within the year
cli-spend-no-record = { $count ->
    [one] One job was never recorded; it is counted as if it fell due.
   *[other] { $count } jobs were never recorded; they are counted as if they fell due.
}
# $count: of how many jobs the price is a share
cli-spend-estimated = { $count ->
    [one] One price is estimated from a bill for several jobs.
   *[other] { $count } prices are estimated from bills for several jobs.
}
# Behind the cost of a visit.
cli-visit-estimated = estimated from a bill for several jobs

# The parts that were fitted, and what the next visit needs.
cli-no-parts = The book holds no such part.
# $times: on how many days; $day: the last of them
cli-part-times = { $times ->
    [one] fitted once, on { $day }
   *[other] fitted { $times } times, last on { $day }
}
# $span: how long, such as ‘14 months and 21300 km’
cli-present = in for { $span }
cli-lasted = the last one lasted { $span }
# $time: in days or months; $distance: with its unit
cli-span = { $time } and { $distance }
cli-days = { $days ->
    [one] one day
   *[other] { $days } days
}
# $price: with its currency; $day: when; $shop: where
cli-paid = { $price } on { $day }
cli-paid-at = { $price } on { $day }, { $shop }
# $items: what it served
cli-part-for = for { $items }
# $amount: with its measure
cli-get-buy = buy { $amount }
cli-get-home = at home: { $amount }
cli-get-enough = nothing to buy
# $numbers: those of the same part
cli-also = also as { $numbers }
cli-wrong = wrong for this car
cli-superseded = superseded
# $marked: why it should not be bought; $number: what to ask for
cli-instead = { $marked }: ask for { $number }
cli-warning-part-wrong = One of the parts is noted as wrong for this car.
cli-warning-part-superseded = One of the parts is noted as superseded.
cli-buy-nothing = The next visit needs nothing that the book knows of.
cli-buy-unknown = no part in the book yet; the number stands in the handbook
# $amount: how much or how many, with a point before the decimals
cli-amount-piece = { $amount } pc
cli-amount-litre = { $amount } L
cli-amount-set = { $amount } set
cli-amount-kilogram = { $amount } kg
cli-amount-metre = { $amount } m

# What the check found. $place: the hash of the entry or photo.
cli-fault-entry-changed = Entry { $place } is not what was signed.
cli-fault-entry-misfiled = Entry { $place } stands in the wrong place.
cli-fault-entry-unchained = Entry { $place } does not follow the one before it.
cli-fault-chain-cut-short = The handover { $place } names an entry of another writer that is missing here or is another one; that writer's entries were cut short since.
cli-fault-photo-missing = Photo { $place } is missing.
cli-fault-photo-damaged = Photo { $place } is damaged.

# What a receipt says, each with how sure it is.
cli-read-shop = shop: { $value } ({ $sure })
cli-read-day = day: { $value } ({ $sure })
cli-read-total = total: { $value } ({ $sure })
cli-read-tax = tax: { $value } ({ $sure })
cli-read-number = part number: { $value } ({ $sure })
cli-read-volume = fuel: { $value } ({ $sure })
cli-read-amount = { $amount } { $unit ->
    [us-gallon] US gallons
    [imperial-gallon] imperial gallons
   *[litre] litres
  }
cli-read-price = price of one: { $value } ({ $sure })
cli-read-odometer = odometer: { $value } ({ $sure })
# $day and $or: the two ways to read a day
cli-day-or = { $day } or { $or }
cli-sure-sure = sure
cli-sure-likely = likely
cli-sure-doubtful = doubtful

# What the car uses.
cli-no-fuel = No fuel was written down yet.
cli-fuel-petrol = Petrol
cli-fuel-diesel = Diesel
cli-fuel-gas = Gas
cli-fuel-electric = Electricity
# $kind: of what; $last and the others: a consumption with its unit; $day: when the last span ended
cli-figures = { $kind }: { $last } up to { $day }; { $year } over the last year, { $overall } over all; least { $least }, most { $most }.
cli-no-span = { $kind }: two full tanks are needed before anything can be said.
# $from, $to: the days of two full tanks; $why: in words
cli-unused = { $from } to { $to } is left out: { $why }.
cli-apart-missed = a fill within it was not written down
cli-apart-no-distance = by the readings the car went nowhere
cli-apart-too-little = less than a car can do with, so that a reading is mistyped or a fill is missing
cli-apart-too-much = more than a car uses, so that a reading or the amount is mistyped
# $since: a day; $likely, $low, $high: in percent
cli-uses-more = Since { $since } the car uses about { $likely } % more ({ $low } to { $high } %).
# $low, $high, $percent: in percent
cli-better = better by { $low } to { $high } %
cli-worse = worse by { $low } to { $high } %
cli-no-larger = no difference larger than { $percent } %
# $more: full tanks
cli-cannot-tell = cannot tell yet: about { $more ->
    [one] one more tank
   *[other] { $more } more tanks
} for a difference of 3 %
cli-can-never-tell = cannot be told: too few tanks before it
# $others: how many
cli-others-near = { $others ->
    [one] together with another entry at about the same time
   *[other] together with { $others } other entries at about the same time
}
# $codes: the codes, if they were written down; $count: how many
cli-cleared = { $count ->
    [0] codes cleared
   *[other] { $codes } cleared
}

# What the car costs.
cli-no-costs = No price is in the book yet.
cli-cost-fuel = fuel
cli-cost-parts = parts
cli-cost-work = work
cli-cost-duties = duties
# $price: with its currency and unit; $distance: with its unit; $from, $to: days
cli-per-distance = { $price } over { $distance }, from { $from } to { $to }.

# What was read off the engine's computer or a meter.
cli-no-measured = Nothing was measured yet.
# $count: how many values
cli-measured-written = { $count ->
    [one] Written: one value.
   *[other] Written: { $count } values.
}
# $line: what was pasted
cli-measured-unread = Left out: { $line }
# $name: what was measured; $usual: between what; $source: where the limits come from
cli-parameter = { $name } (usually { $usual }; { $source })
cli-parameter-short-trim-1 = Short-term fuel trim, bank 1
cli-parameter-long-trim-1 = Long-term fuel trim, bank 1
cli-parameter-short-trim-2 = Short-term fuel trim, bank 2
cli-parameter-long-trim-2 = Long-term fuel trim, bank 2
cli-parameter-coolant = Coolant temperature, engine warm
cli-parameter-idle-air = Air flow at idle, engine warm
cli-parameter-rest-voltage = Battery voltage at rest
cli-judged-implausible = cannot be
cli-judged-low = low
cli-judged-high = high
cli-judged-usual = usual
# $low, $high: a year; $unit: symbol
cli-drift = It moves by { $low } to { $high } { $unit } a year.

# What is said of a trouble code.
cli-code-no-text = No text here; your handbook or a workshop has it
# $causes: the likeliest first
cli-code-causes = can come of: { $causes }
# $code: to which it belongs; $values: what was kept
cli-code-frame = Kept when { $code } set: { $values }
# $lists: by name, such as ‘Confirmed, Pending’
cli-code-none = The car reports no codes in these lists: { $lists }.
# $at: a day, and what the instrument showed
cli-code-cleared = Cleared on { $at }.
cli-code-gone = Gone on { $at }: a scan did not have it any more.
cli-code-ready = The car has finished all of its own tests.
cli-code-not-ready = Tests that the car has not finished: { $monitors }

# What a trouble may be. $chance: in percent.
cli-trouble-suspects = What it may be; none of this is a diagnosis:
cli-trouble-other = { $chance }  something else
cli-trouble-checks = What to check, first to last:
# $minutes: what it costs, in minutes of your time; $why: the reasons
cli-trouble-check = finds it in { $chance }; about { $minutes } min of your time, money and missing tools counted in it: { $why }
cli-trouble-workshop = A workshop makes it.
# $said: by name
cli-trouble-cautions = Take care: { $said }
cli-trouble-tools = Tools: { $said }
# $tool: its name
cli-tool-lacking = { $tool } (not at hand)
# What mends a cause.
cli-mend-owner = you can mend it yourself
cli-mend-workshop = a workshop mends it
# $items: any of these
cli-mend-items = mended by { $items }
# $order, $ratio: minutes; $left: the chance that no check finds it
cli-trouble-costs = This order takes about { $order } min of your time on the average, money counted in it, the plain order by chance over cost { $ratio } min; in { $left } none of these checks finds it.
cli-because-looks-for = looks for { $cause }
cli-because-symptom = ‘{ $symptom }’ points at { $cause }
cli-because-code = { $code } points at { $cause }
cli-because-overdue = overdue: { $item }, which leads to { $cause }
# $days: how many days ago
cli-because-touched = { $item } was done { $days ->
    [0] today
    [one] yesterday
   *[other] { $days } days ago
}, which can have led to { $cause }
cli-because-before = this car had { $cause } before
# $opening: what is open
cli-because-shares = already open: { $opening }
cli-because-second-look = a second look, for the first can have missed it

# A guide. $minutes: for a practised amateur.
cli-guide-minutes = { $minutes } min
cli-guide-not = Leave it to a workshop:
cli-guide-cautions = First:
cli-guide-tools = Tools:
cli-guide-supplies = What is used up:
cli-guide-parts = Parts of the last time:
cli-guide-does = What it writes into the book:
cli-guide-then = What comes after it:
cli-guide-steps = Steps:
cli-guide-look = Before closing:
cli-guide-after = What may feel odd afterwards:
cli-guide-disposal = What is left over:
# $name: of the value; $cases: what is typical, with its source
cli-value-handbook = { $name }: see the handbook
cli-value-typical = { $name }: see the handbook; typical: { $cases }
cli-source-from-memory = from memory: { $name }
