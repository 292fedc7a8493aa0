# The page a buyer lands on after scanning a card. It stands alone and knows nothing but the card.
# Its small formatter knows variables, quoted texts and choices by a variable; numbers and days come written out.

viewer-title = Historique du véhicule
viewer-title-of = { $name } : historique du véhicule
viewer-noscript = Cette page lit la carte dans votre navigateur et a besoin pour cela de JavaScript.
# Its name stands before the choice of a language.
viewer-language = Langue

# No card yet
viewer-about-heading = L’historique d’un véhicule sur une carte
viewer-about = Le code QR de la carte contient tout l’historique d’un véhicule : ce qui a été fait, quand et à quel kilométrage. Scannez-le avec l’appareil photo de votre téléphone et cette page s’ouvrira avec lui, ou collez son texte ci-dessous.
viewer-private = Rien ne quitte cette page : ce que vous collez est lu ici, dans votre navigateur.
viewer-paste-label = Texte d’une carte
viewer-paste-hint = L’adresse entière avec les chiffres après le #, ou les chiffres seuls.
viewer-paste-button = Lire la carte
viewer-another = Lire une autre carte

# Why a card is refused: what is wrong, and what would be right
viewer-refused-heading = Cette carte ne peut pas être affichée
viewer-refused-digits-form = Le code est incomplet ou mal saisi ; scannez de nouveau le code QR entier, ou copiez son texte du début à la fin.
viewer-refused-version = Le code est d’une version que cette page ne connaît pas ; ouvrez-le avec un exemplaire plus récent de cette page.
viewer-refused-message = Le code est abîmé ou ne vient pas d’une telle carte ; scannez de nouveau le code QR entier, ou demandez une nouvelle impression.
viewer-refused-signature = La signature ne correspond pas : le code a été mal lu, ou modifié après sa signature ; scannez-le de nouveau, et si ce message revient, ne vous fiez pas à la carte.
viewer-refused-stream = La signature est bonne, mais ce qui a été signé ne peut pas être décompressé ; demandez une nouvelle carte à qui l’a établie.
viewer-refused-claims = La signature est bonne, mais ce qui a été signé n’est pas l’historique d’un véhicule sous la forme d’une carte ; demandez-en une nouvelle à qui l’a établie.

# The proof
viewer-proof-heading = Signature vérifiée
viewer-proof = Inchangé depuis sa signature le { $day } avec la clé { $key }.
viewer-proof-limits = Cela ne prouve pas que les travaux ont été faits. Les justificatifs du carnet du propriétaire le font, pour ce qu’ils couvrent : demandez à les voir, et vérifiez que le carnet montre la même clé.

# The car
viewer-car-description = Modèle
viewer-car-vin = VIN
viewer-car-engine = Énergie
viewer-car-first-use = Mise en circulation
viewer-car-latest = Compteur
viewer-car-latest-on = { $reading } le { $day }
viewer-engine-petrol = essence
viewer-engine-diesel = diesel
viewer-engine-petrol-hybrid = hybride essence
viewer-engine-diesel-hybrid = hybride diesel
viewer-engine-gas = gaz
viewer-engine-electric = électrique
viewer-engine-other = autre
viewer-distance-km = { $number } km
viewer-distance-mi = { $number } mi

# The visits
viewer-visits-heading = Ce qui a été fait
viewer-visits-none = Cette carte ne contient aucune intervention.
viewer-visits-shown = { $count ->
    [one] Une intervention, telle que le propriétaire l’a notée.
   *[other] { $count } interventions, la plus récente d’abord, telles que le propriétaire les a notées.
}
viewer-visits-left-out = { $count ->
    [one] Une intervention plus ancienne est au carnet mais ne tenait pas sur la carte.
   *[other] { $count } interventions plus anciennes sont au carnet mais ne tenaient pas sur la carte.
}
viewer-visit-no-items = Aucune opération nommée
viewer-who-owner = Par le propriétaire
viewer-who-workshop = Par un garage
viewer-who-both = Par le propriétaire et un garage
viewer-who-unsaid = Par qui : non précisé
viewer-mark-receipt = justificatif au carnet
viewer-mark-photo = photo au carnet
viewer-mark-late = notée plus de 30 jours après
viewer-mark-amended = rectifiée après coup
viewer-item-unknown = Opération { $number }

# What comes next
viewer-next-heading = Prochaines échéances
viewer-next-on-day = avant le { $day }
viewer-next-at-reading = à { $reading }
viewer-next-either = le { $day } ou à { $reading }, au premier des deux atteint
viewer-next-open = sans date ni kilométrage

# New instruments
viewer-instruments-heading = Compteur remplacé
viewer-instrument = Le { $day } : l’ancien affichait { $old }, le nouveau a commencé à { $new }.

# For comparing with the book
viewer-head-heading = À comparer avec le carnet du propriétaire
viewer-head-key = Clé
viewer-head = État du carnet
viewer-private-card = Cette page n’a rien envoyé : l’historique est venu avec l’adresse et reste dans votre navigateur.

# What to ask: no accusation, and each sentence names what it is about
# $count: how many; $of: of how many; $day and $reading, $then and $shown: two places; $items: what is done
viewer-ask-heading = Ce que vous pouvez demander
viewer-ask-note = Calculé à partir de cette carte, selon les limites d’usage du métier. Une question n’est pas un défaut constaté.
viewer-ask-no-visits = La carte ne contient aucune intervention : qu’a-t-on fait sur le véhicule, et où est-ce noté ?
viewer-ask-lower = { $count ->
    [one] Un relevé baisse
   *[other] { $count } relevés baissent, le plus fortement
} de { $reading } le { $day } à { $shown } le { $then } : comment l’expliquer ?
viewer-ask-jump = De { $reading } le { $day } à { $shown } le { $then }, c’est plus qu’une voiture ne parcourt en ce temps : un relevé est-il mal saisi ?
viewer-ask-ahead = La carte porte la date du { $day }, postérieure à son établissement : une date est-elle mal saisie ?
viewer-ask-gap = { $count ->
    [one] Aucune intervention
   *[other] { $count } périodes de plus de 24 mois ou de 30 000 km (18 641 mi) sans intervention, la plus longue
} du { $day } à { $reading } au { $then } à { $shown } : des travaux faits manquent-ils au carnet ?
viewer-ask-before = L’historique commence le { $day } à { $reading } : y a-t-il des papiers d’avant ?
viewer-ask-unrecorded = Aucune trace de ces opérations : { $items }. L’âge ou le kilométrage du véhicule les appelait : ont-elles été faites ?
viewer-ask-passed = Échéances dépassées : { $items }. Est-ce fait ?
viewer-ask-old-card = La carte a été établie le { $day } : qu’a-t-on fait depuis, et y en a-t-il une plus récente ?
viewer-ask-clock = La carte serait établie le { $day }, date encore à venir : la date de cet appareil est-elle juste, ou celle de la carte ?
viewer-ask-instruments = Le compteur a été remplacé le { $day }, l’ancien à { $reading }, le nouveau à { $shown } : y a-t-il un justificatif ?
viewer-ask-receipts = Interventions avec justificatif au carnet : { $count } sur { $of }. Pouvez-vous voir les justificatifs ?
viewer-ask-late = Interventions notées plus de 30 jours après : { $count } sur { $of }, la dernière étant celle du { $day }. D’après quelles notes ?
viewer-ask-amended = Interventions rectifiées après coup : { $count } sur { $of }, la dernière étant celle du { $day }. Qu’a-t-on changé, et pourquoi ?
viewer-ask-left-out = { $count ->
    [one] Une intervention plus ancienne est au carnet mais pas
   *[other] { $count } interventions plus anciennes sont au carnet mais pas
} sur cette carte : pouvez-vous voir le carnet ?

# The drawing of its way; the first for who cannot see it
viewer-plot = Tracé de { $count } relevés, de { $reading } le { $day } à { $shown } le { $then }. Les interventions ci-dessous les énumèrent.
viewer-plot-gap = En tirets : plus de 24 mois ou de 30 000 km (18 641 mi) sans intervention.
viewer-plot-odd = Losanges : relevés qui baissent ou qui bondissent.

# An older card of the same car, held against this one
viewer-scan-button = Scanner avec l’appareil photo
viewer-scan-failed = L’appareil photo ne peut pas servir ici ; collez plutôt le texte.
viewer-compare-heading = Comparer avec une carte plus ancienne
viewer-compare-label = Texte d’une carte plus ancienne de ce véhicule
viewer-compare-button = Comparer
viewer-compare-contained = La carte du { $newer } contient celle du { $older } sans changement : { $count ->
    [one] une intervention est la même
   *[other] { $count } interventions sont les mêmes
}.
viewer-compare-nothing = Les cartes du { $older } et du { $newer } n’ont aucune intervention commune à comparer.
viewer-compare-differs = La carte du { $newer } ne contient pas celle du { $older } sans changement. Demandez des explications sur chacun de ces points :
viewer-compare-same-key = La même clé a signé les deux.
viewer-compare-other-key = Des clés différentes les ont signées, comme après un changement de propriétaire ou d’appareil.
viewer-compare-car-unknown = L’une au moins ne montre pas de numéro d’identification : il n’est donc pas certain qu’elles soient du même véhicule.
viewer-compare-other-car = Les numéros d’identification diffèrent.
viewer-compare-first-use = Les dates de mise en circulation diffèrent.
viewer-compare-latest = Le dernier relevé est plus bas, ou d’une date antérieure.
viewer-compare-instrument = Le compteur remplacé le { $day } n’est plus nommé, ou l’est autrement.
viewer-compare-fewer = Le carnet contient moins d’interventions.
viewer-compare-changed = L’intervention du { $day } est notée autrement{ $amended ->
    [yes] , et marquée comme rectifiée
   *[no] {""}
}.
viewer-compare-missing = L’intervention du { $day } a disparu.
viewer-compare-added = L’intervention du { $day } a été notée après la carte la plus ancienne.
viewer-compare-more = { $count ->
    [one] Encore un autre.
   *[other] Encore { $count } autres.
}
