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

# ---- The car and its visits

card-engine-petrol = Petrol
card-engine-diesel = Diesel
card-engine-petrol-hybrid = Petrol hybrid
card-engine-diesel-hybrid = Diesel hybrid
card-engine-gas = Gas
card-engine-electric = Electric
card-engine-other = Other
card-vin-hidden = left out by the owner
card-by-owner = own work
card-by-workshop = workshop
card-item-unknown = item { $number }, which this version does not know

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

# When something is due. $day: the day; $reading: the reading with its unit
card-next-day = by { $day }
card-next-reading = by { $reading }
card-next-both = by { $day } or { $reading }

# ---- Beside the square

card-scan = Scan the square with a phone to read this history and check its signature.
card-scan-plain = Scan the square with a phone to see a summary of this card.
# $day: the day of signing; $key: the fingerprint of the key
card-unchanged = If it verifies, this history is unchanged since it was signed on { $day } with the key { $key }.
card-proves-not = A signature proves that nothing was changed afterwards; it does not prove that the work was done.
card-unsigned = This square holds plain text and no signature, because no address is set on which a scanned card opens.
