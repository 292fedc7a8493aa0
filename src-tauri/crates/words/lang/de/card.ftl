# What stands on the printed card: its labels, then its sentences.

# ---- Labels

card-title = Fahrzeughistorie
card-vin = Fahrgestellnummer (FIN)
card-engine = Antrieb
card-first-use = In Betrieb seit
card-latest = Letzter Zählerstand
card-next = Als Nächstes fällig
card-nothing-next = Nichts auf dem Plan hat schon ein Datum oder einen Zählerstand.
card-history = Einträge
card-no-visits = Im Buch steht noch keine Arbeit.
card-day = Datum
# $unit: km or mi
card-reading = Stand, { $unit }
card-work = Arbeiten
card-receipt = Beleg im Buch
card-photo = Foto im Buch
card-written-late = spät eingetragen
card-amended = geändert
card-issued = Ausgestellt
card-key = Schlüssel
# $unit: km or mi
card-plot = Zählerstände über die Jahre, { $unit }
card-record = Ausgeführte Arbeiten
card-last-done = Zuletzt
card-next-due = Wieder fällig
card-no-record = kein Eintrag
card-writers = Wer ins Buch geschrieben hat

# ---- The car and its visits

card-engine-petrol = Benzin
card-engine-diesel = Diesel
card-engine-petrol-hybrid = Benzin-Hybrid
card-engine-diesel-hybrid = Diesel-Hybrid
card-engine-gas = Gas
card-engine-electric = Elektro
card-engine-other = Sonstiger
card-vin-hidden = vom Besitzer weggelassen
# $tail: its last six characters
card-vin-tail = … { $tail }
card-by-owner = Eigenleistung
card-by-workshop = Werkstatt
card-item-unknown = Arbeit { $number }, die diese Version nicht kennt
# The mark between a number and its decimals; thousands stand apart by a space in every language.
card-decimal-mark = ,

# $shown: visits on the sheet; $left-out: how many of them are too old for the square
card-visits-note = { $left-out ->
    [0] { $shown ->
        [0] Keine Einträge.
        [one] { $shown } Eintrag, der auch im QR-Code steht.
       *[other] { $shown } Einträge, die alle auch im QR-Code stehen.
    }
    [one] { $shown } Einträge; im QR-Code fehlt der älteste.
   *[other] { $shown } Einträge; im QR-Code fehlen die { $left-out } ältesten.
}

# ---- What the history comes to

card-asked-oil = Öl
card-asked-belts = Riemen und Kette
card-asked-brakes = Bremsen
card-asked-fluids = Flüssigkeiten
card-asked-filters = Filter
card-asked-repairs = Reparaturen
# $count: further items that have no room on the card
card-more = { $count ->
    [one] und eine weitere Arbeit im Buch
   *[other] und { $count } weitere Arbeiten im Buch
}
# $count: visits with a receipt; $of: all visits
card-receipts = { $of ->
    [one] { $count ->
        [0] Zu dem Eintrag liegt kein Beleg im Buch.
       *[other] Zu dem Eintrag liegt ein Beleg im Buch.
    }
   *[other] { $count ->
        [0] Zu keinem der { $of } Einträge liegt ein Beleg im Buch.
       *[other] Zu { $count } von { $of } Einträgen liegt ein Beleg im Buch.
    }
}
# The gaps of the plot. $gaps: how many; $months: a number of months; $distance: a distance with its unit
card-plot-note = { $gaps ->
    [0] Nie mehr als { $months } Monate oder { $distance } ohne Eintrag im Buch.
    [one] Gestrichelt auf schraffiertem Grund: mehr als { $months } Monate oder { $distance } ohne Eintrag im Buch.
   *[other] Gestrichelt auf schraffiertem Grund: mehr als { $months } Monate oder { $distance } ohne Eintrag im Buch, { $gaps }-mal.
}
# $count: how many times the instrument was replaced
card-plot-instruments = { $count ->
    [one] Der Zähler wurde ersetzt; die Linie zeigt, wie weit das Fahrzeug insgesamt gefahren war.
   *[other] Der Zähler wurde { $count }-mal ersetzt; die Linie zeigt, wie weit das Fahrzeug insgesamt gefahren war.
}
# $from, $to: the days of the first and last entry of one device
card-span = { $from } bis { $to }
# $day: a day
card-handed-over = übergeben am { $day }
# $count: owners one after the other; $since: the day of the last handover
card-owners = { $count ->
    [one] Dieses Buch hatte bisher einen Besitzer.
   *[other] Dieses Buch hatte { $count } Besitzer, den letzten seit { $since }.
}
# $count: how many more devices wrote in the book
card-more-writers = { $count ->
    [one] und ein weiteres Gerät
   *[other] und { $count } weitere Geräte
}

# ---- Outside a card that has to be cut out

# $turn: long or short; $fold: yes or no
card-handling = Beide Seiten in voller Größe (100 %) drucken, an der { $turn ->
    [long] längeren
   *[short] kürzeren
} Kante gewendet; an den Eckmarken schneiden{ $fold ->
    [yes] , dann an den gestrichelten Marken falten
   *[no] {""}
}.

# When something is due, in a narrow column under card-next. $day: the day; $reading: the reading with its unit
card-next-day = { $day }
card-next-reading = { $reading }
card-next-both = { $day } oder { $reading }

# ---- Beside the square

card-scan = Mit dem Telefon scannen, um diese Historie zu lesen und ihre Signatur zu prüfen.
card-scan-plain = Mit dem Telefon scannen, um eine Zusammenfassung dieser Karte zu sehen.
# $day: the day of signing; $key: the fingerprint of the key
card-unchanged = Besteht sie die Prüfung, so ist diese Historie unverändert, seit sie am { $day } mit dem Schlüssel { $key } signiert wurde.
card-proves-not = Eine Signatur beweist, dass danach nichts geändert wurde; sie beweist nicht, dass die Arbeiten ausgeführt wurden.
# Behind card-unchanged, where there is little room.
card-proves-not-short = Das beweist nicht, dass die Arbeiten ausgeführt wurden.
card-unsigned = Dieser QR-Code enthält einfachen Text ohne Signatur, weil keine Adresse eingestellt ist, unter der sich eine gescannte Karte öffnet.
