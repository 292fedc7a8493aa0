# The page a buyer lands on after scanning a card. It stands alone and knows nothing but the card.
# Its small formatter knows variables, quoted texts and choices by a variable; numbers and days come written out.

viewer-title = Car history card
viewer-title-of = { $name }: history card
viewer-noscript = This page reads the card in your browser, so it needs JavaScript.
# Its name stands before the choice of a language.
viewer-language = Language

# No card yet
viewer-about-heading = A car's history, on a card
viewer-about = The square on a history card holds the whole history of a car: what was done, when, and at what reading. Scan it with your phone's camera and this page opens with it, or paste its text below.
viewer-private = Nothing leaves this page: what you paste is read here, in your browser.
viewer-paste-label = Text of a card
viewer-paste-hint = The whole address with the digits after #, or only the digits.
viewer-paste-button = Read the card
viewer-another = Read another card

# Why a card is refused: what is wrong, and what would be right
viewer-refused-heading = This card cannot be shown
viewer-refused-digits-form = The code is incomplete or mistyped; scan the whole square again, or copy its text from beginning to end.
viewer-refused-version = The code is of a version that this page does not know; open it with a newer copy of this page.
viewer-refused-message = The code is damaged or was not made by a history card; scan the whole square again, or ask for a fresh print.
viewer-refused-signature = The signature does not match: the code was misread, or changed after it was signed; scan the square again, and if this comes back, do not trust the card.
viewer-refused-stream = The signature is right, but what was signed cannot be unpacked; ask whoever issued the card for a new one.
viewer-refused-claims = The signature is right, but what was signed is not a car's history in the form of a card; ask whoever issued the card for a new one.

# The proof
viewer-proof-heading = Signature verified
viewer-proof = Unchanged since it was signed on { $day } with the key { $key }.
viewer-proof-limits = This does not prove that the work was done. The receipts in the owner's book do that, as far as they go: ask to see them, and check that the book shows the same key.

# The car
viewer-car-description = Model
viewer-car-vin = VIN
viewer-car-engine = Engine
viewer-car-first-use = First used
viewer-car-latest = Odometer
viewer-car-latest-on = { $reading } on { $day }
viewer-engine-petrol = petrol
viewer-engine-diesel = diesel
viewer-engine-petrol-hybrid = petrol hybrid
viewer-engine-diesel-hybrid = diesel hybrid
viewer-engine-gas = gas
viewer-engine-electric = electric
viewer-engine-other = other
viewer-distance-km = { $number } km
viewer-distance-mi = { $number } mi

# The visits
viewer-visits-heading = What was done
viewer-visits-none = This card lists no visits.
viewer-visits-shown = { $count ->
    [one] One visit, as the owner wrote it down.
   *[other] { $count } visits, the latest first, as the owner wrote them down.
}
viewer-visits-left-out = { $count ->
    [one] One older visit is in the book but did not fit the card.
   *[other] { $count } older visits are in the book but did not fit the card.
}
viewer-visit-no-items = No item named
viewer-who-owner = By the owner
viewer-who-workshop = By a workshop
viewer-who-both = By the owner and a workshop
viewer-who-unsaid = By whom: not said
viewer-mark-receipt = receipt in the book
viewer-mark-photo = photo in the book
viewer-mark-late = written down over 30 days later
viewer-mark-amended = amended since it was written
viewer-item-unknown = Item { $number }

# What comes next
viewer-next-heading = What comes next
viewer-next-on-day = by { $day }
viewer-next-at-reading = at { $reading }
viewer-next-either = by { $day } or at { $reading }, whichever comes first
viewer-next-open = no day or reading given

# New instruments
viewer-instruments-heading = Odometer replaced
viewer-instrument = On { $day }: the old one showed { $old }, the new one started at { $new }.

# For comparing with the book
viewer-head-heading = To compare with the owner's book
viewer-head-key = Key
viewer-head = Head of the book
viewer-private-card = This page sent nothing anywhere: the history came with the address and stays in your browser.

# What to ask: no accusation, and each sentence names what it is about
# $count: how many; $of: of how many; $day and $reading, $then and $shown: two places; $items: what is done
viewer-ask-heading = What to ask
viewer-ask-note = Worked out from this card by the bounds of the trade. A question is no fault found.
viewer-ask-no-visits = The card lists no visit: what was done to the car, and where is it written down?
viewer-ask-lower = { $count ->
    [one] A reading falls
   *[other] { $count } readings fall, most of all
} from { $reading } on { $day } to { $shown } on { $then }: what explains it?
viewer-ask-jump = From { $reading } on { $day } to { $shown } on { $then } is farther than a car goes in that time: is a reading mistyped?
viewer-ask-ahead = The card names { $day }, which is after its day of issue: is a date mistyped?
viewer-ask-gap = { $count ->
    [one] No visit
   *[other] { $count } stretches of over 24 months or 30,000 km (18,641 mi) without a visit, the longest
} from { $day } at { $reading } to { $then } at { $shown }: was work done that is not in the book?
viewer-ask-before = The record begins on { $day } at { $reading }: are there papers from before?
viewer-ask-unrecorded = No record of { $items }, though the car is old enough or has gone far enough: was it done?
viewer-ask-passed = Due by now: { $items }. Has it been done?
viewer-ask-old-card = The card was issued on { $day }: what was done since, and is there a newer one?
viewer-ask-clock = The card was issued on { $day }, which is still to come: is this device’s date right, or the card’s?
viewer-ask-instruments = The odometer was replaced on { $day }, old { $reading }, new { $shown }: is there a receipt for it?
viewer-ask-receipts = Visits with a receipt in the book: { $count } of { $of }. May you see the receipts?
viewer-ask-late = Visits written down over 30 days late: { $count } of { $of }, the last that of { $day }. From what notes?
viewer-ask-amended = Visits amended since they were written: { $count } of { $of }, the last that of { $day }. What was changed, and why?
viewer-ask-left-out = { $count ->
    [one] One older visit is
   *[other] { $count } older visits are
} in the book but not on this card: may you see the book?

# The drawing of its way; the first for who cannot see it
viewer-plot = Drawing of { $count } readings, from { $reading } on { $day } to { $shown } on { $then }. The visits below list them.
viewer-plot-gap = Dashed: over 24 months or 30,000 km (18,641 mi) without a visit.
viewer-plot-odd = Diamonds: readings that fall or jump.

# An older card of the same car, held against this one
viewer-scan-button = Scan with the camera
viewer-scan-failed = The camera cannot be used here; paste the text instead.
viewer-compare-heading = Compare with an older card
viewer-compare-label = Text of an older card of this car
viewer-compare-button = Compare
viewer-compare-contained = The card of { $newer } contains that of { $older } unchanged: { $count ->
    [one] one visit is
   *[other] { $count } visits are
} the same.
viewer-compare-nothing = The cards of { $older } and { $newer } share no visits to compare.
viewer-compare-differs = The card of { $newer } does not contain that of { $older } unchanged. Ask about each of these:
viewer-compare-same-key = The same key signed both.
viewer-compare-other-key = Different keys signed them, as after a change of owner or device.
viewer-compare-car-unknown = Not both show an identification number, so it is not certain that they are of one car.
viewer-compare-other-car = The identification numbers differ.
viewer-compare-first-use = The days of first use differ.
viewer-compare-latest = The latest reading is lower, or of an earlier day.
viewer-compare-instrument = The odometer replaced on { $day } is not named any more, or otherwise.
viewer-compare-fewer = The book holds fewer visits.
viewer-compare-changed = The visit of { $day } reads otherwise{ $amended ->
    [yes] , and is marked as amended
   *[no] {""}
}.
viewer-compare-missing = The visit of { $day } is gone.
viewer-compare-added = The visit of { $day } was written down after the older card.
viewer-compare-more = { $count } more.
