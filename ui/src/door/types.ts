// Written by `cargo xtask types` from the door's Rust types; not to be edited.
// Longer than 400 lines because it holds every type that crosses the door.

export type AlarmView = {
/**
 * The day on which the first span after the shift began.
 */
since: string,
/**
 * The day of the fill at which it was plain.
 */
raised: string,
/**
 * By how much, most likely; more when positive.
 */
likely: string,
/**
 * Between which ends.
 */
size: ChangeView, };

export type AmountTakenView = {
/**
 * The number, with three decimals: `41.300`.
 */
number: string,
/**
 * `litre`, `us-gallon`, `imperial-gallon` or `kilowatt-hour`.
 */
unit: string, };

export type AmountView = {
/**
 * The amount, as a form takes it.
 */
value: string,
/**
 * Its currency.
 */
currency: string,
/**
 * As in [`FieldView`].
 */
sure: string,
/**
 * Where it stands.
 */
area: [number, number, number, number], };

export type AnswerForm = {
/**
 * The check's key.
 */
check: string,
/**
 * What it said.
 */
answer: AnswerKey, };

export type AnswerKey = "found" | "not-found" | "skipped";

export type BayView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * Today.
 */
today: string,
/**
 * The jobs on the plan, most pressing first.
 */
jobs: Array<JobView>,
/**
 * The leading digits of the reading.
 */
leading: string,
/**
 * Workshops named before, most recent first.
 */
workshops: Array<string>,
/**
 * The currency used last.
 */
currency: string,
/**
 * The papers in the tray.
 */
tray: Array<PaperView>,
/**
 * The guides for this car.
 */
guides: Array<GuideLine>,
/**
 * What the cautions of the jobs are, in the order in which they are read; the last one always holds.
 */
cautions: Array<CautionView>, };

export type Because = { "because": "looks-for",
/**
 * The cause.
 */
cause: string, } | { "because": "symptom",
/**
 * The symptom.
 */
symptom: string,
/**
 * The cause.
 */
cause: string, } | { "because": "code",
/**
 * The code.
 */
code: string,
/**
 * The cause.
 */
cause: string, } | { "because": "overdue",
/**
 * The item.
 */
item: ItemView,
/**
 * The cause.
 */
cause: string, } | { "because": "touched",
/**
 * The item.
 */
item: ItemView,
/**
 * How many days ago.
 */
days: number,
/**
 * The cause.
 */
cause: string, } | { "because": "before",
/**
 * The cause.
 */
cause: string, } | { "because": "shares",
/**
 * The id of what is open, as in [`OpeningView`].
 */
word: string, } | { "because": "second-look" };

export type BillPartView = {
/**
 * `fuel`, `parts`, `work` or `duties`.
 */
class: string,
/**
 * How much.
 */
money: MoneyView,
/**
 * The same in minor units, for plots; negative for money that came back.
 */
minor: number, };

export type BillView = {
/**
 * The year, `2026`, or the month, `2026-05`.
 */
period: string,
/**
 * The currency.
 */
currency: string,
/**
 * How many decimals the currency has, by which its minor units are divided.
 */
decimals: number,
/**
 * In the order of the classes.
 */
parts: Array<BillPartView>,
/**
 * All together.
 */
total: MoneyView,
/**
 * The span is over, so that nothing is added any more unless it is written down late.
 */
over: boolean, };

export type BookLine = {
/**
 * Its subject.
 */
subject: string,
/**
 * The day that it names.
 */
day: string,
/**
 * The reading.
 */
reading: Reading | null,
/**
 * What it says.
 */
says: LineContent,
/**
 * The day on which it was written down.
 */
written: string,
/**
 * How often it has been amended.
 */
amended: number,
/**
 * It was struck out, for this reason.
 */
struck: string | null, };

export type BoughtForm = {
/**
 * The day; today when empty.
 */
day: string,
/**
 * The shop; may be empty.
 */
shop: string,
/**
 * What was bought; at least one.
 */
parts: Array<PartForm>,
/**
 * What it cost in all; may be empty.
 */
cost: string,
/**
 * The currency of the cost and of all prices.
 */
currency: string,
/**
 * Anything else worth keeping, at most 2 000 characters.
 */
note: string,
/**
 * The lines of the papers that belong to it.
 */
papers: Array<string>, };

export type BoundsView = {
/**
 * The low end, with a point.
 */
low: string,
/**
 * The high end.
 */
high: string | null, };

export type BriefFrame = {
/**
 * When the scan was made.
 */
seen: SeenAt,
/**
 * The frame.
 */
frame: FrameView, };

export type BriefPage = {
/**
 * Its title.
 */
title: string,
/**
 * Its parts, top to bottom.
 */
parts: Array<BriefPart>,
/**
 * What is said under all of them.
 */
foot: string, };

export type BriefPart = {
/**
 * The heading.
 */
title: string,
/**
 * The lines.
 */
lines: Array<string>, };

export type BriefReadiness = {
/**
 * When the scan was made.
 */
seen: SeenAt,
/**
 * One a control unit; at least one.
 */
units: Array<ReadinessView>, };

export type BriefView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * Its identification number.
 */
vin: string | null,
/**
 * The day of its first use.
 */
first_use: string | null,
/**
 * The keys of what it is known to have.
 */
fitted: Array<string>,
/**
 * Today.
 */
today: string,
/**
 * The day on which the trouble was noticed, with what the instrument showed.
 */
day: string,
/**
 * What the instrument showed then, or the newest reading before.
 */
reading: DatedReading | null,
/**
 * The complaint in the owner's words.
 */
words: string,
/**
 * When it happens, in the owner's words.
 */
when: string,
/**
 * The keys of the symptoms that show.
 */
symptoms: Array<string>,
/**
 * The keys of those that were asked about and do not show.
 */
absent: Array<string>,
/**
 * The codes of all its scans, each once a status, without causes.
 */
codes: Array<CodeView>,
/**
 * What was frozen when a code set, each frame once, with its first scan.
 */
frames: Array<BriefFrame>,
/**
 * The readiness of the last of its scans that told it; nothing where the codes of the car were cleared since.
 */
readiness: BriefReadiness | null,
/**
 * The day on which the codes of the car were last cleared since the trouble was noticed, or for it.
 */
cleared: string | null,
/**
 * What was checked, with what result.
 */
checked: Array<AnswerForm>,
/**
 * The work of the last 90 days, newest first.
 */
work: Array<WorkLine>,
/**
 * What is asked, in the owner's words; may be empty.
 */
asked: string, };

export type CardInstrument = {
/**
 * The day.
 */
day: string,
/**
 * What the old one showed last.
 */
old: Reading,
/**
 * What the new one showed first.
 */
new: Reading, };

export type CardLang = "en" | "de" | "fr" | "es";

export type CardNext = {
/**
 * What will be due.
 */
item: ItemView,
/**
 * The day by which it is due.
 */
day: string | null,
/**
 * The reading by which it is due.
 */
reading: Reading | null, };

export type CardOptions = {
/**
 * How large it is.
 */
size: CardSize,
/**
 * What lies in the printer.
 */
paper: CardPaper,
/**
 * How much of the identification number is shown.
 */
vin: VinShown,
/**
 * Leaves the workshops' names out.
 */
hide_names: boolean,
/**
 * Tells what each visit cost.
 */
prices: boolean,
/**
 * In which language it is printed. What is signed says nothing of it, so that the square is the same in each.
 */
lang: CardLang,
/**
 * The address to use in place of the one in the settings.
 */
viewer?: string, };

export type CardPaper = "own" | "a4" | "letter";

export type CardQuestion = {
/**
 * The key of its sentence.
 */
key: string,
/**
 * How many.
 */
count: number | null,
/**
 * Of how many.
 */
of: number | null,
/**
 * The day that it speaks of, or the first of two.
 */
day: string | null,
/**
 * The reading of that day.
 */
reading: Reading | null,
/**
 * The second day.
 */
then: string | null,
/**
 * The reading of the second day, or of the new instrument.
 */
shown: Reading | null,
/**
 * The items.
 */
items: Array<ItemView>, };

export type CardReadView = {
/**
 * The day on which it was signed.
 */
signed: string,
/**
 * The fingerprint of the key.
 */
fingerprint: string,
/**
 * The key belongs to this device.
 */
own_key: boolean,
/**
 * What reading it has shown: `unchanged` since it was signed, `own-key` or `other-key`, `work-not-proved`.
 */
verdicts: Array<string>,
/**
 * What the household called the vehicle.
 */
name: string,
/**
 * Make, model and year.
 */
make_model: string,
/**
 * The identification number; nothing when hidden.
 */
vin: string | null,
/**
 * The key of the engine.
 */
engine: string,
/**
 * The day of first use.
 */
first_use: string | null,
/**
 * The latest reading.
 */
reading: DatedReading,
/**
 * The visits, oldest first.
 */
visits: Array<CardVisit>,
/**
 * Visits in the book; more than the list holds when old ones were left out.
 */
in_book: number,
/**
 * What comes next.
 */
next: Array<CardNext>,
/**
 * When instruments were replaced.
 */
instruments: Array<CardInstrument>,
/**
 * The first 16 bytes of the head of the book, in hexadecimal.
 */
head: string | null,
/**
 * What to ask the seller, the weightiest first.
 */
questions: Array<CardQuestion>, };

export type CardSize = "id1" | "a6" | "a5" | "a4";

export type CardView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * The pages, each an SVG picture.
 */
pages: Array<string>,
/**
 * The edge about which the printer has to turn the paper: `long-edge` or `short-edge`.
 */
turn: string,
/**
 * Visits on the square.
 */
shown: number,
/**
 * Older visits left out of the square.
 */
left_out: number,
/**
 * The address in the square; nothing when it holds plain text.
 */
viewer_address: string | null,
/**
 * The text in the square.
 */
text: string,
/**
 * The fingerprint of the key that signed it.
 */
fingerprint: string, };

export type CardVisit = {
/**
 * The day.
 */
day: string,
/**
 * The reading.
 */
reading: Reading,
/**
 * What was done; an unknown number has the key `unknown`.
 */
items: Array<ItemView>,
/**
 * `owner`, `workshop`, `receipt`, `photo`, `late`, `amended`.
 */
marks: Array<string>, };

export type CatalogueLine = {
/**
 * Its stable number.
 */
number: number,
/**
 * Its key; the name stands in the Fluent files under `item-KEY`.
 */
key: string,
/**
 * The kinds of part or fluid that have an interval of their own, as keys.
 */
kinds: Array<string>,
/**
 * The findings that make it due, as keys.
 */
findings: Array<string>,
/**
 * What is measured on it, with its limit.
 */
measured: MeasuredView | null, };

export type CautionView = {
/**
 * Its key (`caution-KEY`, and in a word or two `caution-KEY-name`).
 */
key: string,
/**
 * It must be acknowledged by itself.
 */
one_by_one: boolean,
/**
 * Who publishes it; at least one.
 */
sources: Array<OriginView>, };

export type ChangeView = {
/**
 * Its lower end.
 */
low: string,
/**
 * Its upper end.
 */
high: string, };

export type CheckCosts = {
/**
 * This order.
 */
order: number,
/**
 * No order of these checks costs less than this.
 */
at_least: number,
/**
 * No order of these checks costs less than this one.
 */
exact: boolean,
/**
 * The plain order by chance over cost, which takes each check by itself.
 */
by_ratio: number,
/**
 * The chance that none of these checks finds the fault, in thousandths: then it is a workshop's.
 */
left: number, };

export type CheckRow = {
/**
 * Its key (`check-KEY`, and how it is made under `check-KEY-how`).
 */
check: string,
/**
 * The chance that it finds the fault when nothing before it did, in thousandths.
 */
chance: number,
/**
 * How long it takes a practised amateur once everything is open, in minutes.
 */
minutes: number,
/**
 * What it costs here, in minutes: itself, its money, what it newly opens, and tools that the owner lacks.
 */
cost: number,
/**
 * It costs money.
 */
costs_money: boolean,
/**
 * It is done in a workshop.
 */
workshop: boolean,
/**
 * The tools that it needs.
 */
tools: Array<NeededTool>,
/**
 * What has to be open for it.
 */
opens: Array<OpeningView>,
/**
 * The keys of what can hurt someone at it (`caution-KEY`).
 */
cautions: Array<string>,
/**
 * What it would find, the likeliest first.
 */
finds: Array<FindsView>,
/**
 * Which look it is: 1, or 2 when a first one found nothing.
 */
look: number,
/**
 * Why it stands here; never empty.
 */
why: Array<Because>, };

export type CheckView = {
/**
 * Entries verified.
 */
entries: number,
/**
 * Photos verified.
 */
photos: number,
/**
 * Photos that an earlier owner kept, so that they are not looked for here.
 */
left: number,
/**
 * Photos and documents on the disk that no entry names, such as those of an intake that was cut off before its
 * entries were written. [`Request::Rebuild`](crate::Request::Rebuild) clears them away.
 */
unnamed: number,
/**
 * What is wrong; empty when all is well.
 */
faults: Array<FaultView>, };

export type CheckedView = {
/**
 * `lines`, `net-and-tax`, `paid` or `fuel`.
 */
kind: string,
/**
 * What the other figures come to.
 */
worked_out: MoneyView,
/**
 * What is printed.
 */
printed: MoneyView,
/**
 * Both agree, within what rounding explains.
 */
agrees: boolean, };

export type CodeLife = {
/**
 * When it was first seen.
 */
first: SeenAt,
/**
 * When it was last seen.
 */
last: SeenAt,
/**
 * How many scans had it.
 */
times: number,
/**
 * When it was last cleared.
 */
cleared: SeenAt | null,
/**
 * Each time that it came back.
 */
returns: Array<CodeReturn>,
/**
 * All that became of it after it was first seen, in the order in which it happened: each clearing, each time that it
 * was found gone, each return.
 */
turns: Array<CodeTurn>,
/**
 * `present`, `cleared` or `gone` (`code-standing-KEY`).
 */
standing: string,
/**
 * Since when it is cleared or gone.
 */
since: SeenAt | null,
/**
 * What must be said along with it (`code-warning-KEY`).
 */
warnings: Array<string>, };

export type CodeReturn = {
/**
 * When it was cleared, or first found gone by itself.
 */
left: SeenAt,
/**
 * It had been cleared; otherwise it had gone by itself.
 */
was_cleared: boolean,
/**
 * When it was seen again.
 */
back: SeenAt,
/**
 * How long and how far it had stayed away, at most.
 */
after: UsedView, };

export type CodeTurn = { "is": "cleared",
/**
 * When.
 */
at: SeenAt, } | { "is": "gone",
/**
 * When that scan was made.
 */
at: SeenAt, } | { "is": "back" } & CodeReturn;

export type CodeView = {
/**
 * As it is printed: `P013A`.
 */
code: string,
/**
 * The id of its meaning in the words (`code-P0171`); nothing where there is no text here, and the handbook
 * or a workshop has it.
 */
meaning: string | null,
/**
 * The key of the system that its letter stands for (`code-system-KEY`).
 */
system: string,
/**
 * `standard`, `maker` or `reserved` (`code-origin-KEY`).
 */
origin: string,
/**
 * The key of what it is probably about (`code-area-KEY`), a hint only.
 */
area: string | null,
/**
 * How soon it calls for somebody: `watch`, `soon` or `stop` (`code-urgency-KEY`).
 */
urgency: string | null,
/**
 * `confirmed`, `pending`, `permanent` or `unstated` (`code-status-KEY`).
 */
status: string,
/**
 * The failure type behind the code, as two hexadecimal digits.
 */
failure_type: string | null,
/**
 * The keys of the causes at which it points, the likeliest to store it first.
 */
causes: Array<string>,
/**
 * Its life in the book of the car that was asked about; nothing when no scan of the book had it.
 */
life: CodeLife | null, };

export type CodesView = {
/**
 * The codes in the order in which they stand, each once a status.
 */
codes: Array<CodeView>,
/**
 * The lists that the car answered with, even an empty one: `confirmed`, `pending`, `permanent`.
 */
answered: Array<string>,
/**
 * The readiness of each control unit that told it.
 */
readiness: Array<ReadinessView>,
/**
 * What was frozen when a code set.
 */
frames: Array<FrameView>,
/**
 * Values of the moment.
 */
live: Array<ToldView>,
/**
 * What could not be read, or not without a doubt.
 */
notes: Array<NoteView>, };

export type CompareView = {
/**
 * What it was held against: `book` or `card`.
 */
against: string,
/**
 * Everything of the old card is there, unchanged.
 */
contains: boolean,
/**
 * Whether both show the same identification number, so that they are surely of one car.
 */
car_known: boolean,
/**
 * The old card.
 */
old: ComparedCard,
/**
 * The newer card, where it was one.
 */
new: ComparedCard | null,
/**
 * The moment at which the book had the head of the card, where it was held against a book.
 */
moment: MomentView | null,
/**
 * How many visits of the old card were found as they are printed.
 */
same: number,
/**
 * How many of them the newer card left out so that it fits.
 */
left_out: number,
/**
 * What differs.
 */
differences: Array<DifferenceView>, };

export type ComparedCard = {
/**
 * The day on which it was signed.
 */
signed: string,
/**
 * The fingerprint of the key.
 */
fingerprint: string,
/**
 * What the household called the vehicle.
 */
name: string,
/**
 * The latest reading.
 */
reading: DatedReading,
/**
 * How many visits the book held then.
 */
visits: number,
/**
 * The key has written in the book that it is held against, or has signed the newer card too.
 */
key_known: boolean, };

export type ConsumptionView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * Today.
 */
today: string,
/**
 * One for each kind that was ever filled in.
 */
kinds: Array<KindUseView>,
/**
 * The visits at which something was done to the car, oldest first, to be marked in the plots.
 */
marks: Array<MarkView>,
/**
 * The odometer over time.
 */
odometer: OdometerView,
/**
 * Published figures on what moves consumption apart from work, and what work does.
 */
effects: Array<EffectView>,
/**
 * What is odd about the fills.
 */
warnings: Array<FuelWarningView>, };

export type CostsView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * Today.
 */
today: string,
/**
 * The classes in the order in which they are stacked: `fuel`, `parts`, `work`, `duties`.
 */
classes: Array<string>,
/**
 * The currencies in which there are costs, the one used last first.
 */
currencies: Array<string>,
/**
 * A bill for each calendar year and currency, oldest first.
 */
years: Array<BillView>,
/**
 * A bill for each calendar month and currency, oldest first.
 */
months: Array<BillView>,
/**
 * What the distance cost: over the last year, and over everything that is known.
 */
distance: Array<PerDistanceView>,
/**
 * How many fills have no price, so that they are missing from every sum.
 */
unpriced_fills: number,
/**
 * How many visits with parts or a workshop have no price.
 */
unpriced_visits: number, };

export type CountedFrom = { "from": "done",
/**
 * The day.
 */
day: string,
/**
 * The reading that the instrument showed; nothing when nobody wrote it down.
 */
reading: Reading | null,
/**
 * The visit's line.
 */
visit: string, } | { "from": "first-use",
/**
 * The day.
 */
day: string, } | { "from": "other",
/**
 * That item.
 */
item: ItemView,
/**
 * The day.
 */
day: string, };

export type CounterView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * What the next visit needs.
 */
get: Array<GetView>,
/**
 * What waits at home, what was bought last first.
 */
stock: Array<StockView>,
/**
 * The papers that belong to no line yet, newest first.
 */
tray: Array<PaperView>,
/**
 * The lines to which a paper may be tied, newest first, at most 20.
 */
lines: Array<TieLine>,
/**
 * Photos can be read on this device.
 */
reads: boolean, };

export type DatedReading = {
/**
 * The day.
 */
day: string,
/**
 * The reading.
 */
reading: Reading, };

export type DatedUseView = {
/**
 * The day.
 */
to: string,
/**
 * The consumption.
 */
used: UseView, };

export type DayReadView = {
/**
 * The likelier reading.
 */
value: string,
/**
 * The other one, where day and month can change places and nothing says which is which.
 */
or: string | null,
/**
 * As in [`FieldView`].
 */
sure: string,
/**
 * Where it stands.
 */
area: [number, number, number, number], };

export type DifferenceView = {
/**
 * `other-car`, `first-use`, `not-newer`, `latest-reading`, `instrument`, `fewer`, `missing`, `changed`; and,
 * which are no breach, `amended`, `struck-out`, `added`.
 */
kind: string,
/**
 * It speaks against the newer one; a difference that does not is only worth knowing.
 */
breach: boolean,
/**
 * The day in question.
 */
day: string,
/**
 * As the old card has it: a visit.
 */
then: CardVisit | null,
/**
 * As it stands now: a visit.
 */
now: CardVisit | null,
/**
 * As the old card has it: its latest reading, or the last one of an instrument that was replaced.
 */
reading_then: DatedReading | null,
/**
 * As it stands now: the latest reading; of an instrument, the first one that the old card gives the new one.
 */
reading_now: DatedReading | null,
/**
 * As the old card has it: a day of first use, or a number of visits.
 */
was: string,
/**
 * The same as it stands now.
 */
is: string, };

export type DocumentView = {
/**
 * Which page of it the paper is, from 1.
 */
page: number,
/**
 * How many pages it has; nothing where that cannot be told.
 */
pages: number | null, };

export type DriftView = {
/**
 * The lower end.
 */
low: string,
/**
 * The upper end.
 */
high: string, };

export type DrivenForm = {
/**
 * Mostly trips under 8 km or 5 miles, or cold engine.
 */
short_trips: boolean,
/**
 * Often a trailer, a heavy load or long climbs.
 */
towing: boolean,
/**
 * Often dust or unmade roads.
 */
dust: boolean,
/**
 * Much standing traffic or idling.
 */
standing: boolean, };

export type DueView = {
/**
 * The item.
 */
item: ItemView,
/**
 * How it stands.
 */
state: StateKey,
/**
 * The day on which it is likely due, by time or by reaching the reading at this car's pace.
 */
day: string | null,
/**
 * The earliest and the latest day that it may fall on; the same where it goes by time alone.
 */
between: SpanView | null,
/**
 * The reading at which it is due, on the present instrument.
 */
reading: Reading | null,
/**
 * Which of the two comes first.
 */
first: FirstKey | null,
/**
 * Why.
 */
why: WhyView,
/**
 * It is a look that belongs to a round of the car, and to no visit.
 */
round: boolean,
/**
 * It belongs in a workshop.
 */
workshop: boolean,
/**
 * What it costs to ignore: 1 comfort to 5 the engine, 6 safety.
 */
weight: number, };

export type EffectView = {
/**
 * Its key, of `effect-KEY`.
 */
key: string,
/**
 * `by`, `up-to`, `between` or `none`.
 */
how: string,
/**
 * In percent; negative is less far. Nothing where none was found.
 */
percent: number | null,
/**
 * The other end, where it is between two.
 */
to: number | null,
/**
 * Where it was published.
 */
source: string, };

export type EndForm = {
/**
 * The day; today when empty.
 */
day: string,
/**
 * The line of the visit that ended it; empty where it went without one.
 */
visit: string,
/**
 * The key of what was the cause; empty where nobody found out, or it is none of the table.
 */
cause: string, };

export type EndView = {
/**
 * The day.
 */
day: string,
/**
 * The line of the visit that ended it.
 */
visit: string | null,
/**
 * The key of what was the cause; nothing where nobody found out, or it is none of the table.
 */
cause: string | null, };

export type EstimateView = {
/**
 * The likely reading.
 */
likely: Reading,
/**
 * Hardly less than this.
 */
low: Reading,
/**
 * Hardly more than this.
 */
high: Reading,
/**
 * The reading from which it is counted.
 */
since: DatedReading,
/**
 * A later reading that lies so far off that it is left out until another one bears it out.
 */
doubtful: DatedReading | null,
/**
 * How many units a year this car goes, as far as the book tells.
 */
per_year: number, };

export type FaultView = {
/**
 * The key of the sentence.
 */
code: string,
/**
 * The hash of the entry or the photo, or another name of the place.
 */
place: string, };

export type FieldView = {
/**
 * The value, as a form takes it.
 */
value: string,
/**
 * `sure`: two things printed apart agree; `likely`: its place or label says so; `doubtful`: a guess.
 */
sure: string,
/**
 * Where it stands.
 */
area: [number, number, number, number], };

export type FieldsView = {
/**
 * The shop.
 */
shop: FieldView | null,
/**
 * The day of the sale.
 */
day: DayReadView | null,
/**
 * The currency of every amount.
 */
currency: FieldView | null,
/**
 * What there was to pay.
 */
total: AmountView | null,
/**
 * The taxes, one a rate.
 */
tax: Array<AmountView>,
/**
 * What was bought.
 */
lines: Array<ReceiptLineView>,
/**
 * All part numbers.
 */
numbers: Array<FieldView>,
/**
 * The fill, on a pump receipt.
 */
fuel: FuelReadView | null,
/**
 * The odometer reading.
 */
odometer: OdometerReadView | null, };

export type FigureReadView = {
/**
 * As in [`FieldView`].
 */
sure: string,
/**
 * Where it stands.
 */
area: [number, number, number, number], };

export type FiguresView = {
/**
 * The last one.
 */
last: DatedUseView,
/**
 * The mean of all, over the distance.
 */
overall: UseView,
/**
 * The mean of the last year, over the distance.
 */
last_year: UseView,
/**
 * The one that used the least.
 */
least: DatedUseView,
/**
 * The one that used the most.
 */
most: DatedUseView, };

export type FiledView = {
/**
 * Their lines: one for a photo, one a page for a document.
 */
papers: Array<string>,
/**
 * `paper-known` for each that the book had already.
 */
warnings: Array<string>, };

export type FindsView = {
/**
 * The key of the cause.
 */
cause: string,
/**
 * The chance that it does when nothing before it found anything, in thousandths.
 */
chance: number, };

export type FirstKey = "time" | "distance" | "finding";

export type FittedLine = {
/**
 * Its key.
 */
key: string,
/**
 * What the owner said; nothing when he did not.
 */
has: boolean | null, };

export type FoundForm = {
/**
 * About which item.
 */
item: ItemForm,
/**
 * The key of the finding: `within-limits`, or one of those that the item has.
 */
finding: string,
/**
 * What was measured, in the unit of the item's measurement; may be empty.
 */
value: string, };

export type FoundView = {
/**
 * The item.
 */
item: ItemView,
/**
 * The key of the finding.
 */
finding: string,
/**
 * What was measured.
 */
value: MeasuredView | null, };

export type FrameView = {
/**
 * Its number; the first is 0.
 */
number: number,
/**
 * The code that it belongs to; nothing when the text does not tell.
 */
code: string | null,
/**
 * What was kept.
 */
values: Array<ToldView>, };

export type FuelFiguresView = {
/**
 * How much.
 */
volume: FigureReadView | null,
/**
 * The price of one litre or gallon.
 */
price: FigureReadView | null,
/**
 * What the fuel cost.
 */
total: FigureReadView | null, };

export type FuelForm = {
/**
 * `petrol`, `diesel`, `gas` or `electric`; the car's own when empty.
 */
kind: string,
/**
 * How much; may be empty when price and total are given.
 */
amount: string,
/**
 * `litre`, `us-gallon`, `imperial-gallon` or `kilowatt-hour`; when empty `kilowatt-hour` for electricity and
 * `litre` for anything else.
 */
unit: string,
/**
 * What one unit cost; may be empty.
 */
price: string,
/**
 * What it cost in all; may be empty.
 */
total: string,
/**
 * The currency of price and total; may be empty when both are.
 */
currency: string,
/**
 * `full`, `part` or `missed` (a fill before this one was not written down); `full` when empty.
 */
fill: string, };

export type FuelOfferView = {
/**
 * `petrol`, `diesel`, `gas` or `electric`.
 */
kind: string,
/**
 * `litre`, `us-gallon`, `imperial-gallon` or `kilowatt-hour`.
 */
unit: string,
/**
 * The units that it can be counted in.
 */
units: Array<string>,
/**
 * Three letters of ISO 4217; empty as long as nothing with a price was written down.
 */
currency: string,
/**
 * The price of one unit at the last fill, as it was typed or as it follows; empty when it is not known.
 */
price: string,
/**
 * How much was taken the last times, newest first, at most five, in the unit of each.
 */
amounts: Array<AmountTakenView>, };

export type FuelReadView = {
/**
 * How much; empty when it was not found.
 */
volume: string,
/**
 * `litre`, `us-gallon` or `imperial-gallon`; empty when no volume was found.
 */
unit: string,
/**
 * The price of one litre or gallon, with its three decimals; empty when it was not found.
 */
price: string,
/**
 * What the fuel cost; empty when it was not found.
 */
total: string,
/**
 * As in [`FieldView`]: as sure as the least sure of the three.
 */
sure: string,
/**
 * Where they stand.
 */
area: [number, number, number, number],
/**
 * The same of each figure alone.
 */
figures: FuelFiguresView, };

export type FuelSpanView = {
/**
 * The day of the full tank with which it begins.
 */
from: string,
/**
 * The day of the full tank with which it ends.
 */
to: string,
/**
 * What the instrument showed at its end.
 */
reading: Reading,
/**
 * How far the car went.
 */
distance: Reading,
/**
 * How much was filled in, in the unit in which the last of its fills was typed.
 */
amount: AmountTakenView,
/**
 * How many fills went into it.
 */
fills: number,
/**
 * What was used.
 */
used: UseView, };

export type FuelView = {
/**
 * `petrol`, `diesel`, `gas` or `electric`.
 */
kind: string,
/**
 * How much, in its unit, with three decimals.
 */
amount: string,
/**
 * `litre`, `us-gallon`, `imperial-gallon` or `kilowatt-hour`.
 */
unit: string,
/**
 * The price of one unit, where it was typed.
 */
price: MoneyView | null,
/**
 * The price of one unit as it follows from amount and total, where it was not typed.
 */
price_follows: MoneyView | null,
/**
 * What it cost.
 */
total: MoneyView | null,
/**
 * `full`, `part` or `missed`.
 */
fill: string, };

export type FuelWarningView = { "warning": "larger-than-ever",
/**
 * When.
 */
day: string,
/**
 * How much.
 */
amount: AmountTakenView,
/**
 * The most that had gone in before.
 */
before: AmountTakenView, } | { "warning": "reading-falls",
/**
 * The day of the later fill.
 */
day: string, } | { "warning": "other-kind",
/**
 * When.
 */
day: string, };

export type GetView = {
/**
 * For which item.
 */
item: ItemView,
/**
 * The key of the supply that the guide to the job names; empty for a part of the book.
 */
supply: string,
/**
 * What was fitted the last time, in the quantity that is needed now; nothing when the book holds no part for it.
 */
part: PartView | null,
/**
 * In what `at_home` and `to_buy` are counted, as in a part; empty when nothing is known of the quantity.
 */
measure: string,
/**
 * How much of it is at home and not taken by a row above; empty when there is none.
 */
at_home: string,
/**
 * How much of it is still to be bought; empty when what is at home suffices, or nothing is known of it.
 */
to_buy: string,
/**
 * Other numbers for the same part.
 */
same: Array<NumberForm>,
/**
 * What warns of it.
 */
warning: WarningView | null,
/**
 * Where it was bought or fitted, by the visit's workshop; empty when the owner did it.
 */
workshop: string,
/**
 * The day of that visit.
 */
day: string | null,
/**
 * What was paid for it the last time that a price was written down, in a shop or at a visit.
 */
paid: PaidView | null,
/**
 * How long what was in before lasted; nothing when the book does not tell.
 */
lasted: UsedView | null, };

export type GuideLine = {
/**
 * Its key (`guide-KEY`).
 */
key: string,
/**
 * How long it takes a practised amateur, in minutes.
 */
minutes: number,
/**
 * The items that a visit writes as done.
 */
does: Array<ItemView>,
/**
 * The items about which it may find something.
 */
finds: Array<ItemView>, };

export type GuideView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * Its key, its time, and which items it writes.
 */
guide: GuideLine,
/**
 * What was fitted the last time for the items that it does.
 */
parts: Array<PartView>,
/**
 * The keys of what has to be at hand (`tool-KEY`).
 */
tools: Array<string>,
/**
 * The keys of what is used up (`supply-KEY`).
 */
supplies: Array<string>,
/**
 * The keys of what can hurt someone (`hazard-KEY`).
 */
hazards: Array<string>,
/**
 * When to leave it to a workshop.
 */
not: Array<string>,
/**
 * What is said before the first step, what kills first.
 */
cautions: Array<CautionView>,
/**
 * The steps that this car has.
 */
steps: Array<StepView>,
/**
 * Every value that the steps ask for, each once.
 */
values: Array<ValueView>,
/**
 * What to look at before closing.
 */
look: Array<string>,
/**
 * What may feel odd afterwards.
 */
after: Array<string>,
/**
 * The keys of what becomes of what is left over (`disposal-KEY`).
 */
disposal: Array<string>,
/**
 * The keys of the guides of this car that belong after it.
 */
then: Array<string>, };

export type GuidesView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * The guides, in the order of the tables.
 */
guides: Array<GuideLine>, };

export type HandedOverView = {
/**
 * Its line.
 */
subject: string,
/**
 * The day that it names.
 */
day: string,
/**
 * To the next owner.
 */
words: string,
/**
 * The papers went with the book.
 */
papers: boolean, };

export type HandoverForm = {
/**
 * The day; today when empty.
 */
day: string,
/**
 * What the instrument shows; may be empty.
 */
reading: string,
/**
 * To the next owner, at most 2 000 characters; may be empty.
 */
words: string,
/**
 * The photos and documents stay here.
 */
without_papers: boolean,
/**
 * The owner has been asked about an implausible reading and wants it kept.
 */
keep: boolean, };

export type HandoverView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * Today, as the door sees it.
 */
today: string,
/**
 * How many entries the file will hold.
 */
entries: number,
/**
 * How many photos and documents the book names and the store has.
 */
papers: number,
/**
 * How many bytes those have.
 */
papers_bytes: number,
/**
 * How many it names that are not there, so that they can not go with it.
 */
missing: number,
/**
 * The handover that holds here; nothing where the book can be written in.
 */
handed_over: HandedOverView | null,
/**
 * The name that the file may bear.
 */
file_name: string,
/**
 * Who wrote in the book.
 */
writers: Array<WriterView>, };

export type HelpedView = {
/**
 * The line of the visit or of the trouble.
 */
subject: string,
/**
 * The day of it.
 */
day: string,
/**
 * What was done at the visit.
 */
items: Array<ItemView>,
/**
 * The codes that were cleared, as far as they were written down; nothing for a visit.
 */
cleared: Array<string> | null,
/**
 * The answer.
 */
verdict: VerdictView,
/**
 * By how much more the car used after than before; nothing with fewer than two spans on either side.
 */
change: ChangeView | null,
/**
 * How many spans before counted.
 */
before: number,
/**
 * How many spans after counted.
 */
after: number,
/**
 * How many other such visits or clearings lie within a tank of this one: the answer is for all of them together.
 */
others_near: number,
/**
 * In percent, what the season may have done that the spans do not tell; nothing where it was fitted with them.
 */
season_may_be: string | null, };

export type HereForm = {
/**
 * It is dark, or soon will be.
 */
at_night: boolean,
/**
 * The keys of the tools that he has besides the usual ones.
 */
owned: Array<string>,
/**
 * The keys of the usual tools that he lacks.
 */
lacking: Array<string>, };

export type InstrumentLine = {
/**
 * The day.
 */
day: string,
/**
 * What the old one showed last.
 */
old: Reading,
/**
 * What the new one showed first.
 */
new: Reading, };

export type IntervalForm = {
/**
 * The distance; may be empty.
 */
distance: string,
/**
 * `km` or `mi`, as it is printed.
 */
unit: string,
/**
 * Months, with `.5` for a half; may be empty.
 */
months: string, };

export type IntervalView = {
/**
 * The distance in its printed unit.
 */
distance: Reading | null,
/**
 * Months, with `.5` for a half.
 */
months: string | null, };

export type ItemForm = { "catalogue": number } | { "own": string };

export type ItemView = { "of": "catalogue",
/**
 * Its stable number.
 */
number: number,
/**
 * Its key.
 */
key: string, } | { "of": "own",
/**
 * The owner's words.
 */
name: string, };

export type JobView = {
/**
 * The item.
 */
item: ItemView,
/**
 * How it stands.
 */
state: StateKey,
/**
 * It belongs in a workshop.
 */
workshop: boolean,
/**
 * The keys of the cautions that come before the first step; what each is stands in [`BayView`].
 */
cautions: Array<string>,
/**
 * The parts fitted the last time.
 */
parts: Array<PartView>,
/**
 * How long it takes a practised amateur, in minutes; nothing for an item of the owner's own.
 */
minutes: number | null,
/**
 * It belongs to the next visit that the plan proposes.
 */
in_next_visit: boolean,
/**
 * The key of the guide to it.
 */
guide: string | null, };

export type JumpView = {
/**
 * The day of the first value at the new level.
 */
since: string,
/**
 * The day of the value at which it was plain.
 */
raised: string,
/**
 * How far, in the unit: `-4.25`.
 */
size: string, };

export type Keep = boolean | Array<string>;

export type KindUseView = {
/**
 * `petrol`, `diesel`, `gas` or `electric`.
 */
kind: string,
/**
 * The unit of every consumption: `litres-per-100-km`, `km-per-litre`, `miles-per-us-gallon`,
 * `miles-per-imperial-gallon`, `kwh-per-100-km` or `miles-per-kwh`.
 */
unit: string,
/**
 * The units that can be asked for in its place, itself among them.
 */
units: Array<string>,
/**
 * A greater number means that the car uses less.
 */
more_is_better: boolean,
/**
 * From full to full, oldest first.
 */
spans: Array<FuelSpanView>,
/**
 * Those of which nothing can be said, oldest first.
 */
unused: Array<UnusedSpanView>,
/**
 * What they come to; nothing without a span.
 */
figures: FiguresView | null,
/**
 * The mean of each year, oldest first.
 */
years: Array<YearUseView>,
/**
 * Whether work helped, newest first.
 */
helped: Array<HelpedView>,
/**
 * What watching came to.
 */
watch: WatchView, };

export type KnownView = { "is": "own",
/**
 * The text.
 */
text: string,
/**
 * The symbol of the unit that is to stand behind it: nothing where he typed one himself, or where it has none.
 */
unit: string | null, } | { "is": "typical",
/**
 * One a case; at least one.
 */
cases: Array<TypicalView>, } | { "is": "handbook" };

export type LastUseView = {
/**
 * Of what.
 */
kind: string,
/**
 * The day of the full tank with which it ends.
 */
to: string,
/**
 * How much.
 */
used: UseView,
/**
 * The key of the unit of consumption.
 */
unit: string, };

export type LeftOffView = {
/**
 * The day on which he did.
 */
day: string,
/**
 * The fingerprint of the key of his device.
 */
by: string,
/**
 * The day of the handover.
 */
handed_over: string, };

export type LimitsView = {
/**
 * Below it something may be wrong.
 */
low: string | null,
/**
 * Above it something may be wrong.
 */
high: string | null,
/**
 * Where the limits come from: `common practice`, or a source by name.
 */
source: string, };

export type LineContent = { "kind": "vehicle",
/**
 * What was known of it.
 */
vehicle: VehicleForm, } | { "kind": "reading",
/**
 * `actual`, `exceeds-limits` or `not-actual`.
 */
status: string,
/**
 * The fuel taken at it.
 */
fuel: FuelView | null,
/**
 * Its papers.
 */
papers: Array<PaperView>, } | { "kind": "instrument",
/**
 * What the old one showed last.
 */
old: Reading,
/**
 * What the new one showed first.
 */
new: Reading, } | { "kind": "visit",
/**
 * By whom; empty when the owner did it.
 */
workshop: string,
/**
 * What was done.
 */
items: Array<ItemView>,
/**
 * What was fitted.
 */
parts: Array<PartView>,
/**
 * What it cost.
 */
cost: MoneyView | null,
/**
 * The note.
 */
note: string,
/**
 * Its papers.
 */
papers: Array<PaperView>,
/**
 * What was found.
 */
found: Array<FoundView>, } | { "kind": "bought",
/**
 * Where; may be empty.
 */
shop: string,
/**
 * What.
 */
parts: Array<PartView>,
/**
 * What it cost.
 */
cost: MoneyView | null,
/**
 * The note.
 */
note: string,
/**
 * Its papers.
 */
papers: Array<PaperView>, } | { "kind": "part-note",
/**
 * What is noted.
 */
note: PartNoteForm, } | { "kind": "trouble",
/**
 * All that is known of it.
 */
trouble: TroubleForm, } | { "kind": "paper",
/**
 * The paper.
 */
paper: PaperView, } | { "kind": "plan",
/**
 * The item.
 */
item: ItemView,
/**
 * `handbook`, `off`, `catalogue`, `day` or `any-day`.
 */
to: string,
/**
 * The day chosen for the next time.
 */
day: string | null,
/**
 * The interval that repeats.
 */
then: IntervalView | null,
/**
 * The first one, where it differs.
 */
first: IntervalView | null, } | { "kind": "measured",
/**
 * What was read.
 */
values: Array<MeasuredValueView>,
/**
 * They were pasted from another program and not typed.
 */
pasted: boolean, } | { "kind": "handover",
/**
 * To the next owner; may be empty.
 */
words: string,
/**
 * The papers went with the book.
 */
papers: boolean,
/**
 * The fingerprint of the key that handed it over.
 */
by: string, } | { "kind": "newer" };

export type LineFilter = {
/**
 * Only lines of this calendar year.
 */
year?: number,
/**
 * Only visits with this catalogue item.
 */
item?: number,
/**
 * Only lines in which this text stands, without regard to case.
 */
text?: string, };

export type LineView = {
/**
 * The line as it stands.
 */
line: BookLine,
/**
 * Every version, the first one included.
 */
versions: Array<VersionView>, };

export type LinesView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * The lines, newest first.
 */
lines: Array<BookLine>,
/**
 * The years in which there are lines, newest first.
 */
years: Array<number>,
/**
 * The items that occur in visits.
 */
items: Array<ItemView>,
/**
 * How many entries the book holds.
 */
entries: number,
/**
 * How many of them were written by a newer version.
 */
newer: number,
/**
 * Who wrote in it from when to when, in the order in which they began.
 */
writers: Array<WriterView>, };

export type MarkView = {
/**
 * Its line.
 */
subject: string,
/**
 * The day.
 */
day: string,
/**
 * What the instrument showed, if someone wrote it down.
 */
reading: Reading | null,
/**
 * What was done.
 */
items: Array<ItemView>, };

export type MeasuredForm = {
/**
 * The day; today when empty.
 */
day: string,
/**
 * The values; at least one.
 */
values: Array<MeasuredValueForm>,
/**
 * They were pasted from another program and not typed.
 */
pasted: boolean, };

export type MeasuredPoint = {
/**
 * Its line.
 */
subject: string,
/**
 * The day.
 */
day: string,
/**
 * As typed, with a point.
 */
value: string,
/**
 * In thousandths of the unit, for plots.
 */
milli: number,
/**
 * `implausible`, `low`, `high` or `usual`.
 */
judgement: string, };

export type MeasuredReadView = {
/**
 * The values, as the form takes them.
 */
values: Array<MeasuredValueForm>,
/**
 * The lines of which nothing is kept.
 */
unread: Array<string>, };

export type MeasuredValueForm = {
/**
 * The key of what was measured: `short-trim-1`, `long-trim-1`, `short-trim-2`, `long-trim-2`, `coolant`,
 * `idle-air` or `rest-voltage`.
 */
parameter: string,
/**
 * The value in its unit, with a point or a comma and at most three decimals.
 */
value: string, };

export type MeasuredValueView = {
/**
 * What was measured, of `parameter-KEY`.
 */
parameter: string,
/**
 * As typed, with a point.
 */
value: string,
/**
 * The symbol of its unit.
 */
unit: string,
/**
 * `implausible`, `low`, `high` or `usual`.
 */
judgement: string, };

export type MeasuredView = {
/**
 * The key of what is measured: `tread`, `pad`, `disc`, `water`, `boiling-point`, `charge`,
 * `freezing-point`.
 */
what: string,
/**
 * The value with a point, up to three decimals: `3.1`; empty where only the limit is told.
 */
value: string,
/**
 * The value at which it is time.
 */
limit: string,
/**
 * The symbol of the unit.
 */
unit: string, };

export type MeasurementsView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * Today.
 */
today: string,
/**
 * Everything that can be measured, in a fixed order; those without a value too, so that a form can ask for them.
 */
parameters: Array<ParameterView>, };

export type MendView = { "by": "items",
/**
 * The items.
 */
items: Array<ItemView>, } | { "by": "owner" } | { "by": "workshop" };

export type MissingKey = "not-for-this-car";

export type MissingLine = {
/**
 * The item.
 */
item: ItemView,
/**
 * How it stands.
 */
state: MissingKey,
/**
 * The keys of what the car lacks; empty where engines of its kind have no such thing.
 */
lacks: Array<string>, };

export type MomentView = {
/**
 * `found`, `not-found`, `no-head` (the card carries none) or `too-many` (too much was written at the same time by
 * several devices for every combination to be tried).
 */
state: string,
/**
 * How many entries stood in the book then.
 */
entries: number,
/**
 * The day on which the newest of them was written; empty where it was not found.
 */
newest: string,
/**
 * How many entries bear an earlier time and came in later.
 */
late: number,
/**
 * How many entries were written since.
 */
since: number, };

export type MoneyView = {
/**
 * The number with a point: `12.50`.
 */
number: string,
/**
 * Three letters of ISO 4217.
 */
currency: string, };

export type MonitorView = {
/**
 * Its key (`code-monitor-KEY`).
 */
key: string,
/**
 * It is finished.
 */
finished: boolean, };

export type MovedView = {
/**
 * The item.
 */
item: ItemView,
/**
 * The day that was asked about.
 */
day: string,
/**
 * What it adds, in percent of what a usual job on this car costs; 0 when it adds nothing. What being late
 * can lead to is not in it.
 */
percent: number,
/**
 * The same in money, where prices are known.
 */
extra: MoneyView | null,
/**
 * The day is after the item is due.
 */
late: boolean,
/**
 * What it costs to ignore: 1 comfort to 5 the engine, 6 safety.
 */
weight: number, };

export type NeededTool = {
/**
 * Its key (`check-tool-KEY`).
 */
tool: string,
/**
 * The owner lacks it, as far as he said.
 */
lacking: boolean, };

export type NoteView = {
/**
 * Its key (`code-note-KEY`).
 */
key: string,
/**
 * What its sentence names, by the names of its places: `text`, `meant`, `code`, `codes`, `service`, `reason`,
 * `most`.
 */
values: { [key in string]: string }, };

export type NumberForm = {
/**
 * Who makes it; may be empty.
 */
maker: string,
/**
 * The number.
 */
number: string, };

export type OdometerAhead = {
/**
 * The day.
 */
day: string,
/**
 * Hardly less than this.
 */
low: Reading,
/**
 * Most likely.
 */
likely: Reading,
/**
 * Hardly more than this.
 */
high: Reading, };

export type OdometerPoint = {
/**
 * The day.
 */
day: string,
/**
 * What the instrument showed.
 */
shown: Reading,
/**
 * How far the car had gone.
 */
travelled: Reading,
/**
 * It is so far off that it counts for nothing.
 */
doubtful: boolean, };

export type OdometerReadView = {
/**
 * The reading in whole units.
 */
value: number,
/**
 * `km` or `mi`.
 */
unit: string,
/**
 * As in [`FieldView`].
 */
sure: string,
/**
 * Where it stands.
 */
area: [number, number, number, number], };

export type OdometerView = {
/**
 * Every reading, oldest first.
 */
points: Array<OdometerPoint>,
/**
 * Where it is likely to stand: today, and in 90, 180, 270 and 365 days; empty when there is no pace.
 */
ahead: Array<OdometerAhead>,
/**
 * How many units a year the car goes; nothing when there is no pace.
 */
per_year: number | null, };

export type OpeningView = {
/**
 * Its id in the words: `access-bonnet`, `opening-drive`.
 */
word: string,
/**
 * It is opened for this check, and not for one before it.
 */
newly: boolean, };

export type OriginView = {
/**
 * `regulation`, `published`, `from-memory` or `common-practice`.
 */
source: string,
/**
 * Which; empty where it is common practice.
 */
name: string, };

export type PackedView = {
/**
 * Where it stands; empty where the browser fetches it.
 */
path: string,
/**
 * How many bytes it has.
 */
bytes: number,
/**
 * How many entries.
 */
entries: number,
/**
 * How many photos and documents.
 */
papers: number,
/**
 * It is locked with a passphrase.
 */
locked: boolean,
/**
 * The hashes of the photos and documents that were missing or damaged.
 */
missing: Array<string>, };

export type PaidView = {
/**
 * What all of it cost.
 */
price: MoneyView,
/**
 * For how much or how many.
 */
quantity: string,
/**
 * `piece`, `litre`, `set`, `kilogram` or `metre`.
 */
measure: string,
/**
 * When.
 */
day: string,
/**
 * Where: the shop, or the visit's workshop; empty when the owner did it and nobody said where it was bought.
 */
workshop: string, };

export type PaperView = {
/**
 * Its line.
 */
subject: string,
/**
 * The SHA-256 of its photo, by which `photo://HASH/full` and `photo://HASH/thumb` give the picture.
 */
hash: string,
/**
 * Width of the photo in pixels.
 */
width: number,
/**
 * Height of the photo in pixels.
 */
height: number,
/**
 * The day on which it was filed.
 */
filed: string,
/**
 * The SHA-256 of the photo before it was straightened; nothing where it is as it was taken.
 */
whole: string | null,
/**
 * Which page of its document it is, from 1; nothing where it is a photo.
 */
page: number | null, };

export type ParameterView = {
/**
 * Its key, of `parameter-KEY`: `short-trim-1`, `long-trim-1`, `short-trim-2`, `long-trim-2`, `coolant`,
 * `idle-air` or `rest-voltage`.
 */
key: string,
/**
 * The symbol of its unit.
 */
unit: string,
/**
 * Between what it usually lies.
 */
limits: LimitsView,
/**
 * The values, oldest first.
 */
points: Array<MeasuredPoint>,
/**
 * Every jump to another level, oldest first.
 */
jumps: Array<JumpView>,
/**
 * A drift since the last jump, where it matters and cannot be chance.
 */
drift: DriftView | null,
/**
 * There were values enough to tell a jump.
 */
learnt: boolean, };

export type PartForm = {
/**
 * What it is, such as 'oil filter'; may be empty when a number is given.
 */
name: string,
/**
 * Who made it; may be empty.
 */
maker: string,
/**
 * The maker's number, as written; may be empty when a name is given.
 */
number: string,
/**
 * How much or how many; 1 when empty.
 */
quantity: string,
/**
 * `piece`, `litre`, `set`, `kilogram` or `metre`; `piece` when empty.
 */
measure: string,
/**
 * What all of it cost; may be empty.
 */
price: string,
/**
 * The item of the visit that it served; may be left out, and is clear where the visit has one item.
 */
item?: ItemForm,
/**
 * The key of its kind, such as `iridium`, where the item tells kinds apart; may be empty.
 */
kind: string, };

export type PartLine = {
/**
 * What it is, as written last; may be empty.
 */
name: string,
/**
 * Who made it, as written last; may be empty.
 */
maker: string,
/**
 * Every way in which its number was written, the newest first; empty when it has none.
 */
numbers: Array<string>,
/**
 * Other numbers for the same part.
 */
same: Array<NumberForm>,
/**
 * What warns of it.
 */
warning: WarningView | null,
/**
 * What else was noted of it last; may be empty.
 */
note: string,
/**
 * The key of its kind, where someone said which; empty otherwise.
 */
kind: string,
/**
 * The items that it served.
 */
items: Array<ItemView>,
/**
 * How much or how many the last time: `4`, `4.3`.
 */
quantity: string,
/**
 * `piece`, `litre`, `set`, `kilogram` or `metre`.
 */
measure: string,
/**
 * What was paid for it the last time that a price was written down, in a shop or at a visit.
 */
paid: PaidView | null,
/**
 * On how many days it was fitted.
 */
times: number,
/**
 * The last of these days.
 */
day: string,
/**
 * Where it was bought or fitted on that day, by the visit's workshop; empty when the owner did it.
 */
workshop: string,
/**
 * How long the last one lasted: what was in before this one, or this one where another took its place;
 * nothing when the book does not tell.
 */
lasted: UsedView | null,
/**
 * How long it has been in, the distance as estimated for today; nothing when it is in no more, or when
 * nobody said which item it served.
 */
present: UsedView | null, };

export type PartNoteForm = {
/**
 * Its number.
 */
number: string,
/**
 * Who makes it; may be empty.
 */
maker: string,
/**
 * The same part under other numbers.
 */
same: Array<NumberForm>,
/**
 * `wrong`, `superseded`, or empty when nothing warns of it.
 */
mark: string,
/**
 * The number to ask for in its place; may be empty.
 */
instead: string,
/**
 * Anything else worth keeping, at most 2 000 characters.
 */
note: string, };

export type PartView = {
/**
 * What it is.
 */
name: string,
/**
 * Who made it.
 */
maker: string,
/**
 * The maker's number, as written.
 */
number: string,
/**
 * How much or how many: `4`, `4.3`.
 */
quantity: string,
/**
 * `piece`, `litre`, `set`, `kilogram` or `metre`.
 */
measure: string,
/**
 * What all of it cost.
 */
price: MoneyView | null,
/**
 * The item of the visit that it served, where someone said so.
 */
served: ItemView | null,
/**
 * The key of its kind, where someone said which; empty otherwise.
 */
kind: string, };

export type PartsView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * The parts, the one fitted last first.
 */
parts: Array<PartLine>, };

export type PerDistancePartView = {
/**
 * `fuel`, `parts`, `work` or `duties`.
 */
class: string,
/**
 * `0.081`.
 */
number: string, };

export type PerDistanceView = {
/**
 * `last-year` or `all`.
 */
period: string,
/**
 * The first day that counts.
 */
from: string,
/**
 * The day after the last one that counts: both have a known reading, or lie between two.
 */
to: string,
/**
 * How far the car went.
 */
distance: Reading,
/**
 * The currency.
 */
currency: string,
/**
 * What one unit of the distance cost in all: `0.213`.
 */
total: string,
/**
 * The same of each class, in the order of the classes.
 */
parts: Array<PerDistancePartView>, };

export type PhaseKey = "first" | "every" | "after";

export type PlanForm = { "to": "handbook",
/**
 * The interval that repeats.
 */
then: IntervalForm,
/**
 * The first one, where it differs.
 */
first?: IntervalForm,
/**
 * What ignoring an item of the owner's own costs: `comfort`, `economy`, `repair`, `breakdown`, `engine` or
 * `safety`. Left out, it stays what it was, at first a repair; of a catalogue item the catalogue says it.
 */
stakes?: string, } | { "to": "off" } | { "to": "day",
/**
 * Today or later.
 */
day: string, } | { "to": "any-day" } | { "to": "catalogue" };

export type PlanLine = {
/**
 * The item.
 */
item: ItemView,
/**
 * The interval that holds now; nothing while the owner has not given one, and for what follows another.
 */
interval: IntervalView | null,
/**
 * The first one, where it differs.
 */
first: IntervalView | null,
/**
 * What it follows, where it is done once after something else.
 */
after: Array<ItemView>,
/**
 * What tightened it, as keys.
 */
tightened_by: Array<string>,
/**
 * The item that it goes with, where that comes round sooner than this would by itself.
 */
goes_with: ItemView | null,
/**
 * The day that the owner chose for its next time.
 */
pinned: string | null,
/**
 * Where it comes from.
 */
source: string,
/**
 * The published source by name; empty otherwise.
 */
source_name: string,
/**
 * The owner switched it off.
 */
off: boolean,
/**
 * An earlier owner had switched it off, and nobody has settled it since: it counts again.
 */
left_off: LeftOffView | null,
/**
 * What ignoring it costs, as a key: `comfort`, `economy`, `repair`, `breakdown`, `engine` or `safety`.
 */
stakes: string, };

export type PlannedVisitView = {
/**
 * The day that costs least.
 */
day: string,
/**
 * Where: `home`, `workshop` or `office`. At an office, or an inspection, nothing is done to the car.
 */
site: string,
/**
 * It is the soonest at which something is done to the car.
 */
next: boolean,
/**
 * What to do together, most pressing first.
 */
items: Array<VisitItemView>,
/**
 * What has to be opened up, drained or lifted for more than one of them.
 */
shares: Array<ShareView>,
/**
 * How long it takes a practised amateur at home, in minutes; 0 elsewhere.
 */
minutes: number,
/**
 * What the parts and the work cost the last time; nothing when no price is known.
 */
cost: MoneyView | null,
/**
 * For how many items no price is known.
 */
unpriced: number,
/**
 * For how many items the price is a share of a bill for several jobs.
 */
estimated: number, };

export type PumpView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * Today.
 */
today: string,
/**
 * The leading digits that will not have changed since the last reading.
 */
leading: string,
/**
 * How many digits a whole reading is likely to have.
 */
digits: number,
/**
 * The last readings, newest first, at most five.
 */
last: Array<ReadingLine>,
/**
 * What this car can take, what it took last first; never empty.
 */
fuels: Array<FuelOfferView>,
/**
 * The last spans from full to full, newest first, at most three of each kind.
 */
used: Array<LastUseView>,
/**
 * The line of the reading that was written down last, as long as it was written today: striking it out takes it
 * back.
 */
undo: string | null,
/**
 * Consumption that has risen and not come back.
 */
watch: AlarmView | null, };

export type ReadinessView = {
/**
 * The engine lamp is lit.
 */
lamp: boolean,
/**
 * How many confirmed codes the control unit counts.
 */
codes: number,
/**
 * `spark` or `compression`.
 */
ignition: string,
/**
 * Every test that this car has.
 */
monitors: Array<MonitorView>,
/**
 * All of them are finished.
 */
complete: boolean,
/**
 * How many unfinished tests an inspection in the United States lets pass, by the year of the car's first use (66 FR
 * 18156 and 40 CFR 85.2222, from memory); nothing where no car was asked about, or its year is not known. Other rules
 * hold elsewhere.
 */
allowed: number | null, };

export type Reading = {
/**
 * Whole units.
 */
count: number,
/**
 * `km` or `mi`.
 */
unit: UnitKey, };

export type ReadingForm = {
/**
 * The day; today when empty.
 */
day: string,
/**
 * What the instrument shows, in its own unit.
 */
reading: string,
/**
 * `actual`, `exceeds-limits` or `not-actual` (49 CFR 580); `actual` when empty.
 */
status: string,
/**
 * Fuel taken at this reading.
 */
fuel?: FuelForm,
/**
 * The lines of the papers that belong to it.
 */
papers: Array<string>, };

export type ReadingLine = {
/**
 * Its line.
 */
subject: string,
/**
 * The day.
 */
day: string,
/**
 * The reading.
 */
reading: Reading,
/**
 * `actual`, `exceeds-limits` or `not-actual`.
 */
status: string,
/**
 * The fuel taken at it.
 */
fuel: FuelView | null, };

export type RebuiltView = {
/**
 * Entries folded.
 */
entries: number,
/**
 * Photos and documents that no entry names, and that were deleted.
 */
cleared: number, };

export type ReceiptLineView = {
/**
 * How it is described.
 */
text: string,
/**
 * How many or how much; empty when it is not printed.
 */
quantity: string,
/**
 * `piece`, `litre`, `set`, `kilogram` or `metre`; empty when no quantity is printed.
 */
measure: string,
/**
 * The price of the line.
 */
price: string,
/**
 * The number of the part, with its own place and certainty: what bears out a price says nothing of it.
 */
number: FieldView | null,
/**
 * How sure the price is, as in [`FieldView`].
 */
sure: string,
/**
 * Where it stands.
 */
area: [number, number, number, number], };

export type ReceiptView = {
/**
 * The rows of text, from top to bottom.
 */
rows: Array<RowView>,
/**
 * What they mean.
 */
fields: FieldsView,
/**
 * The sums that could be checked.
 */
checks: Array<CheckedView>,
/**
 * The numbers that the car's notes warn of, whether they stand on the photo or not: the owner may correct one.
 */
warned: Array<WarnedView>, };

export type ReceivedView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * How many entries the file holds.
 */
entries: number,
/**
 * How many of them were not on the shelf before.
 */
new: number,
/**
 * The book stood on the shelf before.
 */
known: boolean,
/**
 * How many photos and documents were not there before.
 */
papers: number,
/**
 * The hashes of the photos and documents that the book names and that are not there.
 */
missing: Array<string>,
/**
 * The last owner kept the papers.
 */
papers_stayed: boolean,
/**
 * No line of the book hands it over, so that whoever gave the file may go on writing.
 */
never_handed_over: boolean,
/**
 * What he had to say; may be empty.
 */
words: string,
/**
 * Who wrote in the book.
 */
writers: Array<WriterView>, };

export type Refusal = {
/**
 * The key of the sentence, such as `reading-lower`.
 */
code: string,
/**
 * The field of the form that is meant, as a path such as `visit.parts.0.price`; nothing when none is.
 */
field?: string,
/**
 * What the sentence names.
 */
values: { [key in string]: string },
/**
 * Asking again with `keep` will be accepted.
 */
can_keep: boolean, };

export type ReportOptions = {
/**
 * How much of the identification number is shown.
 */
vin: VinShown,
/**
 * Leaves the workshops' names out.
 */
hide_names: boolean,
/**
 * Tells what each visit and each part cost, and what each year came to.
 */
prices: boolean,
/**
 * Leaves the photos of receipts out. They go in any case where the number or names are left out, which they
 * would show.
 */
without_receipts: boolean,
/**
 * In which language it is printed; the owner's own words stay as he wrote them.
 */
lang: CardLang,
/**
 * The address to use in place of the one in the settings.
 */
viewer?: string, };

export type Request = { "ask": "shelf" } | { "ask": "today",
/**
 * The vehicle's book.
 */
book: string, } | { "ask": "visits",
/**
 * The vehicle's book.
 */
book: string, } | { "ask": "moved",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The item.
 */
item: ItemForm,
/**
 * The day, today or later.
 */
day: string, } | { "ask": "pump",
/**
 * The vehicle's book.
 */
book: string, } | { "ask": "fuel",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The unit of consumption, by its key, for the kinds that it fits; for the others, and when left out, the
 * one that goes with the instrument and with the unit in which was filled up last.
 */
unit?: string, } | { "ask": "costs",
/**
 * The vehicle's book.
 */
book: string, } | { "ask": "measured",
/**
 * The vehicle's book.
 */
book: string, } | { "ask": "read-measured",
/**
 * The lines, at most 20 000 characters.
 */
text: string, } | { "ask": "counter",
/**
 * The vehicle's book.
 */
book: string, } | { "ask": "parts",
/**
 * The vehicle's book.
 */
book: string,
/**
 * Only those that served this catalogue item.
 */
item?: number, } | { "ask": "bay",
/**
 * The vehicle's book.
 */
book: string, } | { "ask": "lines",
/**
 * The vehicle's book.
 */
book: string,
/**
 * Which lines; all when left out.
 */
filter: LineFilter, } | { "ask": "line",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The line.
 */
subject: string, } | { "ask": "sheet",
/**
 * The vehicle's book.
 */
book: string, } | { "ask": "card",
/**
 * The vehicle's book.
 */
book: string,
/**
 * What the card shows.
 */
options: CardOptions, } | { "ask": "vin",
/**
 * As typed.
 */
vin: string, } | { "ask": "read-card",
/**
 * The text.
 */
text: string, } | { "ask": "handover",
/**
 * The vehicle's book.
 */
book: string, } | { "ask": "compare-card",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The text of the card's square.
 */
card: string, } | { "ask": "compare-cards",
/**
 * The text of the older card's square.
 */
old: string,
/**
 * The text of the newer card's square.
 */
new: string, } | { "ask": "codes",
/**
 * The text.
 */
text: string,
/**
 * The car whose book tells the life of each code; left out, no life is told.
 */
book?: string, } | { "ask": "trouble",
/**
 * The vehicle's book.
 */
book: string,
/**
 * What is known of it.
 */
trouble: TroubleForm,
/**
 * Its line, when it is written down already.
 */
subject?: string,
/**
 * What the owner has to work with.
 */
here: HereForm, } | { "ask": "trouble-of",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The trouble's line.
 */
subject: string,
/**
 * What the owner has to work with.
 */
here: HereForm, } | { "ask": "troubles",
/**
 * The vehicle's book.
 */
book: string, } | { "ask": "brief",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The trouble's line.
 */
subject: string, } | { "ask": "guides",
/**
 * The vehicle's book.
 */
book: string, } | { "ask": "guide",
/**
 * The vehicle's book.
 */
book: string,
/**
 * Its key.
 */
key: string, } | { "ask": "check" } | { "ask": "rebuild" } | { "ask": "add-vehicle",
/**
 * What is known of it.
 */
vehicle: VehicleForm, } | { "ask": "change-vehicle",
/**
 * The vehicle's book.
 */
book: string,
/**
 * All that is known of it now.
 */
vehicle: VehicleForm, } | { "ask": "take-reading",
/**
 * The vehicle's book.
 */
book: string,
/**
 * What was read.
 */
reading: ReadingForm,
/**
 * What the owner has been asked, about an implausible reading or fuel whose numbers disagree, and wants kept.
 */
keep: Keep, } | { "ask": "replace-instrument",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The day of the replacement.
 */
day: string,
/**
 * What the old instrument showed last.
 */
old: string,
/**
 * What the new one showed first.
 */
new: string, } | { "ask": "record-visit",
/**
 * The vehicle's book.
 */
book: string,
/**
 * What was done.
 */
visit: VisitForm,
/**
 * The owner has been asked about an implausible reading and wants it kept.
 */
keep: boolean, } | { "ask": "write-measured",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The values of one day.
 */
measured: MeasuredForm, } | { "ask": "amend-reading",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The line that is amended.
 */
subject: string,
/**
 * The whole reading as it should be.
 */
reading: ReadingForm,
/**
 * Why, in the owner's words; may be empty.
 */
why: string,
/**
 * What the owner has been asked, about an implausible reading or fuel whose numbers disagree, and wants kept.
 */
keep: Keep, } | { "ask": "amend-visit",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The line that is amended.
 */
subject: string,
/**
 * The whole visit as it should be.
 */
visit: VisitForm,
/**
 * Why, in the owner's words; may be empty.
 */
why: string,
/**
 * The owner has been asked about an implausible reading and wants it kept.
 */
keep: boolean, } | { "ask": "write-trouble",
/**
 * The vehicle's book.
 */
book: string,
/**
 * What is known of it.
 */
trouble: TroubleForm,
/**
 * The owner has been asked about an implausible reading and wants it kept.
 */
keep: boolean, } | { "ask": "amend-trouble",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The line that is amended.
 */
subject: string,
/**
 * The whole trouble as it should be.
 */
trouble: TroubleForm,
/**
 * Why, in the owner's words; may be empty.
 */
why: string,
/**
 * The owner has been asked about an implausible reading and wants it kept.
 */
keep: boolean, } | { "ask": "strike-out",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The line.
 */
subject: string,
/**
 * Why, in the owner's words; may be empty.
 */
why: string, } | { "ask": "write-bought",
/**
 * The vehicle's book.
 */
book: string,
/**
 * What was bought.
 */
bought: BoughtForm, } | { "ask": "amend-bought",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The line that is amended.
 */
subject: string,
/**
 * The whole purchase as it should be.
 */
bought: BoughtForm,
/**
 * Why, in the owner's words; may be empty.
 */
why: string, } | { "ask": "note-part",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The note.
 */
note: PartNoteForm, } | { "ask": "tie-paper",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The paper's line.
 */
paper: string,
/**
 * The line to which it belongs.
 */
line: string, } | { "ask": "throw-away",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The paper's line.
 */
paper: string,
/**
 * Why, in the owner's words; may be empty.
 */
why: string, } | { "ask": "change-plan",
/**
 * The vehicle's book.
 */
book: string,
/**
 * The item.
 */
item: ItemForm,
/**
 * What holds for it from now on.
 */
change: PlanForm, } | { "ask": "has-after-all",
/**
 * The vehicle's book.
 */
book: string,
/**
 * An item that is not for this car.
 */
item: ItemForm, } | { "ask": "set-viewer-address",
/**
 * An `https:` address without `#`; nothing clears it.
 */
address: string | null, } | { "ask": "demo" };

export type Response = { "answer": "shelf" } & ShelfView | { "answer": "today" } & TodayView | { "answer": "visits" } & VisitsView | { "answer": "moved" } & MovedView | { "answer": "pump" } & PumpView | { "answer": "fuel" } & ConsumptionView | { "answer": "costs" } & CostsView | { "answer": "measured" } & MeasurementsView | { "answer": "measured-read" } & MeasuredReadView | { "answer": "counter" } & CounterView | { "answer": "parts" } & PartsView | { "answer": "bay" } & BayView | { "answer": "lines" } & LinesView | { "answer": "line" } & LineView | { "answer": "sheet" } & SheetView | { "answer": "card" } & CardView | { "answer": "vin" } & VinView | { "answer": "card-read" } & CardReadView | { "answer": "handover" } & HandoverView | { "answer": "packed" } & PackedView | { "answer": "received" } & ReceivedView | { "answer": "compared" } & CompareView | { "answer": "check" } & CheckView | { "answer": "codes" } & CodesView | { "answer": "trouble" } & TroubleView | { "answer": "troubles" } & TroublesView | { "answer": "brief" } & BriefView | { "answer": "guides" } & GuidesView | { "answer": "guide" } & GuideView | { "answer": "rebuilt" } & RebuiltView | { "answer": "filed" } & FiledView | { "answer": "document" } & DocumentView | { "answer": "receipt" } & ReceiptView | { "answer": "written" } & WrittenView;

export type RowView = {
/**
 * All of it.
 */
text: string,
/**
 * How sure its letters are, from 0 to 1: no proof.
 */
sure: number,
/**
 * Its stretches from left to right.
 */
stretches: Array<StretchView>, };

export type ScanForm = {
/**
 * The day on which it was read; today when empty.
 */
day: string,
/**
 * What the instrument showed then; may be empty.
 */
reading: string,
/**
 * Its text, at most 8 000 characters; may be empty when the codes were only cleared.
 */
text: string,
/**
 * The codes were cleared after it was read.
 */
cleared: boolean, };

export type SeenAt = {
/**
 * The day.
 */
day: string,
/**
 * The reading, where it is known.
 */
reading: Reading | null, };

export type SeenView = {
/**
 * The day.
 */
day: string,
/**
 * The key of the finding.
 */
finding: string,
/**
 * What was measured.
 */
value: MeasuredView | null,
/**
 * `now`, `holds`, `extrapolated` or `none`.
 */
effect: string,
/**
 * The works among which it leaves the choice; none where it calls for nothing or it is clear what for.
 */
undecided: Array<ItemView>, };

export type ShareView = {
/**
 * Its key.
 */
access: string,
/**
 * For how many items.
 */
items: number, };

export type SheetView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * All that is known of it, as a form can take it back.
 */
form: VehicleForm,
/**
 * What its identification number says; nothing when there is none.
 */
vin: VinView | null,
/**
 * How it is driven.
 */
driven: DrivenForm,
/**
 * What the car has and lacks, as far as the plan depends on it.
 */
fitted: Array<FittedLine>,
/**
 * The plan.
 */
plan: Array<PlanLine>,
/**
 * What the catalogue has that this car does not need.
 */
missing: Array<MissingLine>,
/**
 * The instruments that were replaced.
 */
instruments: Array<InstrumentLine>,
/**
 * The numbers of this car that its guides ask for.
 */
values: Array<ValueView>, };

export type ShelfView = {
/**
 * Today, as the door sees it.
 */
today: string,
/**
 * All vehicles, by name.
 */
vehicles: Array<VehicleLine>,
/**
 * The page on which a scanned card opens.
 */
viewer_address: string | null,
/**
 * The fingerprint of this device's key.
 */
fingerprint: string,
/**
 * The engines that the sheet offers, as keys.
 */
engines: Array<string>,
/**
 * The longest name of an item of the owner's own, in characters.
 */
longest_own_name: number,
/**
 * The keys of what ignoring an item can cost, the least first.
 */
stakes: Array<string>,
/**
 * All items of the catalogue.
 */
catalogue: Array<CatalogueLine>, };

export type SignView = { "is": "symptom",
/**
 * Its key.
 */
symptom: string, } | { "is": "code",
/**
 * The code: `P0524`.
 */
code: string, };

export type SpanView = {
/**
 * The earliest day.
 */
early: string,
/**
 * The latest day.
 */
late: string, };

export type SpendView = {
/**
 * What is due by then in any case, at the least of the prices paid last.
 */
low: MoneyView,
/**
 * What may be due by then, at the most of them.
 */
high: MoneyView,
/**
 * How many times something without a known price is likely due, what was never recorded among it.
 */
unpriced: number,
/**
 * How many items were never recorded and may be due: they count in `high` or in `unpriced`.
 */
no_record: number,
/**
 * For how many items a price is a share of a bill for several jobs.
 */
estimated: number, };

export type StandingView = {
/**
 * The shift.
 */
alarm: AlarmView,
/**
 * What could explain it and is due, soon due or without a record, most pressing first.
 */
due: Array<DueView>,
/**
 * What else could explain it, as keys of `explains-KEY`: `tyre-pressure`, `brakes-dragging`, `thermostat`,
 * `oxygen-sensor`, `fuel-trims`, `air-filter-carburettor`.
 */
look_at: Array<string>,
/**
 * The keys of the symptoms with which to go on in Trouble.
 */
symptoms: Array<string>, };

export type StateKey = "overdue" | "due" | "soon" | "ahead" | "no-record";

export type StepView = {
/**
 * Its key within the guide, by which progress is kept.
 */
key: string,
/**
 * The keys of the values to be shown with it.
 */
values: Array<string>, };

export type StockView = {
/**
 * The line of the last purchase.
 */
line: string,
/**
 * As it was bought last, with how much is left of it.
 */
part: PartView,
/**
 * When.
 */
day: string,
/**
 * Where; may be empty.
 */
shop: string,
/**
 * Other numbers for the same part.
 */
same: Array<NumberForm>,
/**
 * What warns of it.
 */
warning: WarningView | null,
/**
 * What else was noted of it last; may be empty.
 */
note: string, };

export type StopUrgency = "stop" | "gently" | "soon";

export type StopView = {
/**
 * Its key; what to do now stands in the words under `stop-KEY`.
 */
danger: string,
/**
 * How pressing it is.
 */
urgency: StopUrgency,
/**
 * What shows it.
 */
sign: SignView, };

export type StretchView = {
/**
 * What was read.
 */
text: string,
/**
 * How sure its letters are, from 0 to 1.
 */
sure: number,
/**
 * Where it stands.
 */
area: [number, number, number, number], };

export type SuspectView = {
/**
 * The key of the cause (`cause-KEY`).
 */
cause: string,
/**
 * The chance that it is the one, in thousandths.
 */
chance: number,
/**
 * This car has had it before.
 */
before: boolean,
/**
 * What mends it.
 */
mend: MendView, };

export type SymptomLine = {
/**
 * Its key (`symptom-KEY`).
 */
key: string,
/**
 * The key of its heading (`about-KEY`).
 */
about: string,
/**
 * The key of the danger that it shows.
 */
danger: string | null, };

export type TieLine = {
/**
 * Its line.
 */
subject: string,
/**
 * `visit`, `fill` or `bought`.
 */
kind: string,
/**
 * The day.
 */
day: string,
/**
 * What was done; empty where it is no visit.
 */
items: Array<ItemView>,
/**
 * The workshop or the shop; empty when nobody said, or the owner did it.
 */
place: string,
/**
 * What it cost.
 */
cost: MoneyView | null, };

export type TodayView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * Today.
 */
today: string,
/**
 * What the odometer is thought to show today; nothing when there is no ground for a guess.
 */
estimate: EstimateView | null,
/**
 * Everything on the plan, most pressing first.
 */
due: Array<DueView>,
/**
 * The visits of the next 24 months, soonest first.
 */
visits: Array<PlannedVisitView>,
/**
 * What to get for the first of them.
 */
get: Array<GetView>,
/**
 * The next twelve months in money; nothing when no price is known.
 */
spend: SpendView | null,
/**
 * How many papers wait in the tray.
 */
tray: number,
/**
 * The troubles that have not ended, newest first.
 */
troubles: Array<TroubleLine>,
/**
 * Consumption that has risen and not come back.
 */
watch: AlarmView | null, };

export type ToldView = {
/**
 * Its key (`code-value-KEY`).
 */
key: string,
/**
 * The number with a point.
 */
value: string,
/**
 * The symbol of its unit.
 */
unit: string, };

export type ToolLine = {
/**
 * Its key (`check-tool-KEY`).
 */
key: string,
/**
 * An amateur usually has it.
 */
usual: boolean, };

export type TroubleForm = {
/**
 * The day on which it was noticed; today when empty.
 */
day: string,
/**
 * What the instrument showed then; may be empty.
 */
reading: string,
/**
 * The complaint in the owner's own words, at most 2 000 characters.
 */
words: string,
/**
 * When it happens, in the owner's own words, at most 2 000 characters.
 */
when: string,
/**
 * The keys of the symptoms that show.
 */
symptoms: Array<string>,
/**
 * The keys of the symptoms that were asked about and do not show.
 */
absent: Array<string>,
/**
 * What scan tools said, in the order in which it was read.
 */
scans: Array<ScanForm>,
/**
 * What the checks said so far, in the order in which they were made.
 */
answers: Array<AnswerForm>,
/**
 * What is asked of a workshop, in the owner's own words, at most 2 000 characters.
 */
asked: string,
/**
 * How it ended; left out while it has not.
 */
end?: EndForm, };

export type TroubleLine = {
/**
 * Its line.
 */
subject: string,
/**
 * The day on which it was noticed.
 */
day: string,
/**
 * The complaint in the owner's words.
 */
words: string,
/**
 * The keys of the symptoms.
 */
symptoms: Array<string>,
/**
 * The codes of its scans, each once.
 */
codes: Array<string>,
/**
 * How it ended; nothing while it has not.
 */
end: EndView | null, };

export type TroubleView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * Today.
 */
today: string,
/**
 * Its line in the book; nothing while it is not written down.
 */
subject: string | null,
/**
 * All that is known of it, as a form can take it back.
 */
form: TroubleForm,
/**
 * What must be read before any list, the most pressing first.
 */
stop: Array<StopView>,
/**
 * What its scans say, one a scan, in the order of the form.
 */
scans: Array<CodesView>,
/**
 * Every cause that this car can have, the likeliest first. None of it is a diagnosis.
 */
suspects: Array<SuspectView>,
/**
 * The chance that it is something else, in thousandths.
 */
other: number,
/**
 * The checks still to make, first to last.
 */
checks: Array<CheckRow>,
/**
 * What the cautions of the checks are, in the order in which they are read.
 */
cautions: Array<CautionView>,
/**
 * The keys of checks that would stand among them, but must not be made as things are: see `stop`.
 */
held: Array<string>,
/**
 * What this order of checks costs.
 */
costs: CheckCosts,
/**
 * Every symptom that this car can show, in the order in which they are asked, by headings.
 */
symptoms: Array<SymptomLine>,
/**
 * Every tool that a check may need.
 */
tools: Array<ToolLine>, };

export type TroublesView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * Those that have not ended first, and among them the newest.
 */
troubles: Array<TroubleLine>,
/**
 * Every code that a scan of the book had, each with its life.
 */
codes: Array<CodeView>, };

export type TypicalView = {
/**
 * When it holds (`typical-KEY`).
 */
case: string,
/**
 * Between what it lies.
 */
bounds: BoundsView,
/**
 * The symbol of the unit in which it was printed.
 */
unit: string,
/**
 * The same in whole newton metres, where it was printed in pound-force feet.
 */
newton_metres: BoundsView | null,
/**
 * Where it comes from.
 */
source: OriginView, };

export type UnitKey = "km" | "mi";

export type UnusedSpanView = {
/**
 * The day of the full tank with which it begins.
 */
from: string,
/**
 * The day of the full tank with which it ends.
 */
to: string,
/**
 * How far the car went by the readings.
 */
distance: Reading,
/**
 * How much was filled in.
 */
amount: AmountTakenView,
/**
 * `missed`, `no-distance`, `too-little` or `too-much`.
 */
why: string, };

export type UseView = {
/**
 * The number with one decimal: `7.3`.
 */
number: string,
/**
 * In hundredths of the unit: 725.
 */
hundredths: number, };

export type UsedView = {
/**
 * Whole days.
 */
days: number,
/**
 * How far the car went in them, in the unit of its instrument; nothing when that is not known.
 */
distance: Reading | null, };

export type ValueView = {
/**
 * Its key (`value-KEY`), by which a vehicle's form holds the car's own.
 */
key: string,
/**
 * The symbol of the unit in which it is usually given; nothing for what is told in words.
 */
unit: string | null,
/**
 * What is known of it.
 */
known: KnownView, };

export type VehicleForm = {
/**
 * What the household calls it; 1 to 60 characters.
 */
name: string,
/**
 * Make, model and year as one text; may be empty.
 */
make_model: string,
/**
 * The vehicle identification number; may be empty.
 */
vin: string,
/**
 * `petrol`, `diesel`, `petrol-hybrid`, `diesel-hybrid`, `gas`, `electric` or `other`.
 */
engine: string,
/**
 * `km` or `mi`: what the instrument counts.
 */
unit: string,
/**
 * The day of first use; may be empty.
 */
first_use: string,
/**
 * The car has been in this household since it was new, so that nothing was done before the book begins.
 */
bought_new: boolean,
/**
 * What the owner expects to drive in a year, in the unit of the instrument; may be empty.
 */
yearly: string,
/**
 * How it is driven.
 */
driven: DrivenForm,
/**
 * What it has (true) and lacks (false), by the keys of the fittings; what is left out is not known.
 */
fitted: { [key in string]: boolean },
/**
 * The numbers of this car that its guides ask for, by the keys of the values, each at most 60 characters.
 */
values: { [key in string]: string },
/**
 * A first reading to write together with the vehicle; may be empty.
 */
reading: string, };

export type VehicleLine = {
/**
 * Its book.
 */
book: string,
/**
 * What the household calls it.
 */
name: string,
/**
 * Make, model and year.
 */
make_model: string,
/**
 * The key of the engine.
 */
engine: string,
/**
 * `km` or `mi`.
 */
unit: string,
/**
 * The newest reading.
 */
reading: DatedReading | null,
/**
 * The day on which this device handed its book over, since when it is read-only here; nothing where it can be
 * written in.
 */
handed_over: string | null, };

export type VerdictView = { "verdict": "better",
/**
 * At least.
 */
low: string,
/**
 * At most.
 */
high: string, } | { "verdict": "worse",
/**
 * At least.
 */
low: string,
/**
 * At most.
 */
high: string, } | { "verdict": "no-larger-than",
/**
 * In percent.
 */
percent: string, } | { "verdict": "cannot-tell-yet",
/**
 * How many; nothing where no number of them will do.
 */
more: number | null, };

export type VersionView = {
/**
 * The day on which it was written.
 */
written: string,
/**
 * Why, in the owner's words.
 */
why: string,
/**
 * The day that it names.
 */
day: string,
/**
 * The reading.
 */
reading: Reading | null,
/**
 * What it says.
 */
says: LineContent,
/**
 * The SHA-256 of its entry.
 */
hash: string, };

export type VinShown = "whole" | "last-six" | "hidden";

export type VinView = {
/**
 * In capitals.
 */
vin: string,
/**
 * `right` or `wrong`.
 */
check_digit: string,
/**
 * The digit that would be right, where it is wrong.
 */
expected: string | null, };

export type VisitForm = {
/**
 * The day; today when empty.
 */
day: string,
/**
 * What the instrument showed; may be empty when nobody wrote it down.
 */
reading: string,
/**
 * The workshop's name; empty when the owner did it himself.
 */
workshop: string,
/**
 * What was done; at least one, unless something was found.
 */
items: Array<ItemForm>,
/**
 * What was found about items that were not done.
 */
found: Array<FoundForm>,
/**
 * What was fitted or filled in.
 */
parts: Array<PartForm>,
/**
 * What it cost in all; may be empty.
 */
cost: string,
/**
 * The currency of the cost and of all prices.
 */
currency: string,
/**
 * Anything else worth keeping, at most 2 000 characters.
 */
note: string,
/**
 * The lines of the papers that belong to it.
 */
papers: Array<string>, };

export type VisitItemView = {
/**
 * The item.
 */
item: ItemView,
/**
 * The day on which it would fall due by itself.
 */
due: string,
/**
 * The owner chose the day.
 */
pinned: boolean,
/**
 * It is the next time of this item, and not one after that.
 */
next: boolean,
/**
 * It is a look or a test, which renews nothing.
 */
look: boolean,
/**
 * The key of the guide to it.
 */
guide: string | null, };

export type VisitsView = {
/**
 * The vehicle.
 */
vehicle: VehicleLine,
/**
 * Today.
 */
today: string,
/**
 * The visits of the next 24 months, soonest first.
 */
visits: Array<PlannedVisitView>,
/**
 * It is certain that no other plan costs less by the weights of the planner.
 */
proven: boolean,
/**
 * The next twelve months in money; nothing when no price is known.
 */
spend: SpendView | null, };

export type WarnedView = {
/**
 * The number, as it was written.
 */
number: string,
/**
 * Why.
 */
warning: WarningView, };

export type WarningView = {
/**
 * `wrong` or `superseded`.
 */
mark: string,
/**
 * The number to ask for in its place; may be empty.
 */
instead: string, };

export type WatchView = {
/**
 * There were spans enough: a year of them, and 20.
 */
learnt: boolean,
/**
 * Every shift, oldest first.
 */
alarms: Array<AlarmView>,
/**
 * The car uses more since the last of them, and that has not been undone: what to do about it.
 */
standing: StandingView | null, };

export type WhyView = {
/**
 * The interval used.
 */
interval: IntervalView,
/**
 * `handbook`, `owner`, `papers`, `regulation`, `published` or `common-practice`.
 */
source: string,
/**
 * The published source by name; empty otherwise.
 */
source_name: string,
/**
 * Which part of the plan holds.
 */
phase: PhaseKey,
/**
 * What it is counted from; nothing when there is no record.
 */
from: CountedFrom | null,
/**
 * What tightened it, as keys: `short-trips`, `towing`, `dust`, `standing`, `turbo`, `turbo-unknown`.
 */
tightened_by: Array<string>,
/**
 * The item that it goes with, where that comes round sooner than this would by itself.
 */
goes_with: ItemView | null,
/**
 * The key of the kind of part or fluid that is fitted, where that brought the interval.
 */
kind: string | null,
/**
 * What was found about it since it was last done.
 */
seen: SeenView | null, };

export type WorkLine = {
/**
 * The day.
 */
day: string,
/**
 * What the instrument showed.
 */
reading: Reading | null,
/**
 * By whom; empty when the owner did it.
 */
workshop: string,
/**
 * What was done.
 */
items: Array<ItemView>, };

export type WriterView = {
/**
 * The fingerprint of its key.
 */
fingerprint: string,
/**
 * It is this device.
 */
own: boolean,
/**
 * The day of its first entry.
 */
from: string,
/**
 * The day of its last entry.
 */
to: string,
/**
 * How many entries.
 */
entries: number,
/**
 * The days on which it handed the book over, oldest first.
 */
handed_over: Array<string>, };

export type WrittenView = {
/**
 * The book in which it stands; of the demo, the first.
 */
book: string,
/**
 * The line.
 */
subject: string,
/**
 * Warnings that did not keep it from being written, as keys: `vin-check-digit`, or
 * `part-wrong` and `part-superseded` for a part that a note warns of.
 */
warnings: Array<string>, };

export type YearUseView = {
/**
 * The calendar year.
 */
year: number,
/**
 * The mean over the distance.
 */
used: UseView, };
