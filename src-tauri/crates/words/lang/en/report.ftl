# What stands on the full report beside what it shares with the history card and the page behind one.

# ---- Labels

report-title = Full report
report-contents = Contents
report-summary = What the history comes to

# Two of what may have commas of its own; of more, $list is what stands before the last. $list, $next: what was found,
# what is due, or years with their values
report-list = { $list }; { $next }

# ---- The first page

# Under the head of the book. $signed: yes where the square is signed, no where it holds plain text
report-head-note = { $signed ->
    [yes] What the square holds is signed; the pages of this report are not. The book can prove what they say: the square carries this head too, and the book is held against it.
   *[no] Nothing on this report is signed. The entries of the book are, and can prove what it says.
}

# ---- What the history comes to

# $count: struck-out visits
report-struck-count = { $count ->
    [one] One visit is struck out; it is shown as such and counts for nothing.
   *[other] { $count } visits are struck out; they are shown as such and count for nothing.
}
# $why: no: not asked for; private: they would show what is left out
report-without-photos = { $why ->
    [private] Photos of receipts are left out, because they would show the names or the number that are left out.
   *[no] Photos of receipts are left out.
}
report-photos-small = Photos of receipts are so small that no price can be read on them, since prices are left out.
# $most: a number
report-photos-most = Photos are shown with the newest visits, { $most } at most; the book has all of them.
# $most: a number; $count: how many older ones
report-left-out = { $count ->
    [one] One older visit is in the book; a report shows the { $most } newest.
   *[other] { $count } older visits are in the book; a report shows the { $most } newest.
}
# $kind: of fuel; $unit: of consumption
report-use = Consumption by year: { $kind }, { $unit }
# $currency: its code
report-costs = Costs by year, { $currency }
report-costs-note = Everything in the book that has a price: fuel, parts, work and duties.
# Under bars of which the last is ruled
report-open-year = Ruled: the year is not over.
# A drawing for who cannot see it. $title: what is drawn; $values: each year with its value
report-bars-say = { $title }. { $values }.
# $year: a year; $value: what it came to
report-bar-says = { $year }: { $value }

# ---- A visit

report-struck = Struck out: this line does not count.
# $why: the owner's words
report-struck-why = Struck out: this line does not count. Why: { $why }
# $found: what was found, item by item
report-found = Found: { $found }
# $item: an item; $finding: in a word
report-found-item = { $item }: { $finding }
# $value: with its unit
report-found-measured = { $item }: { $finding } ({ $value })
# $name: a part; $kind: of which kind it is
report-part-kind = { $name } ({ $kind })
report-amount-piece = { $amount } ×
report-amount-set = { $amount } × set
report-amount-litre = { $amount } L
report-amount-kilogram = { $amount } kg
report-amount-metre = { $amount } m
# $number, $of: which photo of how many; $day: of the visit
report-photo-says = Photo of a receipt, { $number } of { $of }, visit of { $day }
report-photo-missing = { $count ->
    [one] The photo of a receipt is not there any more.
   *[other] The photos of { $count } receipts are not there any more.
}

# ---- What to ask

report-ask-note = Worked out from the visits by the bounds of the trade. A question is no fault found.
report-no-questions = The history gives no cause for a question by the bounds of the trade.
# In place of the sentences for a card that was scanned
report-ask-no-visits = The book holds no visit: what was done to the car, and where is it written down?
report-ask-ahead = The book names { $day }, which is after the day of this report: is a date mistyped?
