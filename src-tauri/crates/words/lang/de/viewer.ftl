# The page a buyer lands on after scanning a card. It stands alone and knows nothing but the card.
# Its small formatter knows variables, quoted texts and choices by a variable; numbers and days come written out.

viewer-title = Fahrzeughistorie
viewer-title-of = { $name }: Fahrzeughistorie
viewer-noscript = Diese Seite liest die Karte in Ihrem Browser und braucht dafür JavaScript.
# Its name stands before the choice of a language.
viewer-language = Sprache

# No card yet
viewer-about-heading = Die Historie eines Fahrzeugs auf einer Karte
viewer-about = Der QR-Code auf der Karte enthält die ganze Historie eines Fahrzeugs: was gemacht wurde, wann und bei welchem Zählerstand. Scannen Sie ihn mit der Kamera Ihres Telefons, und diese Seite öffnet sich damit; oder fügen Sie unten seinen Text ein.
viewer-private = Nichts verlässt diese Seite: Was Sie einfügen, wird hier in Ihrem Browser gelesen.
viewer-paste-label = Text einer Karte
viewer-paste-hint = Die ganze Adresse mit den Ziffern nach dem #, oder nur die Ziffern.
viewer-paste-button = Karte lesen
viewer-another = Eine andere Karte lesen

# Why a card is refused: what is wrong, and what would be right
viewer-refused-heading = Diese Karte kann nicht gezeigt werden
viewer-refused-digits-form = Der Code ist unvollständig oder vertippt; scannen Sie den ganzen QR-Code noch einmal, oder kopieren Sie seinen Text von Anfang bis Ende.
viewer-refused-version = Der Code hat eine Version, die diese Seite nicht kennt; öffnen Sie ihn mit einer neueren Fassung dieser Seite.
viewer-refused-message = Der Code ist beschädigt oder stammt nicht von einer solchen Karte; scannen Sie den ganzen QR-Code noch einmal, oder bitten Sie um einen neuen Ausdruck.
viewer-refused-signature = Die Signatur passt nicht: Der Code wurde falsch gelesen oder nach dem Signieren geändert; scannen Sie ihn noch einmal, und wenn das wieder hier steht, vertrauen Sie der Karte nicht.
viewer-refused-stream = Die Signatur stimmt, aber was signiert wurde, lässt sich nicht entpacken; bitten Sie den Aussteller um eine neue Karte.
viewer-refused-claims = Die Signatur stimmt, aber was signiert wurde, ist keine Fahrzeughistorie in der Form einer Karte; bitten Sie den Aussteller um eine neue.

# The proof
viewer-proof-heading = Signatur geprüft
viewer-proof = Unverändert, seit die Karte am { $day } mit dem Schlüssel { $key } signiert wurde.
viewer-proof-limits = Das beweist nicht, dass die Arbeiten ausgeführt wurden. Das tun, soweit sie reichen, die Belege im Buch des Besitzers: Lassen Sie sich diese zeigen, und prüfen Sie, ob das Buch denselben Schlüssel zeigt.

# The car
viewer-car-description = Modell
viewer-car-vin = FIN
viewer-car-engine = Antrieb
viewer-car-first-use = In Betrieb seit
viewer-car-latest = Zählerstand
viewer-car-latest-on = { $reading } am { $day }
viewer-engine-petrol = Benzin
viewer-engine-diesel = Diesel
viewer-engine-petrol-hybrid = Benzin-Hybrid
viewer-engine-diesel-hybrid = Diesel-Hybrid
viewer-engine-gas = Gas
viewer-engine-electric = Elektro
viewer-engine-other = sonstiger
viewer-distance-km = { $number } km
viewer-distance-mi = { $number } mi

# The visits
viewer-visits-heading = Was gemacht wurde
viewer-visits-none = Diese Karte enthält keine Einträge.
viewer-visits-shown = { $count ->
    [one] Ein Eintrag, wie ihn der Besitzer geschrieben hat.
   *[other] { $count } Einträge, der neueste zuerst, wie sie der Besitzer geschrieben hat.
}
viewer-visits-left-out = { $count ->
    [one] Ein älterer Eintrag steht im Buch, passte aber nicht auf die Karte.
   *[other] { $count } ältere Einträge stehen im Buch, passten aber nicht auf die Karte.
}
viewer-visit-no-items = Keine Arbeit genannt
viewer-who-owner = Vom Besitzer
viewer-who-workshop = Von einer Werkstatt
viewer-who-both = Vom Besitzer und einer Werkstatt
viewer-who-unsaid = Von wem: keine Angabe
viewer-mark-receipt = Beleg im Buch
viewer-mark-photo = Foto im Buch
viewer-mark-late = über 30 Tage später eingetragen
viewer-mark-amended = nach dem Eintragen geändert
viewer-item-unknown = Arbeit { $number }

# What comes next
viewer-next-heading = Was als Nächstes ansteht
viewer-next-on-day = bis { $day }
viewer-next-at-reading = bei { $reading }
viewer-next-either = bis { $day } oder bei { $reading }, was zuerst eintritt
viewer-next-open = ohne Datum und Zählerstand

# New instruments
viewer-instruments-heading = Zähler ersetzt
viewer-instrument = Am { $day }: Der alte zeigte { $old }, der neue begann bei { $new }.

# For comparing with the book
viewer-head-heading = Zum Vergleich mit dem Buch des Besitzers
viewer-head-key = Schlüssel
viewer-head = Stand des Buchs
viewer-private-card = Diese Seite hat nichts verschickt: Die Historie kam mit der Adresse und bleibt in Ihrem Browser.

# What to ask: no accusation, and each sentence names what it is about
# $count: how many; $of: of how many; $day and $reading, $then and $shown: two places; $items: what is done
viewer-ask-heading = Wonach Sie fragen sollten
viewer-ask-note = Aus dieser Karte errechnet, nach in der Branche üblichen Grenzwerten. Eine Frage ist kein festgestellter Mangel.
viewer-ask-no-visits = Die Karte enthält keinen Eintrag: Was wurde an dem Fahrzeug gemacht, und wo steht es geschrieben?
viewer-ask-lower = { $count ->
    [one] Ein Zählerstand fällt
   *[other] { $count } Zählerstände fallen, am stärksten
} von { $reading } am { $day } auf { $shown } am { $then }: Wie ist das zu erklären?
viewer-ask-jump = Von { $reading } am { $day } bis { $shown } am { $then } ist weiter, als ein Auto in dieser Zeit fährt: Ist ein Zählerstand vertippt?
viewer-ask-ahead = Die Karte nennt den { $day }, der nach dem Tag ihrer Ausstellung liegt: Ist ein Datum vertippt?
viewer-ask-gap = { $count ->
    [one] Kein Eintrag
   *[other] { $count } Strecken von über 24 Monaten oder 30.000 km (18.641 mi) ohne Eintrag, die längste
} vom { $day } bei { $reading } bis zum { $then } bei { $shown }: Wurde etwas gemacht, das nicht im Buch steht?
viewer-ask-before = Die Aufzeichnung beginnt am { $day } bei { $reading }: Gibt es Unterlagen aus der Zeit davor?
viewer-ask-unrecorded = Kein Eintrag zu { $items }, obwohl das Fahrzeug alt genug oder weit genug gefahren ist: Wurde es gemacht?
viewer-ask-passed = Inzwischen fällig: { $items }. Wurde es gemacht?
viewer-ask-old-card = Die Karte wurde am { $day } ausgestellt: Was wurde seither gemacht, und gibt es eine neuere?
viewer-ask-clock = Als Tag ihrer Ausstellung nennt die Karte den { $day }, der noch bevorsteht: Stimmt das Datum dieses Geräts nicht, oder das der Karte?
viewer-ask-instruments = Der Zähler wurde am { $day } ersetzt, alter Stand { $reading }, neuer { $shown }: Gibt es dafür einen Beleg?
viewer-ask-receipts = Einträge mit Beleg im Buch: { $count } von { $of }. Dürfen Sie die Belege sehen?
viewer-ask-late = Einträge, die über 30 Tage später geschrieben wurden: { $count } von { $of }, zuletzt der vom { $day }. Nach welchen Notizen?
viewer-ask-amended = Nachträglich geänderte Einträge: { $count } von { $of }, zuletzt der vom { $day }. Was wurde geändert, und warum?
viewer-ask-left-out = { $count ->
    [one] Ein älterer Eintrag steht
   *[other] { $count } ältere Einträge stehen
} im Buch, aber nicht auf dieser Karte: Dürfen Sie das Buch sehen?

# The drawing of its way; the first for who cannot see it
viewer-plot = Zeichnung von { $count } Zählerständen, von { $reading } am { $day } bis { $shown } am { $then }. Die Einträge unten führen sie auf.
viewer-plot-gap = Gestrichelt: über 24 Monate oder 30.000 km (18.641 mi) ohne Eintrag.
viewer-plot-odd = Rauten: Zählerstände, die fallen oder springen.

# An older card of the same car, held against this one
viewer-scan-button = Mit der Kamera scannen
viewer-scan-failed = Die Kamera lässt sich hier nicht verwenden; fügen Sie stattdessen den Text ein.
viewer-compare-heading = Mit einer älteren Karte vergleichen
viewer-compare-label = Text einer älteren Karte dieses Fahrzeugs
viewer-compare-button = Vergleichen
viewer-compare-contained = Die Karte vom { $newer } enthält die vom { $older } unverändert: { $count ->
    [one] ein Eintrag ist
   *[other] { $count } Einträge sind
} gleich.
viewer-compare-nothing = Die Karten vom { $older } und vom { $newer } haben keine Einträge gemeinsam, die sich vergleichen ließen.
viewer-compare-differs = Die Karte vom { $newer } enthält die vom { $older } nicht unverändert. Fragen Sie nach jedem dieser Punkte:
viewer-compare-same-key = Beide sind mit demselben Schlüssel signiert.
viewer-compare-other-key = Sie sind mit verschiedenen Schlüsseln signiert, wie nach einem Wechsel des Besitzers oder des Geräts.
viewer-compare-car-unknown = Nicht beide zeigen eine Fahrgestellnummer, daher ist nicht sicher, dass sie zum selben Fahrzeug gehören.
viewer-compare-other-car = Die Fahrgestellnummern unterscheiden sich.
viewer-compare-first-use = Die Tage der ersten Nutzung unterscheiden sich.
viewer-compare-latest = Der letzte Zählerstand ist niedriger oder von einem früheren Tag.
viewer-compare-instrument = Der am { $day } ersetzte Zähler wird nicht mehr oder anders genannt.
viewer-compare-fewer = Das Buch enthält weniger Einträge.
viewer-compare-changed = Der Eintrag vom { $day } lautet anders{ $amended ->
    [yes] {" "}und ist als geändert gekennzeichnet
   *[no] {""}
}.
viewer-compare-missing = Der Eintrag vom { $day } fehlt.
viewer-compare-added = Der Eintrag vom { $day } wurde nach der älteren Karte geschrieben.
viewer-compare-more = { $count } weitere.
