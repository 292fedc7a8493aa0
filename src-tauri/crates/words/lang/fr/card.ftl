# What stands on the printed card: its labels, then its sentences.

# ---- Labels

card-title = Historique du véhicule
card-vin = Numéro d’identification (VIN)
card-engine = Énergie
card-first-use = Mise en circulation
card-latest = Dernier relevé
card-next = Prochaines échéances
card-nothing-next = Rien au programme n’a encore de date ni de kilométrage.
card-history = Interventions
card-no-visits = Le carnet ne contient encore aucune intervention.
card-day = Date
# $unit: km or mi
card-reading = Relevé, { $unit }
card-work = Travaux
card-receipt = justificatif au carnet
card-photo = photo au carnet
card-written-late = noté tardivement
card-amended = rectifié
card-issued = Établi le
card-key = Clé
# $unit: km or mi
card-plot = Relevés au fil des ans, { $unit }
card-record = Travaux effectués
card-last-done = Dernière fois
card-next-due = Échéance
card-no-record = aucune trace
card-writers = Qui a écrit dans le carnet

# ---- The car and its visits

card-engine-petrol = Essence
card-engine-diesel = Diesel
card-engine-petrol-hybrid = Hybride essence
card-engine-diesel-hybrid = Hybride diesel
card-engine-gas = Gaz
card-engine-electric = Électrique
card-engine-other = Autre
card-vin-hidden = omis par le propriétaire
# $tail: its last six characters
card-vin-tail = … { $tail }
card-by-owner = par le propriétaire
card-by-workshop = garage
card-item-unknown = opération { $number }, inconnue de cette version
# The mark between a number and its decimals; thousands stand apart by a space in every language.
card-decimal-mark = ,

# $shown: visits on the sheet; $left-out: how many of them are too old for the square
card-visits-note = { $left-out ->
    [0] { $shown ->
        [0] Aucune intervention.
        [one] { $shown } intervention, contenue aussi dans le code QR.
       *[other] { $shown } interventions, toutes contenues aussi dans le code QR.
    }
    [one] { $shown } interventions ; la plus ancienne manque dans le code QR.
   *[other] { $shown } interventions ; les { $left-out } plus anciennes manquent dans le code QR.
}

# ---- What the history comes to

card-asked-oil = Huile
card-asked-belts = Courroies et chaîne
card-asked-brakes = Freins
card-asked-fluids = Liquides
card-asked-filters = Filtres
card-asked-repairs = Réparations
# $count: further items that have no room on the card
card-more = { $count ->
    [one] et une autre opération au carnet
   *[other] et { $count } autres opérations au carnet
}
# $count: visits with a receipt; $of: all visits
card-receipts = { $of ->
    [one] { $count ->
        [0] L’intervention n’a pas de justificatif au carnet.
       *[other] L’intervention a un justificatif au carnet.
    }
   *[other] { $count ->
        [0] Aucune des { $of } interventions n’a de justificatif au carnet.
        [one] Une seule des { $of } interventions a un justificatif au carnet.
       *[other] { $count } des { $of } interventions ont un justificatif au carnet.
    }
}
# The gaps of the plot. $gaps: how many; $months: a number of months; $distance: a distance with its unit
card-plot-note = { $gaps ->
    [0] Jamais plus de { $months } mois ni de { $distance } sans intervention au carnet.
    [one] En tirets sur fond hachuré : plus de { $months } mois ou de { $distance } sans intervention au carnet.
   *[other] En tirets sur fond hachuré : plus de { $months } mois ou de { $distance } sans intervention au carnet, { $gaps } fois.
}
# $count: how many times the instrument was replaced
card-plot-instruments = { $count ->
    [one] Le compteur a été remplacé ; la ligne montre la distance parcourue en tout.
   *[other] Le compteur a été remplacé { $count } fois ; la ligne montre la distance parcourue en tout.
}
# $from, $to: the days of the first and last entry of one device
card-span = { $from } – { $to }
# $day: a day
card-handed-over = transmis le { $day }
# $count: owners one after the other; $since: the day of the last handover
card-owners = { $count ->
    [one] Ce carnet n’a eu qu’un propriétaire.
   *[other] Ce carnet a eu { $count } propriétaires, le dernier depuis le { $since }.
}
# $count: how many more devices wrote in the book
card-more-writers = { $count ->
    [one] et un autre appareil
   *[other] et { $count } autres appareils
}

# ---- Outside a card that has to be cut out

# $turn: long or short; $fold: yes or no
card-handling = Imprimer les deux faces en taille réelle (100 %), retournées sur le { $turn ->
    [long] grand
   *[short] petit
} côté ; couper aux repères des coins{ $fold ->
    [yes] , puis plier aux repères en tirets
   *[no] {""}
}.

# When something is due, in a narrow column under card-next. $day: the day; $reading: the reading with its unit
card-next-day = { $day }
card-next-reading = { $reading }
card-next-both = { $day } ou { $reading }

# ---- Beside the square

card-scan = Scannez le code QR avec un téléphone pour lire cet historique et en vérifier la signature.
card-scan-plain = Scannez le code QR avec un téléphone pour voir un résumé de cette carte.
# $day: the day of signing; $key: the fingerprint of the key
card-unchanged = Si la vérification réussit, cet historique est inchangé depuis sa signature le { $day } avec la clé { $key }.
card-proves-not = Une signature prouve que rien n’a été modifié ensuite ; elle ne prouve pas que les travaux ont été faits.
# Behind card-unchanged, where there is little room.
card-proves-not-short = Cela ne prouve pas que les travaux ont été faits.
card-unsigned = Ce code QR contient du texte simple sans signature, car aucune adresse n’est réglée pour ouvrir une carte scannée.
