# What stands on the full report beside what it shares with the history card and the page behind one.

# ---- Labels

report-title = Vollständiger Bericht
report-contents = Inhalt
report-summary = Die Historie im Überblick

# Two of what may have commas of its own; of more, $list is what stands before the last. $list, $next: what was found,
# what is due, or years with their values
report-list = { $list }; { $next }

# ---- The first page

# Under the head of the book. $signed: yes where the square is signed, no where it holds plain text
report-head-note = { $signed ->
    [yes] Signiert ist, was im QR-Code steht; die Seiten dieses Berichts sind es nicht. Was sie sagen, kann das Buch beweisen: Der QR-Code enthält auch diesen Stand, und daran wird das Buch gemessen.
   *[no] Nichts an diesem Bericht ist signiert. Die Einträge des Buchs sind es und können beweisen, was er sagt.
}

# ---- What the history comes to

# $count: struck-out visits
report-struck-count = { $count ->
    [one] Ein Eintrag ist gestrichen; er ist so gekennzeichnet und zählt nicht mit.
   *[other] { $count } Einträge sind gestrichen; sie sind so gekennzeichnet und zählen nicht mit.
}
# $why: no: not asked for; private: they would show what is left out
report-without-photos = { $why ->
    [private] Fotos von Belegen sind weggelassen, weil sie die weggelassenen Namen oder die Fahrgestellnummer zeigen würden.
   *[no] Fotos von Belegen sind weggelassen.
}
report-photos-small = Fotos von Belegen sind so klein, dass darauf kein Preis zu lesen ist, denn Preise sind weggelassen.
# $most: a number
report-photos-most = Fotos stehen bei den neuesten Einträgen, höchstens { $most }; das Buch enthält alle.
# $most: a number; $count: how many older ones
report-left-out = { $count ->
    [one] Ein älterer Eintrag steht im Buch; ein Bericht zeigt die { $most } neuesten.
   *[other] { $count } ältere Einträge stehen im Buch; ein Bericht zeigt die { $most } neuesten.
}
# $kind: of fuel; $unit: of consumption
report-use = Verbrauch nach Jahren: { $kind }, { $unit }
# $currency: its code
report-costs = Kosten nach Jahren, { $currency }
report-costs-note = Alles im Buch, was einen Preis hat: Kraftstoff, Teile, Arbeit, Steuer, Versicherung und Gebühren.
# Under bars of which the last is ruled
report-open-year = Schraffiert: Das Jahr ist noch nicht zu Ende.
# A drawing for who cannot see it. $title: what is drawn; $values: each year with its value
report-bars-say = { $title }. { $values }.
# $year: a year; $value: what it came to
report-bar-says = { $year }: { $value }

# ---- A visit

report-struck = Gestrichen: Dieser Eintrag zählt nicht.
# $why: the owner's words
report-struck-why = Gestrichen: Dieser Eintrag zählt nicht. Grund: { $why }
# $found: what was found, item by item
report-found = Befund: { $found }
# $item: an item; $finding: in a word
report-found-item = { $item }: { $finding }
# $value: with its unit
report-found-measured = { $item }: { $finding } ({ $value })
# $name: a part; $kind: of which kind it is
report-part-kind = { $name } ({ $kind })
report-amount-piece = { $amount } ×
report-amount-set = { $amount } × Satz
report-amount-litre = { $amount } l
report-amount-kilogram = { $amount } kg
report-amount-metre = { $amount } m
# $number, $of: which photo of how many; $day: of the visit
report-photo-says = Foto eines Belegs, { $number } von { $of }, Eintrag vom { $day }
report-photo-missing = { $count ->
    [one] Das Foto eines Belegs ist nicht mehr vorhanden.
   *[other] Die Fotos von { $count } Belegen sind nicht mehr vorhanden.
}

# ---- What to ask

report-ask-note = Aus den Einträgen errechnet, nach in der Branche üblichen Grenzwerten. Eine Frage ist kein festgestellter Mangel.
report-no-questions = Nach den in der Branche üblichen Grenzwerten gibt die Historie keinen Anlass zu einer Frage.
# In place of the sentences for a card that was scanned
report-ask-no-visits = Das Buch enthält keinen Eintrag: Was wurde an dem Fahrzeug gemacht, und wo steht es geschrieben?
report-ask-ahead = Das Buch nennt den { $day }, der nach dem Tag dieses Berichts liegt: Ist ein Datum vertippt?
