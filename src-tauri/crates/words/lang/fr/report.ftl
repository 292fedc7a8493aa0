# What stands on the full report beside what it shares with the history card and the page behind one.

# ---- Labels

report-title = Rapport complet
report-contents = Sommaire
report-summary = L’historique en bref

# Two of what may have commas of its own; of more, $list is what stands before the last. $list, $next: what was found,
# what is due, or years with their values
report-list = { $list } ; { $next }

# ---- The first page

# Under the head of the book. $signed: yes where the square is signed, no where it holds plain text
report-head-note = { $signed ->
    [yes] Le contenu du code QR est signé ; les pages de ce rapport ne le sont pas. Ce qu’elles disent, le carnet peut le prouver : le code QR contient aussi cet état, auquel on compare le carnet.
   *[no] Rien dans ce rapport n’est signé. Les écritures du carnet le sont, et peuvent prouver ce qu’il dit.
}

# ---- What the history comes to

# $count: struck-out visits
report-struck-count = { $count ->
    [one] Une intervention est rayée ; elle est signalée comme telle et ne compte pas.
   *[other] { $count } interventions sont rayées ; elles sont signalées comme telles et ne comptent pas.
}
# $why: no: not asked for; private: they would show what is left out
report-without-photos = { $why ->
    [private] Les photos de justificatifs sont omises, car elles montreraient les noms ou le numéro omis.
   *[no] Les photos de justificatifs sont omises.
}
report-photos-small = Les photos de justificatifs sont trop petites pour qu’un prix s’y lise, car les prix sont omis.
# $most: a number
report-photos-most = Les photos accompagnent les interventions les plus récentes, { $most } au plus ; le carnet les contient toutes.
# $most: a number; $count: how many older ones
report-left-out = { $count ->
    [one] Une intervention plus ancienne est au carnet ; un rapport montre les { $most } plus récentes.
   *[other] { $count } interventions plus anciennes sont au carnet ; un rapport montre les { $most } plus récentes.
}
# $kind: of fuel; $unit: of consumption
report-use = Consommation par an : { $kind }, { $unit }
# $currency: its code
report-costs = Dépenses par an, { $currency }
report-costs-note = Tout ce qui a un prix au carnet : carburant, pièces, main-d’œuvre, taxes, assurance et contrôles.
# Under bars of which the last is ruled
report-open-year = Hachuré : l’année n’est pas terminée.
# A drawing for who cannot see it. $title: what is drawn; $values: each year with its value
report-bars-say = { $title }. { $values }.
# $year: a year; $value: what it came to
report-bar-says = { $year } : { $value }

# ---- A visit

report-struck = Rayé : cette ligne ne compte pas.
# $why: the owner's words
report-struck-why = Rayé : cette ligne ne compte pas. Motif : { $why }
# $found: what was found, item by item
report-found = Constaté : { $found }
# $item: an item; $finding: in a word
report-found-item = { $item } : { $finding }
# $value: with its unit
report-found-measured = { $item } : { $finding } ({ $value })
# $name: a part; $kind: of which kind it is
report-part-kind = { $name } ({ $kind })
report-amount-piece = { $amount } ×
report-amount-set = { $amount } × jeu
report-amount-litre = { $amount } l
report-amount-kilogram = { $amount } kg
report-amount-metre = { $amount } m
# $number, $of: which photo of how many; $day: of the visit
report-photo-says = Photo d’un justificatif, { $number } sur { $of }, intervention du { $day }
report-photo-missing = { $count ->
    [one] La photo d’un justificatif n’existe plus.
   *[other] Les photos de { $count } justificatifs n’existent plus.
}

# ---- What to ask

report-ask-note = Calculé à partir des interventions, selon les limites d’usage du métier. Une question n’est pas un défaut constaté.
report-no-questions = Selon les limites d’usage du métier, l’historique n’appelle aucune question.
# In place of the sentences for a card that was scanned
report-ask-no-visits = Le carnet ne contient aucune intervention : qu’a-t-on fait sur le véhicule, et où est-ce noté ?
report-ask-ahead = Le carnet porte la date du { $day }, postérieure à celle de ce rapport : une date est-elle mal saisie ?
