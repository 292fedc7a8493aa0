# What the window and the browser say. Items stand in catalogue.ftl, refusals in refusals.ftl.
# Readings, days and money come already written out; numbers that choose a plural come as numbers.

# ---- The frame

# $place: where the reader stands
window-title = { $place } – Wellkept
skip = Skip to the content
nav-places = Places
nav-aside = Car and settings
place-today = Today
place-pump = Pump
place-counter = Counter
place-bay = Bay
place-book = Book
place-sheet = Car
place-settings = Settings
place-add = A new car
car-choose = Car in hand
opening = Opening the book …
try-again = Try again
no-answer = Wellkept’s core does not answer; open the address that the program printed, or start the program again.
# The sentence `refusal-reading-too-fast` where both of its days are one. $reading: the new one; $per-day: how far the
# car would have gone on that $day
refused-too-fast-one-day = With { $reading } the car would have gone { $per-day } on { $day } alone; correct it, or keep it if it is right.
# $code: the name of the refusal
refused-unworded = This was refused ({ $code }); nothing was written and nothing is lost.
way-correct = Correct it
way-keep = Keep it as it is
save = Save
saved = Saved
cancel = Cancel
back = Back
close = Close
stop = Stop
undo = Undo
undo-why = A slip, undone at once
day-written = Written as year-month-day, such as 2026-05-31
currency = Currency
not-given = not given

# ---- Units and amounts

unit-km = km
unit-mi = mi
unit-km-long = Kilometres
unit-mi-long = Miles
measure-piece = pieces
measure-litre = litres
measure-set = sets
measure-kilogram = kilograms
measure-metre = metres
amount-piece = { $amount ->
    [one] { $amount } piece
   *[other] { $amount } pieces
}
amount-litre = { $amount ->
    [one] { $amount } litre
   *[other] { $amount } litres
}
amount-set = { $amount ->
    [one] { $amount } set
   *[other] { $amount } sets
}
amount-kilogram = { $amount } kg
amount-metre = { $amount } m
volume-litre = litres
volume-us-gallon = US gallons
volume-imperial-gallon = imperial gallons
volume-kilowatt-hour = kWh
fill-full = full tank
fill-part = part fill
fill-missed = a fill before it was not written down
status-actual = actual mileage
status-exceeds-limits = exceeds mechanical limits
status-not-actual = not the actual mileage
# $reading, $day
reading-on = { $reading } on { $day }
# $distance: with its unit; $months: with the word
interval-both = { $distance } or { $months }, whichever comes first
interval-months = { $months ->
    [one] { $months } month
   *[other] { $months } months
}
# $printed: as it is printed, with its unit; $about: the same, rounded, in the unit that the car counts
interval-distance-about = { $printed } (about { $about })
# $number: the item's number in the catalogue
item-of-newer = Item { $number } of a newer catalogue

# ---- How items stand

state-overdue = overdue
state-due = due today
state-soon = soon
state-ahead = ahead
state-no-record = no record
workshop-word = workshop
belongs-in-workshop = This work belongs in a workshop.
condition-short-trips = short trips
condition-towing = towing
condition-dust = dust
condition-standing = standing traffic
condition-turbo = a turbocharged engine
condition-turbo-unknown = an engine that may have a turbocharger

# ---- Today

# $reading: with its unit
estimate = about { $reading }
# $low, $high: the span; $since: a reading and its day
estimate-span = An estimate: most likely between { $low } and { $high }. The instrument showed { $since }.
estimate-today = Read from the instrument today.
# $reading: a reading and its day
estimate-doubtful = { $reading } is written down as well, but lies so far off that it is left out until another reading bears it out.
estimate-doubtful-way = Look at the readings
estimate-none = The instrument showed { $since }. One reading is too little to say what it shows today.
reading-none = No reading yet. With one, everything on the plan gets its place on the road.
reading-first = Write the first reading
road = The road ahead
road-now = now
road-list = What is due, along the road
road-before = further back
road-from-to = { $first } to { $last }
road-further = { $count ->
    [one] One item lies beyond the end of this strip.
   *[other] { $count } items lie beyond the end of this strip.
}
road-unrecorded = { $count ->
    [one] One item was never recorded and has no place on it.
   *[other] { $count } items were never recorded and have no place on it.
}
road-span = The thin line shows from when to when it may fall.
# $name: an item; $count: how many others
and-more = { $name } and { $count } more
# What a reader hears at a stop on the road. $words: its day and its name; $what: its state, or how many visits and
# in how many days; $count, $items: all that it holds
stop-says = { $words }: { $what }{ $count ->
    [one] .
   *[other] , for { $items }.
}
stop-visits = { $count ->
    [one] One visit
   *[other] { $count } visits
}
due-pressing = What presses
due-pressing-none = Nothing presses.
due-none = Nothing is on the plan. Switch items on, or add your own, on the car’s sheet.
due-further = { $count ->
    [one] One more ahead
   *[other] { $count } more ahead
}
due-unrecorded = { $count ->
    [one] One without a record
   *[other] { $count } without a record
}
# $count: how many besides those in sight; $all: how many together
due-unrecorded-more = { $count ->
    [one] One more without a record, { $all } in all
   *[other] { $count } more without a record, { $all } in all
}
due-unrecorded-for = What nobody recorded has no date. A receipt or a stamp may tell.
due-know = Do you know when?
round-title = A look round the car
round-for = Minutes each, between visits.
due-was-at = since { $reading }
due-was-on = since { $day }
due-at = at { $reading }
due-by = by { $day }
due-by-or = by { $day }, or at { $reading } if that comes sooner
due-at-about = at { $reading }, about { $day }
due-chosen = you chose { $day }
why-ask = why?
# $fitted: yes or no, with the $kind that is fitted; $phase: first, after, monthly (one month and nothing else) or every;
# $source: whose interval; $tightened: yes or no, by $conditions; $along: yes or no, with $other; $from: counted from what; $seen and $between: the rest
# of the sentence
why = { $fitted ->
    [yes] { $kind }: { $phase ->
        [first] the first time after { $interval }
        [after] once, within { $interval }
        [monthly] every month
       *[every] every { $interval }
    }
   *[no] { $phase ->
        [first] The first time after { $interval }
        [after] Once, within { $interval }
        [monthly] Every month
       *[every] Every { $interval }
    }
}, { $source }{ $tightened ->
    [yes] , shortened for { $conditions }
   *[no] {""}
}{ $along ->
    [yes] , as often as { $other }
   *[no] {""}
}; { $from }{ $seen }{ $between }.
# $finding: in words, with what was measured; $effect: what it does to the next time
why-seen = ; on { $day } found { $finding }, { $effect ->
    [now] so that it is due now
    [holds] so that it can wait longer
    [extrapolated] and at that rate the limit of { $limit } comes then
   *[none] which changes nothing here
}
# $items: the works among which a finding leaves the choice
why-undecided = ; which of these it means is not said, so write the finding there: { $items }
why-between = ; most likely between { $early } and { $late }
# $finding: in a word; $what, $value: what was measured, with its unit
found-measured = { $finding } ({ $what } { $value })
source = { $source ->
    [handbook] as your handbook says
    [owner] as you set it
    [papers] as your papers say
    [regulation] as { $name } demands
    [published] as published by { $name }
   *[common-practice] by common practice
}
from-nothing = nobody recorded when it was last done
from-first-use = counted from first use on { $day }
from-other = counted from { $item } on { $day }
from-done = last done on { $day }
from-done-at = last done on { $day } at { $reading }
visit-next = The next visit
# $day: with its weekday; $in: in how many days
visit-when = { $day }, { $in }
# Where a visit is made.
site-home = At home
site-workshop = In a workshop
site-office = Papers
visit-together = What to do together
# $count: of the jobs of a visit, those that renew nothing
visit-looks = { $count ->
    [one] one look or test with it
   *[other] { $count } looks and tests with it
}
visit-why = Why these together
visit-once = { $count ->
    [one] One job by itself; nothing else is near enough to it.
   *[other] One visit in place of { $count }.
}
# $things: what has to be opened up, drained or lifted
visit-shares = Needed once for several of these: { $things }.
# $thing: what is opened up, drained or lifted; $count: for how many items, two at least
visit-share = { $thing } for { $count }
# $time: hours and minutes
visit-minutes = About { $time } for someone practised.
visit-minutes-none = It belongs in a workshop.
visit-costs = About { $cost } at the prices paid last{ $unpriced ->
    [0] .
   *[other] ; { $unpriced } without a price.
}
# $count: of how many jobs the price is a share
visit-estimated = { $count ->
    [0] {""}
    [one] One price in it is estimated from a bill for several jobs.
   *[other] { $count } prices in it are estimated from bills for several jobs.
}
visit-costs-none = What it costs is not known: no price was ever written down for it.
minutes = { $minutes } min
hours = { $hours } h
hours-minutes = { $hours } h { $minutes } min
visit-get = To get for it
# $name: the item; $day: when it falls due by itself
visit-due-itself = due by itself on { $day }
move-ask = another day?
move-day = Do it on
move-free = That costs nothing more.
move-extra = That adds about { $money }.
move-percent = That adds about { $percent } % of what a usual job on this car costs.
move-late = It is late then: it falls due on { $day }.
move-late-grave = It is late then, and this is one to be early with: it falls due on { $day }, and what it guards against is dear or dangerous.
move-keep = Keep this day
pin-says = You chose this day.
pin-any = Any day
visits-later = Other visits ahead
visit-jobs = { $count ->
    [one] one job
   *[other] { $count } jobs
}
spend = Money ahead
spend-says = The next 12 months: { $low } to { $high }, by what was paid the last three times.
spend-same = The next 12 months: about { $low }, by what was paid the last three times.
spend-unpriced = { $count ->
    [0] {""}
    [one] One job without a price is not in it.
   *[other] { $count } jobs without a price are not in it.
}
# $count: how many jobs were never recorded and may be due within the year
spend-no-record = { $count ->
    [0] {""}
    [one] One job was never recorded; it is counted as if it fell due.
   *[other] { $count } jobs were never recorded; they are counted as if they fell due.
}
# $count: of how many jobs the price is a share
spend-estimated = { $count ->
    [0] {""}
    [one] One price is estimated from a bill for several jobs.
   *[other] { $count } prices are estimated from bills for several jobs.
}
visit-to-counter = Show part numbers
visit-to-bay = Do the work
get-unknown-short = see the handbook
tray = Tray
tray-count = { $count ->
    [0] No papers wait in the tray.
    [one] One paper waits in the tray.
   *[other] { $count } papers wait in the tray.
}
tray-sort = Sort them out

# ---- Pump

pump-reading = The instrument shows
pump-digits = Only digits go here; write what the instrument shows, such as 98420.
pump-erase = Erase
pump-clear = Clear
fuel-too = Fuel as well
fuel-kind = What was filled in
fuel-volume = Amount
fuel-unit = In
# $unit: in what it is counted
fuel-amount = Amount in { $unit }
fuel-price = Price of one
price-of-litre = Per litre
price-of-us-gallon = Per gallon
price-of-imperial-gallon = Per gallon
price-of-kilowatt-hour = Per kWh
fuel-total = Paid in all
fuel-fill = How it was filled
# $price: of one unit, with its currency
fuel-price-last = { $price } the last time
# Any two of the three give the third. $what: which one; $value: with its unit or currency
fuel-worked = { $what ->
    [amount] That makes { $value }.
    [price] That makes { $value } for one.
   *[total] That makes { $value } in all.
}
fuel-any-two = Any two of amount, price and sum give the third.
worked-out = worked out
receipt-goes-with = { $count ->
    [one] One paper goes with this reading.
   *[other] { $count } papers go with this reading.
}
receipt-read = Read it
receipt-leave = Leave it in the tray
# $reading, as it now stands in the book
pump-saved = Saved: { $reading }
# $use: from the last full tank to this one; $kind: of which fuel
pump-used = { $use } since the last full tank
pump-used-kind = { $kind }: { $use } since the last time full
pump-undone = Taken back. The line stays readable in the book, struck out.
# An alarm on consumption. $since: a day; $low, $high: in percent, with a sign where it is less; $likely: most likely
watch-title = The car uses more than it did
watch-says = Since { $since } it has used about { $likely } % more than before at this time of the year (between { $low } and { $high } %).
watch-open = See what may explain it
readings-last = Last readings
readings-none = No reading is in the book yet.

# ---- Counter

counter-title = To get for the next visit
counter-nothing = The next visit needs nothing that the book knows of.
counter-tap = Tap a number, and it fills the screen for the clerk.
# $number: the maker's number
get-shown = Part number { $number }
get-by-owner = bought by yourself
get-last = Last on { $day }, { $where }
get-last-price = Last on { $day }, { $where }, for { $price }
# $time: in months or days; $distance: how far the car went in it
get-lasted = The last one lasted { $time } and { $distance }
get-lasted-time = The last one lasted { $time }
# $month: month and year in which the present one was fitted
get-since = In since { $month }
used-days = { $days ->
    [one] one day
   *[other] { $days } days
}
# $amount: with its measure
get-at-home = at home: { $amount }
get-home = At home already
get-home-word = at home
# $number: the one that was fitted, in place of which another is asked for
get-in-place = in place of { $number }
counter-all-home = All that the next visit needs is at home.
counter-back = Back to the counter
# $numbers: those of the same part, as a list
also-as = also as { $numbers }
# $mark: wrong or superseded; $ask: yes where there is a number to ask for, $instead
warning = { $mark ->
    [wrong] Wrong for this car
   *[superseded] Superseded
}{ $ask ->
    [yes] ; ask for { $instead }
   *[no] {""}
}
get-copy = Copy the list
get-copied = The list is copied.
get-copy-by-hand = This device does not let the list be copied; select it here.
get-list = The list
get-unknown = No part in the book yet; the number stands in the handbook.
tap-to-close = Tap anywhere to close
tray-for = A photo of the receipt goes here at once. Sort it out later, at the desk.
photo-take = Photograph a paper
take-files = Choose files
take-drop = Let go, and it goes into the tray.
take-folder = This is a folder; open it and choose the files in it.
# $count: how many files were left out
take-stopped = { $count ->
    [one] Stopped: one file was not taken in.
   *[other] Stopped: { $count } files were not taken in.
}
photo-progress = { $done } of { $total } taken in
# $percent: how much of the file that is under way is done
photo-part = this one: { $percent } %
photo-known = { $count ->
    [one] One of the photos is in the book already; it is the same paper.
   *[other] { $count } of the photos are in the book already; they are the same papers.
}
# What another app shares with this one. $count: how many files; $car: what its household calls it
shared = Shared files
shared-nth = Shared file { $number }
shared-which = { $count ->
    [one] For which car is the shared file?
   *[other] For which car are the { $count } shared files?
}
shared-later = Later
shared-waits = { $count ->
    [one] One shared file waits.
   *[other] { $count } shared files wait.
}
shared-waits-for-car = { $count ->
    [one] One shared file waits for a car: open its book, and the file goes into its tray.
   *[other] { $count } shared files wait for a car: open its book, and they go into its tray.
}
shared-choose = Choose the car
shared-take = Take in what waits
shared-leave = { $count ->
    [one] Leave it out
   *[other] Leave them out
}
shared-filed = { $count ->
    [one] One shared paper is in the tray of { $car }.
   *[other] { $count } shared papers are in the tray of { $car }.
}
paper-open = Open the paper of { $day }
paper-missing = The photo of { $day } is not on this device
paper-open-page = Open the paper of { $day }, page { $page }
paper-of = Paper filed on { $day }
paper-of-page = Paper filed on { $day }, page { $page }
# $page: which page of its document it is
paper-page = page { $page }
paper-picture = Photo of the paper
paper-enlarge = Enlarge the photo
# $page: which page of its PDF it is; $pages: how many that has
pdf-page-of = { $pages ->
    [one] PDF of one page
   *[other] PDF, page { $page } of { $pages }
}
pdf-page = PDF, page { $page }
pdf-open = Open the PDF
pdf-save = Save the PDF
pdf-file = paper-{ $day }.pdf
pdf-saved = The PDF was written to { $path }.
paper-title = Where does it belong?
paper-back = Back to the paper
paper-not-waiting = This paper waits in the tray no more.
paper-tick = The paper of { $day } belongs to this visit
paper-belongs = belongs to it
tie-none = There is no line yet to which it could belong.
tie-to = Or it belongs to a line in the book
tie-choose = Choose a line
tie-fitting = Of this day or this cost
tie-others = Others
tie-fill = Fill
tie-bought = Bought
tie = Put it there
ways-title = What is it?
way-bought = Bought, to be fitted later
way-visit = A visit
way-fill = A fill
read-do = Read it
read-again = Read it again
read-busy = Reading the paper …
read-done = The paper is read; what it says stands below.
read-not-installed = Reading papers is not installed on this device; what it says is typed in.
read-for = This is what it seems to say. Put right what is wrong; nothing is written yet.
read-nothing = Nothing could be read on it that belongs in the book.
# $of: what was read there
read-crop = Photo: { $of }
read-take = Take it over
read-take-tax = Keep it in the note
read-which-day = Which day is it?
read-choose-day = Choose one of the two days first.
read-total = Total
read-tax = Tax
# $amount: with its currency
read-tax-note = Tax { $amount }
read-other-unit = This car counts in another unit, so it is not taken over.
read-rows = All the words on it
read-agrees = The sums on it agree.
# $kind: which sum; $worked: what the other figures come to; $printed: what is printed
read-check = { $kind ->
    [lines] The lines come to { $worked }, but the total printed is { $printed }.
    [net-and-tax] Net and tax come to { $worked }, but the total printed is { $printed }.
    [paid] Paid less the change comes to { $worked }, but the total printed is { $printed }.
    [fuel] Amount and price come to { $worked }, but { $printed } is printed for the fuel.
   *[other] The figures come to { $worked }, but { $printed } is printed.
}
sure-sure = sure
sure-likely = likely
sure-doubtful = please check
corners-set = Set the corners
corners-title = The corners of the paper
corners-how = Drag each handle onto a corner of the paper.
corners-keys = The arrow keys move it; with shift it goes further.
corners-photo = The photo as it was taken
corners-do = Straighten
corners-undo = As it was taken
# $left, $top: in percent of the photo
corners-at = { $left } % from the left, { $top } % from the top
corner-upper-left = upper left corner
corner-upper-right = upper right corner
corner-lower-right = lower right corner
corner-lower-left = lower left corner
stock = In stock
stock-none = Nothing is waiting at home.
# $amount: with its measure
stock-left = { $amount } left
stock-bought = bought on { $day }
stock-bought-at = bought on { $day } at { $shop }
stock-fitted = Fitted
# $part: maker and number
stock-fitted-part = Fitted: { $part }
# $part: maker and number
stock-amend-part = Put the purchase right: { $part }
stock-follows = What is in stock follows it.
stock-add = Something bought
bought-title = Something bought
bought-amend-title = Put a purchase right
bought-for = It waits in stock until it is fitted; then it is not bought twice.
bought-shop = Shop
bought-cost = Cost of all of it
partslist-open = All parts
partslist-title = The parts of this car
partslist-for = Every part that was fitted, the newest first.
partslist-none = No part was ever written down.
partslist-find = Find a part by name, number or job
partslist-found = { $count ->
    [0] No part fits.
    [one] One part fits.
   *[other] { $count } parts fit.
}
# $price; $amount: for how much or how many; $day
part-paid = { $price } for { $amount } on { $day }
# $items: names
part-served = for { $items }
part-times = { $count ->
    [one] fitted on { $day }
   *[other] fitted { $count } times, last on { $day }
}
note-add = Note something
# $part: maker and number
note-on = Note something on { $part }
note-same = The same part under other numbers
note-same-number = Number
note-same-add = Add a number
note-same-remove = Remove number { $number }
note-mark = Does anything warn of it?
mark-none = nothing
mark-wrong = wrong for this car
mark-superseded = superseded
note-instead = Number to ask for in its place
throw-away = Throw it away
throw-away-means = The photo is deleted for good. The book keeps a line that says so.
throw-away-do = Delete the photo
throw-away-left = The paper is thrown away, but its photo could not be deleted from the disk yet. ‘Check the books’ in the settings tries again and says why.

# ---- Bay

bay-title = What is to be done?
bay-for = Choose one job or several. What can hurt you comes before the first step.
bay-who = Who does the work?
bay-visit = For the next visit
bay-visit-all = Choose all of these
bay-others = Other jobs
bay-jobs = Jobs
bay-further = { $count ->
    [one] One more job
   *[other] { $count } more jobs
}
bay-find = Find a job by name
bay-found-none = No job has that in its name.
past-title = When was it last done?
past-for = From a receipt, a stamp or memory; a reading helps, and may stay empty. From that day on the plan can count.
by-owner = I do it myself
by-workshop = A workshop
by-owner-word = own work
bay-next = { $count ->
    [0] Choose a job
    [one] Go on with this job
   *[other] Go on with these { $count } jobs
}
item-own = Something else, in your own words
item-own-add = Add it
item-more = Add from the catalogue
item-more-choose = Choose an item
cautions-of-jobs = What can hurt at this work
cautions-title = Before the first step
cautions-read = I have read this; go on
caution-hot-engine-name = Hot engine
caution-hot-engine = Let the engine cool, unless the work asks for a warm one. Exhaust, oil and coolant burn skin long after it was switched off, and a hot radiator cap sprays when it is opened.
caution-jacking-name = Raising the car
caution-jacking = Never go under a car that only a jack holds. Stand it on firm, level ground, chock the wheels that stay down, lift at the points the handbook shows, and set it on stands rated for its weight.
caution-fuel-name = Fuel
caution-fuel = Fuel vapour catches fire from a spark you cannot see. Work outdoors, with no flame, lamp or running engine near; let the pressure off the line first; keep an extinguisher within reach.
caution-battery-name = Battery
caution-battery = Its acid burns eyes and skin and its gas explodes. Wear goggles and gloves, take the negative terminal off first and put it back last, and lay no tool across the poles.
caution-pressure-name = Springs, airbags and pressure
caution-pressure = Coolant and fuel stand under pressure. Never open the cooling system hot, and let the pressure off a fuel line as the handbook says; the high-pressure side of a diesel pierces skin and is work for a workshop, and so are tensioned springs, airbags and refrigerant.
caution-moving-parts-name = Moving parts
caution-moving-parts = Take the key away before you reach in, unless the engine has to run for it; then keep hands, hair, sleeves and tools well clear of belts and fans. Fans start by themselves, and rings and watches come off first.
caution-fumes-name = Fumes
caution-fumes = Never run the engine indoors. Exhaust gas has no smell that warns you, and it kills within minutes in a garage.
caution-brake-dust-name = Brakes and their dust
caution-brake-dust = Do not blow brake dust about or breathe it; old linings may hold asbestos. Wear a mask and wipe it off wet. An electric parking brake has to be put in its service position first. Before the car moves, pump the pedal until it is firm, then test the brakes at a walking pace.
caution-used-fluids-name = Used oil and fluids
caution-used-fluids = Used oil, coolant and brake fluid poison water and animals. Catch them, keep them apart and take them to a collection point; keep them off your skin.
caution-high-voltage-name = High voltage
caution-high-voltage = Orange cables carry a voltage that kills, even when the car is off. Keep away from them; only people trained and licensed for it may work there.
caution-workshop-name = Work for a workshop
caution-workshop = This job needs training, special tools or a licence. Unless you have them, let a workshop do it.
caution-handbook-name = The handbook decides
caution-handbook = The owner’s handbook of your car, the rules where you live and licensed practice come before anything said here.
caution-unknown-name = Take care
caution-unknown = A newer version knows a danger in this job that this one cannot name; read the handbook before you begin.
visit-title = Write the visit into the book
visit-choose-again = Choose again
visit-day = Day
# $unit: km or mi
visit-reading = Reading in { $unit }
visit-reading-hint = Leave it empty when nobody wrote it down.
# $digits: those at the head of the reading
visit-reading-leading = { $digits } stands there already; type the rest, or leave it so when nobody read it.
visit-by = Done by
visit-workshop = Name of the workshop
visit-parts = Parts and fluids
visit-found = What did you find?
visit-found-for = Leave it empty where you did not look. A measured value lets the plan reckon when the limit comes.
found-not-looked = not looked at
# $what: what is measured; $unit; $item: on which item
found-value = { $what } in { $unit } ({ $item })
# $limit: with its unit
found-limit = At { $limit } it is time.
found-more = Something found on another item
part-number-of = Part { $number }
part-name = What it is
part-maker = Maker
part-number = Maker’s number
part-quantity = How much
part-measure = In
part-price = Price of all of it
part-item = For
part-item-none = no one job
part-kind = Kind
part-kind-none = not known
part-remove = Remove part { $number }
part-add = Add a part
visit-cost-and-note = Cost and note
visit-cost = Cost of the whole visit
visit-note = Note
visit-papers = Papers
visit-record = Write it into the book
visit-recorded = It stands in the book.
visit-recorded-see = See the line

# ---- Book

book-ways = In the book
book-lines = Lines
running-title = Fuel and distance
costs-title = Costs
measured-title = Measured values
plot-table = The figures as a table
period = How far back
period-1 = 1 year
period-3 = 3 years
period-all = all
column-day = Day
column-to = To
column-reading = Reading
column-distance = Distance
column-amount = Amount
column-use = Consumption
column-note = Note
column-all = All together
use-none = Two full tanks are needed, and what lies between them is the first figure. None is in the book yet.
# $kind: a fuel
use-title = Consumption: { $kind }
use-unit = Shown in
use-less = Lower is better: the car goes as far on less.
use-more = Higher is better: the car goes further on as much.
# What whoever does not see the plot hears. $count: of full tanks; $from, $to: days; $least, $most: with their unit
use-says = Consumption from { $from } to { $to }, { $count ->
    [one] over one full tank
   *[other] over { $count } full tanks
}: between { $least } and { $most }.
use-key-line = from full tank to full tank
use-key-year = mean of a year, over its distance
use-key-mark = work on the car, by its number below
use-key-other = other visits
use-last = Last full tank
use-year = Last 12 months
use-overall = Over all of it
use-least = The least
use-most = The most
# $use, $day
use-on = { $use } on { $day }
use-unused = { $count ->
    [one] One stretch is left out.
   *[other] { $count } stretches are left out.
}
# $from, $to: days
unused-between = { $from } to { $to }
apart-missed = a fill within it was not written down
apart-no-distance = by the readings the car went nowhere, or backwards
apart-too-little = less than a car can do with: a reading is mistyped, or a fill is missing
apart-too-much = more than a car uses: a reading or the amount is mistyped
# $day; $amount, $before: with their unit
odd-larger-than-ever = On { $day } { $amount } went in; never more than { $before } before. Was it mistyped?
odd-reading-falls = The reading of { $day } is lower than that of a fill before it.
odd-other-kind = The fill of { $day } is of a kind that this car does not take by its sheet; it counts for nothing.
helped-title = Did it help?
helped-more = What else moves consumption, and the plot
# $codes: the codes, if they were written down; $count: how many
helped-cleared = { $count ->
    [0] codes cleared
   *[other] { $codes } cleared
}
helped-none = No visit lies between enough full tanks to say anything.
# $low, $high, $percent: in percent
helped-better = Yes: the car has used { $low } to { $high } % less since.
helped-worse = No: the car has used { $low } to { $high } % more since.
helped-no-larger-than = No difference larger than { $percent } %.
# $more: full tanks; $kind: electric or fuel
helped-cannot-tell-yet = { $kind ->
    [electric] Cannot tell yet: about { $more ->
        [one] one more full charge
       *[other] { $more } more full charges
    } for a difference of 3 %.
   *[fuel] Cannot tell yet: about { $more ->
        [one] one more full tank
       *[other] { $more } more full tanks
    } for a difference of 3 %.
}
helped-cannot-tell = Cannot tell: there is too little from before to compare with.
# $others: how many other visits or clearings of codes lie within a tank of this one
helped-together = { $others ->
    [one] This is said of it and one other entry close by together.
   *[other] This is said of it and { $others } other entries close by together.
}
# $before, $after: how many full tanks were compared; $season: in percent
helped-compared = { $before } full tanks before, { $after } after; right in 95 cases of 100.
helped-compared-season = { $before } full tanks before, { $after } after; right in 95 cases of 100, with up to { $season } % from the season allowed for.
effects-title = What else moves it
effects-for = Cold and short trips move consumption by more than most work does. Published figures, for the distance on the same amount:
# $how: by, up-to, between or none; $percent, $to: without a sign; $way: less or more far
effect-change = { $how ->
    [none] no difference found
    [up-to] up to { $percent } % { $way ->
        [less] less far
       *[more] further
    }
    [between] { $percent } to { $to } % { $way ->
        [less] less far
       *[more] further
    }
   *[by] { $percent } % { $way ->
        [less] less far
       *[more] further
    }
}
effect-cold-electric = Electric car, in town, at -7 instead of 25 °C
effect-cold-hybrid = Petrol with an electric motor, in town, at -7 instead of 25 °C
effect-cold-short-trips = Petrol, trips of a few kilometres, at -7 instead of 25 °C
effect-cold = Petrol, in town, at -7 instead of 25 °C
effect-cold-older-test = The same in an older test
effect-slower-motorway = 100 instead of 120 km/h on a motorway
effect-oxygen-sensor = A faulty oxygen sensor replaced
effect-air-filter-carburettor = A clogged air filter renewed, on an engine with a carburettor
effect-tuning = An engine out of tune put right
effect-oil-grade = The grade of oil that the maker names
effect-air-filter-injection = A clogged air filter renewed, on an engine with injection
watch-due = Due, and might explain it
watch-look = Worth a look as well
watch-not-learnt = A lasting change is watched for once there is a year of full tanks, 20 at least.
watch-quiet = No lasting change stands.
# $since, $raised: days; $low, $high: in percent, with a sign where it is less
watch-shift = From { $since } on, { $low } to { $high } % (plain on { $raised })
watch-shifts = { $count ->
    [one] One lasting change so far
   *[other] { $count } lasting changes so far
}
explains-tyre-pressure = the pressure in the tyres
explains-brakes-dragging = a brake that drags: one wheel gives off more heat than the others after a drive; hold a hand near it and do not touch it
explains-thermostat = a thermostat that stays open: the engine warms up slowly
explains-oxygen-sensor = an oxygen sensor
explains-fuel-trims = the fuel trims, with a scan tool
explains-air-filter-carburettor = the air filter, if this engine has a carburettor
odometer-title = Odometer
# $from, $to: days; $first, $last: readings
odometer-says = Odometer from { $first } on { $from } to { $last } on { $to }.
odometer-pace = At its pace the car goes about { $distance } a year.
odometer-ahead = On { $day } it will most likely show between { $low } and { $high }.
odometer-key-read = what the instrument showed
odometer-key-likely = most likely, with its span
odometer-key-doubtful = so far off that it is left out
odometer-travelled = The instrument was replaced: the plot counts on, and the table has what it showed.
odometer-none = Two readings are needed before there is anything to draw.
column-shown = It showed
column-likely = Most likely
column-span = Span
costs-none = No price is in the book yet. Fills, parts and visits with a price are added up here.
cost-fuel = Fuel
cost-parts = Parts
cost-work = Work
cost-duties = Duties
# $currency
costs-years = By year, in { $currency }
costs-months = The last 12 months, in { $currency }
costs-running = { $period }, so far
# $first, $last: years or months; $currency; $most: the dearest, with its $when
costs-says = Costs from { $first } to { $last } in { $currency }; the most was { $most } in { $when }.
costs-distance = By distance
# $currency
costs-per-km = Each kilometre, in { $currency }
costs-per-mi = Each mile, in { $currency }
# $from, $to: days; $distance
costs-last-year = Last 12 months, { $distance }
costs-all = All that is known, { $distance }
# $fills, $visits: how many have no price
costs-unpriced-fills = { $fills ->
    [one] One fill has no price and is in no sum.
   *[other] { $fills } fills have no price and are in no sum.
}
costs-unpriced-visits = { $visits ->
    [one] One visit with parts or a workshop has no price and is in no sum.
   *[other] { $visits } visits with parts or a workshop have no price and are in no sum.
}
measured-for = What a scan tool or a meter shows, kept with its day. A slow drift tells of a fault before a light does.
measured-caution = Read it off with the engine running only outdoors, the car braked and out of gear, hands and sleeves away from belts and fans.
measured-write = Write down what was read
measured-paste = Or paste what the scan tool saved
measured-paste-hint = One value a line, such as ‘LTFT B1 -4.7’.
measured-paste-do = Take the values out of it
measured-unread = { $count ->
    [one] One line was not understood and is left out:
   *[other] { $count } lines were not understood and are left out:
}
measured-taken = { $count ->
    [0] No value was found in it.
    [one] One value was found; look at it above and save.
   *[other] { $count } values were found; look at them above and save.
}
measured-saved = It stands in the book.
# $what: a parameter; $unit
measured-field = { $what } in { $unit }
# $what, $value: with its unit
measured-is = { $what } { $value }
measured-pasted = pasted from another program
measured-none = Nothing was written down yet.
# $what: a parameter; $from, $to: days; $count: how many values; $last: with its unit
measured-says = { $what }, { $count } values from { $from } to { $to }; last { $last }.
# $value: with its unit; $day
measured-last = { $value } on { $day }
# $low, $high: with their unit; $source: whose limits they are
measured-between = Usually { $low } to { $high }, { $source }.
measured-from = Usually { $low } or more, { $source }.
measured-to = Usually { $high } or less, { $source }.
measured-no-limit = No one limit serves every car; what matters is that it stays as it is.
limit-common = by common practice
limit-of = after the { $source }
# $since: a day; $size: with its unit and sign
measured-jump = Since { $since } it stands { $size } from where it was.
# $low, $high: with their unit and sign
measured-drift = It drifts by between { $low } and { $high } a year.
measured-handbook = The handbook of the car comes before these limits.
measured-key-limit = limit
measured-key-outside = outside of it
judgement-usual = usual
judgement-low = lower than usual
judgement-high = higher than usual
judgement-implausible = no instrument shows this
parameter-short-trim-1 = Short-term fuel trim, bank 1
parameter-long-trim-1 = Long-term fuel trim, bank 1
parameter-short-trim-2 = Short-term fuel trim, bank 2
parameter-long-trim-2 = Long-term fuel trim, bank 2
parameter-coolant = Coolant temperature, engine warm
parameter-idle-air = Air flow at idle, engine warm
parameter-rest-voltage = Battery voltage at rest
fact-measured = What was read
fact-source = How
line-measured = { $what }
filter = Which lines
filter-year = Year
filter-any-year = All years
filter-item = Item
filter-any-item = All items
filter-text = Text
filter-readings = Readings and fills
lines-count = { $count ->
    [one] One line
   *[other] { $count } lines
}
lines-found = { $count ->
    [0] No line fits.
    [one] One line fits.
   *[other] { $count } lines fit.
}
lines-newer = { $count ->
    [one] One was written by a newer version and is kept as it is.
   *[other] { $count } were written by a newer version and are kept as they are.
}
line-vehicle = The book of { $name } was opened
line-reading = Reading
line-fuel = { $volume }, { $fill }
line-instrument = Instrument replaced: { $old } on the old one, { $new } on the new one
# $what: the parts
line-bought = Bought: { $what }
# $part: maker and number; $what: what warns of it, and its other numbers
line-part-note = Note on { $part }
line-part-noted = { $part }: { $what }
line-paper = Paper that belongs to no line yet
line-plan-day = { $item }: next time on { $day }
line-plan-any-day = { $item }: next time on any day
line-plan-off = { $item }: taken off the plan
# $monthly: yes where it is one month and nothing else
line-plan-handbook = { $item }: { $monthly ->
    [yes] every month
   *[no] every { $interval }
}, as you set it
line-plan-catalogue = { $item }: back to what the catalogue says
line-newer = Written by a newer version
line-struck = struck out
line-struck-why = struck out: { $why }
line-thrown-away = thrown away
line-thrown-away-why = thrown away: { $why }
line-amended = { $count ->
    [one] amended once
    [2] amended twice
   *[other] amended { $count } times
}
line-papers = { $count ->
    [one] one paper
   *[other] { $count } papers
}
line-back = Back to the book
fact-reading = Reading
fact-done = What was done
fact-found = What was found
fact-by = By
fact-parts = Parts and fluids
fact-cost = Cost
fact-note = Note
fact-papers = Papers
paper-gone = The photo was deleted when the paper was thrown away.
fact-status = Status
fact-fuel = Fuel
fact-says = It says
amend = Put it right
amend-means = What stands here now stays readable, with the new words beside it.
amend-do = Put it right
strike = Strike it out
strike-means = A line that is struck out no longer counts, and stays readable. No line is ever erased.
strike-do = Strike it out
why-may-be-empty = Why (may stay empty)
versions = { $count ->
    [one] Its one version
   *[other] Its { $count } versions
}
version-first = Written on { $day }
version-later = Put right on { $day }
# $hash: SHA-256
version-hash = SHA-256 of its entry: { $hash }

# ---- The card

cardpage-open = History card
cardpage-title = The history card
# $shown: visits in the square; $left: older ones left out
cardpage-shows = { $left ->
    [0] Exactly what prints. The square holds all { $shown } visits.
   *[other] Exactly what prints. The square holds the latest { $shown } visits; { $left } older ones had no room in it.
}
cardpage-size = Size
cardpage-size-id1 = Wallet card (ID-1, 85.60 × 53.98 mm)
cardpage-size-a6 = A6, two sides
cardpage-size-a5 = A5, folded to A6
cardpage-size-a4 = Full page
cardpage-paper = Paper in the printer
cardpage-paper-own = As large as the card
cardpage-paper-a4 = A4
cardpage-paper-letter = US Letter
cardpage-lang = Language of the card
cardpage-vin = Identification number (VIN)
cardpage-vin-whole = Whole
cardpage-vin-last-six = Last six characters, not in the square
cardpage-vin-hidden = Left out
cardpage-hide-names = Leave the workshops’ names out
cardpage-prices = Tell what each visit cost
cardpage-turn-long = Print at full size (100 %) on both sides, turned about the longer edge.
cardpage-turn-short = Print at full size (100 %) on both sides, turned about the shorter edge.
cardpage-save = Save as PDF
cardpage-file = history-card.pdf
# $path: a file
cardpage-saved = The card was written to { $path }.
cardpage-square = What a buyer sees who scans the square
cardpage-square-address = His phone opens { $address }, which reads the card out of the address itself, verifies it and shows it.
cardpage-square-plain = His camera shows the history as plain text. It cannot be verified, because no address is set for cards.
cardpage-square-set = Set one in the settings
cardpage-proves = The signature proves that this device wrote the card and that nobody changed it since. It does not prove that the work was done.
cardpage-text = The text in the square
cardpage-signed = Signed with the key { $fingerprint }
cardpage-page = The card, page { $number } of { $of }

# The full report, beside the card.
reportpage-heading = Full report
reportpage-about = Every visit with its parts and receipts, what it comes to, and what a buyer may ask, as a PDF of A4 pages that can be read aloud. What the card leaves out is left out here too.
reportpage-lang = Language of the report
reportpage-receipts = Show small photos of the receipts; without prices they are too small to be read
reportpage-receipts-not = They would show the number or the names that are left out, so they are left out too.
reportpage-notes = Your notes and your own words for a job are printed as you wrote them: look whether one of them names a workshop.
reportpage-prices = Tell what each visit, part and year cost
reportpage-save = Save the full report as PDF
reportpage-busy = The report is being set. With hundreds of visits this takes a while.
reportpage-file = full-report.pdf
# $path: a file
reportpage-saved = The report was written to { $path }.

# ---- Handing the book over

handover-title = Hand over
handover-for = One file for the next owner. He opens it with the same program and goes on writing in the same book; every signature comes with it, so a card that you printed still holds against it.
handover-holds = The file holds
# $entries: how many
handover-entries = { $entries } entries: every visit, reading, cost and note as it was written, struck-out lines too, with the plan and the numbers of the car
# $room: how much, with its unit
handover-papers = { $count ->
    [0] none
    [one] one photo or document ({ $room })
   *[other] { $count } photos and documents ({ $room })
}
handover-missing = { $count ->
    [one] One photo or document of the book is missing or damaged and cannot go with it.
   *[other] { $count } photos and documents of the book are missing or damaged and cannot go with it.
}
handover-without-papers = Keep the photos and documents here
handover-day = Day of the handover
handover-reading = Reading at the handover
may-be-empty = May stay empty.
handover-words = To the next owner
handover-words-hint = May stay empty. It stands in the book for everybody who has it after him.
handover-passphrase = Passphrase for the file
handover-passphrase-hint = Without one, whoever has the file can read the book.
handover-passphrase-again = The passphrase once more
handover-passphrase-differs = The two are not the same yet.
handover-ask = Hand the book over
handover-means = From then on this book is read-only here.
handover-means-undo = Should the sale fall through, it can be taken back; that stays readable in the book.
handover-do = Write the file and hand it over
handover-busy = The file is being written …
# $entries, $papers: how many; $room: how much, with its unit
handover-written = The file is whole: { $entries } entries, { $papers ->
    [0] no photos or documents
    [one] one photo or document
   *[other] { $papers } photos and documents
}, { $room }.
handover-is-locked = It is locked; tell the next owner the passphrase by another way.
handover-is-open = It is not locked.
handover-fetch = Save the file
# $path: a file
handover-stands = It stands at { $path }.
handover-papers-went = went with the book
handover-papers-stayed = stayed here
handover-again = Write the file again
handover-again-for = The same book once more, as it was handed over: for a file that was lost, or a passphrase that was forgotten.
handover-again-do = Write the file
handover-back = Take it back
handover-back-for = Then the book can be written in here again. The handover is struck out and stays readable. A file that was given away can not be called back.
handover-back-do = Take the book back
# $day: a day
handed-over-line = Handed over on { $day }; read-only here
handed-over-place = The car has gone to its next owner, and so has its book. Here its history can be read and its card printed; nothing more is written.
handed-over-book = Read the book
line-handover = Handed over to the next owner
line-taken-back = Taken back
# $why: the reason
line-taken-back-why = Taken back: { $why }
fact-key = Key
writers = Who wrote in this book
writers-for = A book knows devices by their keys, and no names.
# $from, $to: days
writer-span = { $from } to { $to }
writer-entries = { $entries ->
    [one] one entry
   *[other] { $entries } entries
}
# $days: one or more
writer-handed-over = handed it over on { $days }
# $fingerprint: of a key
writer-own = This device, { $fingerprint }
writer-key = Key { $fingerprint }
receive-title = Take in a book
receive-for = For the file that the last owner of a car wrote. Every signature is verified before anything is written.
receive-choose = Choose the file
receive-locked = The file is locked. The last owner knows the passphrase.
passphrase = Passphrase
receive-open = Open it
# $share: per cent
receive-busy = Reading and verifying … { $share } %
# $name: the car
received = The book of { $name } is here: { $entries } entries and { $papers ->
    [0] no photos or documents
    [one] one photo or document
   *[other] { $papers } photos and documents
}, every signature verified. You go on writing in it.
received-more = The book of { $name } was here already: { $new ->
    [0] nothing of the { $entries } entries in the file is new
    [one] one of the { $entries } entries in the file is new
   *[other] { $new } of the { $entries } entries in the file are new
}, every signature verified.
received-never-handed-over = No line of this book hands it over, so whoever gave you the file may go on writing in it; ask for the file of a handover.
received-stayed = The photos and documents stayed with the last owner.
received-missing = { $count ->
    [one] One photo or document of the book is missing from the file.
   *[other] { $count } photos and documents of the book are missing from the file.
}
received-words = From the last owner
received-open = Open the book of { $name }
compare-title = Hold an old card against this book
compare-for = A card that an earlier owner printed says whether his years stand in the book as they stood then.
compare-text = The text in the card’s square
compare-text-hint = Scan the square with any camera and copy the whole address.
compare-do = Compare
# $day: the card’s; $same: visits as they are printed
compare-unchanged = The book holds everything that the card of { $day } vouches for ({ $same ->
    [one] one visit
   *[other] { $same } visits
} as printed).
compare-differs = The book does not hold everything that the card of { $day } vouches for ({ $same ->
    [one] one visit
   *[other] { $same } visits
} as printed).
compare-key-known = The card’s key, { $fingerprint }, has written in this book.
compare-key-unknown = The card’s key, { $fingerprint }, has written nothing in this book: it is another car’s, or the history was written anew under another key.
compare-car-unknown = Not both show an identification number, so it is not certain that they are of one car.
# $entries, $since: how many; $newest: a day
compare-moment-found = When the card was printed the book held { $entries } entries, the newest of { $newest }. Each of them stands in it still, unchanged; { $since ->
    [0] nothing was written since.
    [one] one was written since.
   *[other] { $since } were written since.
}
compare-moment-not-found = The book never was what the card vouches for: at least one entry of that day was left out or replaced, or the card is of another book.
compare-moment-no-head = The card says nothing of the book as a whole, so only its visits could be compared.
compare-moment-too-many = Several devices wrote so much at the same time that it cannot be said whether the book was what the card vouches for.
compare-late = { $late ->
    [one] One entry bears
   *[other] { $late } entries bear
} an earlier time and came in later, from another device or with a clock set back.
compare-difference-other-car = The identification numbers differ.
# $was, $is: a day
compare-difference-first-use = The day of first use was { $was } on the card and is { $is } now.
compare-difference-not-newer = The second card was issued before the first.
# $was: a reading and its day
compare-difference-latest-reading = The card’s latest reading, { $was }, is not in the book.
# $was, $is: readings
compare-difference-instrument = The instrument that was replaced on { $day }, from { $was } to { $is }, is not in the book.
compare-difference-fewer = The book held { $was } visits then, and { $is } now.
compare-difference-missing = A visit of { $day } is not in the book.
compare-difference-changed = On { $day } the book holds another visit.
compare-difference-amended = The visit of { $day } was put right since; what stood there stays readable.
compare-difference-struck-out = The visit of { $day } was struck out since and stays readable.
compare-difference-added = A visit of { $day } was written down after the card.
# $visit: day, reading and work
compare-then = On the card: { $visit }
compare-now = In the book: { $visit }

# ---- A car

first-title = A service book for your car
first-for = What was done, with what part, at what reading, and the paper to prove it. It stays on this device.
add-title = Add your car
add-do = Open its book
demo-for = Two cars, nine years; every name, shop and part number is made up.
demo-do = Try it with an invented car
vehicle-name = What you call it
vehicle-name-hint = For instance the colour, or who drives it
vehicle-engine = Engine
engine-petrol = Petrol
engine-diesel = Diesel
engine-petrol-hybrid = Petrol with an electric motor
engine-diesel-hybrid = Diesel with an electric motor
engine-gas = Natural or petroleum gas
engine-electric = Electric
engine-other = Something else
vehicle-unit = The instrument counts
vehicle-reading = It shows now, in { $unit }
vehicle-first-use = First use
vehicle-first-use-hint = From the registration paper; the plan counts from here.
vehicle-bought-new = It has been ours since it was new
bought-new-word = bought new
driven = How is it driven?
driven-short-trips = Mostly trips under 8 km (5 miles), or with a cold engine
driven-towing = Often with a trailer, a heavy load or on long climbs
driven-dust = Often in dust or on unmade roads
driven-standing = Much in standing traffic or idling
driven-plain = nothing that wears it more than usual
vehicle-more = Make, number and yearly distance (can wait)
vehicle-make-model = Make, model and year
vehicle-vin = Vehicle identification number
vehicle-yearly = Expected in a year, in { $unit }
vin-right = The check digit is right.
# $expected: the digit that would be right
vin-wrong = The check digit would be { $expected }. Only North America demands it, so the number is kept; compare it once more with the paper.
identity = What it is
identity-change = Change this
fitted = What it has
fitted-for = The plan leaves out what your car does not have. What you do not know stays on it.
fitted-has = It has
fitted-lacks = It does not have
fitted-unknown = Not known
fitted-yes = Yes
fitted-no = No
fitted-nothing = nothing yet
plan = The plan
plan-find = Find an item by name
plan-found-none = No item has that in its name.
plan-unset-title = Waiting for you
plan-unset-for = How often these come round, only your papers and the rules where you live can say.
plan-unset = No interval yet.
plan-unset-set = set its interval
plan-on-title = On the plan
plan-off-title = Switched off
plan-left-title = Switched off by an earlier owner
plan-left-for = These count again since the car came to you. Switch off what you do not want either.
# $day: when; $by: the fingerprint of his key; $handed: the day of the handover
plan-left = Switched off on { $day }, before the book was handed over on { $handed }, with the key { $by }.
# $count: how many
missing-title = Not for this car ({ $count })
missing-for = What other cars need and this one does not, and why.
missing-engine = No car with this engine has it.
# $things: what the car lacks
missing-lacks = It does not have: { $things }.
missing-has = it has this after all
missing-interval = No car with this engine has it as a rule, so that no interval is known. Give the one that holds for yours.
plan-stakes = What is at stake if it is left undone
# $stakes: one of those below
plan-stakes-says = At stake: { $stakes }.
stakes-comfort = Comfort
stakes-economy = Fuel and power
stakes-repair = A repair
stakes-breakdown = Being left standing
stakes-engine = The engine
stakes-safety = Someone’s safety
plan-tightened = Shortened for { $conditions }.
plan-goes-with = As often as { $item }.
# $interval; $items: what it follows; $source: whose it is
plan-after = Once, within { $interval } after { $items }, { $source }.
plan-pinned = The next time on { $day }, as you chose.
plan-for = What your handbook says always wins. Set its intervals here, and switch off what your car does not have.
# $monthly: yes where it is one month and nothing else; $interval; $source: whose it is
plan-every = { $monthly ->
    [yes] Every month
   *[no] Every { $interval }
}, { $source }.
plan-first = The first time after { $interval }.
plan-off = Switched off
plan-change = change
plan-set = Set the handbook’s interval
plan-set-own = Set this interval
plan-last = Last done on, if you know
plan-switch-off = Switch it off
plan-switch-on = Switch it on again
plan-back = Back to the catalogue
plan-own-add = Add an item of your own
plan-own-do = Put it on the plan
interval-then = How often
interval-first = The first time
interval-first-differs = The first time differs
interval-distance = Distance
interval-unit = Unit
interval-months-label = Months
interval-half = A half month is written .5, as in 7.5.
instruments = Instruments
instruments-none = It has its first instrument, as far as the book knows.
# $day; $old, $new: readings
instrument-line = Replaced on { $day }: the old one showed { $old }, the new one began at { $new }.
instrument-add = The instrument was replaced
instrument-day = Day of the replacement
instrument-old = The old one showed last, in { $unit }
instrument-new = The new one showed first, in { $unit }
instrument-do = Write it into the book

# ---- Settings

theme = Day or night
theme-system = As the system says
theme-light = Day
theme-dark = Night
cars = Cars
car-add = Add another car
address = Address for cards
address-for = The page that opens when somebody scans a card. The history travels in the address behind ‘#’, which no browser sends to the server. Without an address the square holds plain text.
address-address = Address of the page
address-hint = An https address without ‘#’; leave it empty for plain text.
check = Check the books
check-for = Verifies every entry, every chain, every signature and every photo.
check-do = Check now
check-busy = Checking …
# $entries, $photos: how many
check-right = Everything verified: { $entries ->
    [one] { $entries } entry
   *[other] { $entries } entries
} and { $photos ->
    [one] { $photos } photo
   *[other] { $photos } photos
}.
check-left = { $count ->
    [one] One photo
   *[other] { $count } photos
} stayed with an earlier owner.
check-unnamed = { $count ->
    [one] One photo or document on the disk belongs to no entry, as after a paper was cut off on its way in.
   *[other] { $count } photos and documents on the disk belong to no entry, as after papers were cut off on their way in.
}
check-clear = Delete what belongs to no entry
check-cleared = { $count ->
    [one] One photo or document was deleted.
   *[other] { $count } photos and documents were deleted.
}
check-faults = { $count ->
    [one] One fault was found.
   *[other] { $count } faults were found.
}
fault-entry-changed = An entry was changed after it was signed.
fault-entry-misfiled = An entry stands under a key or in a book that is not its own.
fault-entry-unchained = An entry does not follow the one before it; something between them is missing or was put in.
fault-chain-cut-short = A handover names an entry of another writer that is missing here or is another one: that writer's entries were cut short since.
fault-photo-damaged = A photo is not the one that was taken in.
fault-photo-missing = A photo is no longer in the store.
fault-unknown = This does not verify ({ $code })
key = The key of this device
key-for = Every line is signed with it. Whoever scans a card can compare these figures.

# ---- The Bay: something is wrong

trouble-title = Something is wrong
trouble-notice = What do you notice?
symptoms-find = Find what you notice, by a word
symptoms-find-absent = Find what it does not do, by a word
symptoms-none = Nothing has that in its name. Tell it in your own words instead.
# $about: a heading; $count: how many symptoms stand under it; $ticked: how many of them are ticked
symptoms-group = { $about } ({ $ticked ->
    [0] { $count }
   *[other] { $ticked } of { $count } ticked
})
trouble-dark = It is dark, or soon will be
trouble-words-title = In your own words
trouble-words = What is wrong?
trouble-when = When does it happen?
trouble-when-hint = Cold or warm, uphill, in the rain, at what speed.
trouble-noticed = Noticed on another day
trouble-day = Day on which you noticed it
# $count: how many symptoms are ticked as absent
trouble-absent = What it does not do{ $count ->
    [0] {""}
   *[other] {" "}({ $count })
}
trouble-absent-for = What you looked for and did not find rules causes out.
trouble-absent-choose = Choose what it does not do
trouble-next = What to check next
trouble-next-empty = Tick, tell or paste something first
trouble-tell-more = Change what you told
trouble-keep = Keep it in the book
trouble-keep-for = The brief and ‘Keep it’ write it into the book, to be looked at again later; until then it stands on this device alone.
trouble-away = Put it away unwritten
trouble-asked = What do you ask of the workshop?
trouble-open = Open troubles
trouble-earlier = Earlier troubles and codes
trouble-visit-see = See the visit
# $cause: by name
visit-ends-trouble = It ends the trouble. Cause: { $cause }.
visit-ends-nothing = It ends no trouble
trouble-not-ended = The visit is written, the end of the trouble is not. Open it and end it without a visit.
stop-first = Read this first
stop-first-stop = Stop first
stop-first-gently = No farther than to help
stop-first-soon = Have it seen to soon
stop-code = The car reports { $code }
stop-defers = The owner’s handbook, the rules where you live and the emergency services come before anything said here.
stop-unknown = A newer version knows a danger here that this one cannot name. Stop where it is safe and read the handbook.
check-next = Check this next
check-then = And then
check-nothing-told = Nothing told so far points at a cause that is known here. Tick what you notice, or take it to a workshop with the brief below.
check-cautions-left = How it is done stands here once you have read what can hurt.
check-held = Not now, as long as what stands above holds: { $checks }. Leave it to a workshop.
check-none = No check is left that would tell more. Take it to a workshop, with the brief below.
# $check: its name; $time
check-row = { $check } · { $time }
check-more = { $count ->
    [one] One more check
   *[other] { $count } more checks
}
# $minutes: until the fault is found, on the average; $left: the chance that no check finds it
check-order = In this order it takes { $minutes } minutes on the average until the fault is found. The chance that none of these finds it: { $left }.
check-why = Why here
check-takes = Takes
check-costs-money = and costs money
check-opens = Opened for it
check-tools = Tools
check-chance = Finds it
# $thing: what is open, such as ‘bonnet open’
check-open-already = { $thing } (already)
check-tool-lacking = { $tool } (you lack it)
# $check: its name
check-answers = What did it say: { $check }?
answer-found = Something is wrong there
answer-not-found = Nothing wrong there
answer-skipped = Could not check
answer-found-word = something was found
answer-not-found-word = nothing was found
answer-skipped-word = could not be checked
answers = What was checked
answer-back = Take it back
reason-looks-for = It would show this: { $cause }.
reason-symptom = ‘{ $symptom }’ speaks for this: { $cause }.
reason-code = Code { $code } points at this: { $cause }.
reason-overdue = { $item } is overdue, which can lead to this: { $cause }.
reason-touched = { $days ->
    [0] { $item } was done today
    [one] { $item } was done yesterday
   *[other] { $item } was done { $days } days ago
}, which can have upset this: { $cause }.
reason-before = This car has had it before: { $cause }.
# $thing: what is open, such as ‘bonnet open’
reason-shares = Open already by then: { $thing }.
reason-second-look = A first look found nothing, and can have overlooked it.
suspects = What it may be
suspects-for = Chances by common practice, and no diagnosis. The next answer changes them.
suspects-more = { $count ->
    [one] One more cause
   *[other] { $count } more causes
}
suspects-other = Something else: { $chance }
suspect-before = it had this before
chance = about { $percent } %
chance-large = more than { $percent } %
chance-small = less than { $percent } %
tools-yours = Tools you have
tools-for = A check that needs what you lack stands further down. This device remembers your tools.
trouble-end = Was the cause found?
trouble-end-for = When you know what it was, end it here; this car’s book remembers it.
# $check: the name of the check
trouble-found = Something was found: { $check }
trouble-found-for = Was this the cause? If not, go on with the next check.
trouble-cause = What was the cause?
trouble-cause-choose = Choose the cause
cause-unknown = Nobody found out, or it is none of these
trouble-mend = What was done about it?
trouble-mend-owner = The visit says in words that it was mended; change it there as you like.
trouble-mend-workshop = That is work for a workshop. Write the visit once it is done.
# $cause: its name
trouble-mended-own = Mended: { $cause }
trouble-end-visit = Write the visit and end it
trouble-end-none = End it without a visit

# ---- Trouble codes

codes-title = Codes from a scanner
# $number: which scan, from 1
codes-paste = Paste what the scanner said{ $number ->
    [1] {""}
   *[other] {" "}({ $number })
}
codes-paste-hint = As it came: P0300 P0171 pending, or 43 01 35. The whole output tells more than a single code.
codes-more = Add another scan
codes-cleared = The codes were cleared after this
codes-clearing = Cleared is not mended.
codes-clearing-loses = Clearing erases the report and what the car froze with it, and the fault stays. It also erases the car’s own tests: until they have finished again, which takes days of usual driving, an inspection may turn the car away. Keep the text here before anybody clears.
codes-when = Read on another day
codes-day = Day of the scan
codes-no-text = There is no text for this code here; your handbook or a workshop has it.
# $area: such as ‘fuel and air’
codes-hint = probably about { $area }; only a hint
codes-fault-number = number of the fault
codes-causes = It can point at: { $causes }.
# $code: as it is printed
codes-parts = What the signs of { $code } stand for
codes-life = { $code } in this car’s book
codes-all = { $count ->
    [one] One code in this car’s book
   *[other] { $count } codes in this car’s book
}
codes-note-unknown = A newer version knows something about this text that this one cannot say.
codes-empty-lists = Asked for and empty: { $lists }.
codes-readiness = The car’s own tests
# $lamp: yes or no; $count: how many codes the control unit counts
codes-lamp = { $lamp ->
    [yes] The engine lamp is on
   *[no] The engine lamp is off
}; the control unit counts { $count ->
    [0] no stored code
    [one] one stored code
   *[other] { $count } stored codes
}.
codes-ready = All of them are finished.
# $tests: by name
codes-not-ready = { $count ->
    [one] One is not finished
   *[other] { $count } are not finished
}: { $tests }. An inspection may turn the car away until it has.
codes-finished = Finished: { $tests }.
codes-live = Values of the moment
codes-frame-title = Frozen when a code set
codes-frame-title-of = Frozen when { $code } set
# $values: several, such as ‘Engine speed: 812 rpm’
codes-frame = Frozen when a code set: { $values }
codes-frame-of = Frozen when { $code } set: { $values }
# $first, $last: a day and what the instrument showed
codes-seen-once = Seen once, on { $first }.
codes-seen = First seen on { $first }, last on { $last }, in { $times } scans.
# $left, $back: a day and what the instrument showed; $distance: how far between them, or ‘unknown’
codes-back = { $cleared ->
    [yes] Cleared on { $left }
   *[no] Gone by itself on { $left }
}, back on { $back }{ $distance ->
    [unknown] .
   *[other] , after at most { $distance }.
}
# $standing: how it stands
codes-standing = { $standing }, since { $since }.
seen-at = { $day } at { $reading }

# ---- The brief for the workshop

brief-title = Brief for the workshop
brief-do = Write the brief
brief-back = Back to the trouble
brief-car = The car
brief-noticed = Noticed
brief-complaint = The complaint
brief-when = When it happens: { $when }
brief-shows = It shows: { $symptoms }
brief-absent = It does not show: { $symptoms }
brief-codes = Codes
# $status: such as ‘Confirmed’
brief-code = { $code } ({ $status }): { $meaning }
# $said: the code and its meaning; $seen: day and reading; $back: how often it came back
brief-code-seen = { $said }; last read { $seen }{ $back ->
    [0] {""}
    [one] , came back once
   *[other] , came back { $back } times
}.
# $seen: day and reading; $what: what the scan of that day told
brief-at = { $seen }: { $what }
brief-cleared = The codes were cleared on { $day }.
brief-checked = Checked already
brief-work = Work of the last 90 days
# $by: a workshop or the owner
brief-work-line = { $day }: { $items } ({ $by })
brief-work-line-at = { $day }, { $reading }: { $items } ({ $by })
brief-asked = What is asked
brief-asked-usual = Please find the cause and call before you mend it.
brief-no-diagnosis = These are the owner’s observations and no diagnosis.
brief-share = Share or copy
brief-copied = The brief is copied.
brief-by-hand = This device shares and copies nothing here. Select the text and copy it.
brief-print = Print
brief-save = Save as PDF
brief-file = brief.pdf

# ---- Guides

guide-back = Back to the jobs
guide-how = How
guide-all = { $count ->
    [one] One guide
   *[other] All { $count } guides
}
guide-large-type = Large type
guide-usual-type = Usual type
guide-again = Begin again
guide-what = What for, tools and parts
# $time: such as ‘40 min’
guide-time = About { $time } for someone practised, with the place ready.
guide-hazards = What can hurt: { $hazards }
guide-not = Leave it to a workshop when
guide-tools = At hand
guide-supplies = Used up
guide-parts-last = What was fitted the last time:
guide-parts-none = No part in the book yet: see the Counter or the handbook
# $count: how many values the book does not have
guide-numbers-left = { $count ->
    [one] One more stands in the handbook; write it on the car’s sheet
   *[other] { $count } more stand in the handbook; write them on the car’s sheet
}
guide-cautions-for = { $count ->
    [0] Read these before the first step.
    [one] Read these before the first step. The gravest is acknowledged by itself.
   *[other] Read these before the first step. The { $count } gravest are acknowledged one by one.
}
guide-caution-do = I have read it
guide-caution-read = Read
guide-cautions-left = { $count ->
    [one] One is still to be read
   *[other] { $count } are still to be read
}
guide-steps = Steps: { $done } of { $all } done
guide-step-of = Step { $step } of { $all }
guide-step-done = Done, next
guide-step-back = One step back
guide-look = Before you close
guide-after = What may feel odd afterwards
guide-disposal = What is left over
guide-then = What belongs after it
# $items: by name
guide-writes = The visit takes over: { $items }.
guide-not-ready = Not everything is ticked yet. It can be written all the same.

# ---- Numbers of this car

# $what: a name; $value: with its unit
value-is = { $what }: { $value }
value-at-least = at least { $low }
value-between = { $low } to { $high }
value-converted = { $printed } ({ $newton })
value-case = { $case }: { $value }
value-see-handbook = see the handbook
value-only-typical = only typical, not this car’s own: { $cases }
value-typical-mark = Typical, not this car’s own. The handbook has it.
value-cases = { $count } typical cases
value-speak = Read out
origin-memory = { $name } (from memory)
origin-practice = common practice of the trade
numbers = Numbers of this car
numbers-for = From the owner’s handbook or a label on the car. The guides show them in place of what is typical.
numbers-none = None is written down yet.
# $count: how many are still to be found
numbers-left = { $count ->
    [one] One more is asked for by the guides.
   *[other] { $count } more are asked for by the guides.
}
numbers-change = Write down numbers
# $unit: its symbol
numbers-unit = { $what } ({ $unit })
# $words: the complaint in the owner’s words, or what was ticked
line-trouble = Something is wrong: { $words }
line-trouble-ended = Was wrong: { $words }
fact-noticed = Noticed
fact-codes = From a scanner
fact-cause = Cause
