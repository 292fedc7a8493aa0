# The words of the catalogue: its items, then the kinds of part, the findings, what is measured, what a car has,
# and what has to be opened up for the work. What follows the first dash is the key in the catalogue.

# The items: a short name, and below it, where that helps, one sentence on what the work is for.
# A name says when the work is a look, a test or cleaning; without such a word the thing is replaced.

item-engine-oil = Motoröl und Filter
item-engine-oil-for = Altes Öl verliert seine Schmierkraft, dickt durch Ruß ein und lässt den Motor verschleißen; der Filter hält fest, was es aufgenommen hat.

item-engine-air-filter = Luftfilter
item-engine-air-filter-for = Hält Staub vom Motor fern; ein verstopfter kostet Leistung und Kraftstoff.

item-cabin-filter = Innenraumfilter
item-cabin-filter-for = Hält Staub und Pollen aus dem Innenraum und die Scheiben frei von Beschlag.

item-throttle-body = Drosselklappe reinigen
item-throttle-body-for = Ablagerungen an der Drosselklappe machen den Leerlauf unruhig und die Gasannahme träge.

item-spark-plugs = Zündkerzen
item-spark-plugs-for = Verschlissene Kerzen zünden nicht zuverlässig, verschwenden Kraftstoff und schaden mit der Zeit den Zündspulen und dem Katalysator.

item-glow-plugs = Glühkerzen
item-glow-plugs-for = Sie wärmen einen kalten Diesel zum Start vor; versagen sie, springt er schlecht und mit weißem Rauch an. Eine festsitzende reißt im Zylinderkopf ab: warmer Motor, wenig Kraft, und eine Werkstatt, wenn sie sich nicht löst.

item-fuel-filter = Kraftstofffilter
item-fuel-filter-for = Hält Schmutz von Pumpe und Einspritzdüsen fern, die weit mehr kosten als der Filter.

item-fuel-filter-water = Dieselfilter entwässern
item-fuel-filter-water-for = Wasser, das den Filter passiert, lässt Einspritzpumpe und Düsen von innen rosten.

item-coolant = Kühlmittel
item-coolant-for = Sein Schutz vor Rost und Frost lässt mit dem Alter nach, gleich wie weit der Wagen fährt.

item-brake-fluid = Bremsflüssigkeit
item-brake-fluid-for = Sie zieht Wasser aus der Luft; mit zu viel davon kocht sie bei starkem Bremsen, und das Pedal gibt nach.

item-timing-belt = Zahnriemen mit Wasserpumpe und Rollen
item-timing-belt-for = Reißt dieser Riemen, sind die meisten Motoren auf einen Schlag zerstört.

item-drive-belt = Keil- oder Rippenriemen prüfen
item-drive-belt-for = Treibt die Lichtmaschine an und bei vielen Autos die Wasserpumpe; Risse, Verglasung oder Ausfransen verlangen sofort einen neuen.

item-hoses = Schläuche prüfen
item-hoses-for = Ein Schlauch, der weich, rissig oder an den Enden feucht ist, lässt den Wagen liegen und kann den Motor überhitzen.

item-battery-test = Batterie prüfen
item-battery-test-for = Eine schwache Batterie wird so gefunden, bevor es der erste kalte Morgen tut.

item-tyre-check = Reifen auf Profil und Schäden prüfen
item-tyre-check-for = Profil, Schäden und Alter entscheiden, wie der Wagen bremst und auf der Straße liegt.

item-brake-check = Bremsbeläge und Bremsscheiben prüfen
item-brake-check-for = Beläge und Scheiben verschleißen im Verborgenen; ein Blick zur rechten Zeit rettet die Scheiben und den Bremsweg.

item-gearbox-oil = Schaltgetriebeöl
item-gearbox-oil-for = Es altert und sammelt den Abrieb der Zahnräder; welches Öl und wie viel, sagt nur das Handbuch.

item-wipers = Wischerblätter
item-wipers-for = Verhärtete Blätter schmieren gerade dann, wenn man am wenigsten sieht.

item-lamps = Beleuchtung prüfen
item-lamps-for = Vom Fahrersitz aus bemerkt niemand, dass ein Bremslicht ausgefallen ist.

item-air-mass-sensor = Luftmassenmesser prüfen
item-air-mass-sensor-for = Ein verschmutzter Messer schätzt die Luft falsch ein, und der Motor läuft zu fett, zu mager oder ohne Leistung.

item-crankcase-valve = Kurbelgehäuse-Entlüftungsventil prüfen
item-crankcase-valve-for = Ein klemmendes Ventil lässt Druck entstehen, der Öl an den Dichtungen vorbeidrückt.

item-power-steering-fluid = Servoöl prüfen
item-power-steering-fluid-for = Ein sinkender Stand bedeutet ein Leck, und am Ende geht die Lenkung schwer.

item-exhaust = Auspuffanlage prüfen
item-exhaust-for = Eine undichte Stelle vor dem Innenraum lässt Abgase ein; lose Aufhängungen lassen das Rohr brechen.

item-steering-suspension = Lenkungs- und Fahrwerksgelenke prüfen
item-steering-suspension-for = Spiel in einem Gelenk verschleißt zuerst die Reifen, und später gibt es nach.

item-corrosion = Auf Rost prüfen
item-corrosion-for = Rost an Bremsleitungen, Schwellern und Aufnahmen ist billig, solange er an der Oberfläche sitzt.

item-air-conditioning = Klimaanlage prüfen
item-air-conditioning-for = Schleichender Verlust von Kältemittel nimmt dem Kompressor das Öl; den Kreislauf dürfen nur zugelassene Betriebe öffnen.

item-tyres = Reifen
item-tyres-for = Gummi verhärtet mit dem Alter, auch wenn das Profil noch tief ist.

item-engine-oil-level = Motorölstand prüfen
item-engine-oil-level-for = Ein Motor ohne genug Öl ist in Minuten zerstört, und jeder kann etwas verbrauchen.

item-throttle-cable = Gaszug prüfen
item-throttle-cable-for = Ein ausgefranster oder klemmender Zug kann das Gas offen halten.

item-idle-valve = Leerlaufregler reinigen
item-idle-valve-for = Ablagerungen lassen die Leerlaufdrehzahl schwanken oder den Motor an der Ampel ausgehen.

item-throttle-relearn = Drosselklappe anlernen
item-throttle-relearn-for = Nach einer Reinigung oder ohne Strom weiß eine elektronische Drosselklappe nicht mehr, wo sie schließt.

item-ignition-leads = Zündkabel, Verteilerkappe und Läufer
item-ignition-leads-for = Gealterte Kabel lassen den Funken entweichen, vor allem an feuchten Morgen.

item-ignition-coils = Zündspulen prüfen
item-ignition-coils-for = Eine rissige Spule oder ihr Stecker setzt unter Last aus und kann den Katalysator zerstören.

item-vacuum-hoses = Unterdruckschläuche prüfen
item-vacuum-hoses-for = Falschluft macht das Gemisch mager, den Leerlauf unruhig und das Bremspedal hart.

item-charge-air-hoses = Ladeluftschläuche prüfen
item-charge-air-hoses-for = Ein gerissener Schlauch kostet Leistung, füllt den Filter mit Ruß und kann den Turbolader überdrehen lassen.

item-petrol-additive = Benzin-Systemreiniger zugeben
item-petrol-additive-for = Er löst Ablagerungen an Düsen und Ventilen; er ist nur für Benzin und darf nie in Diesel.

item-diesel-additive = Diesel-Systemreiniger zugeben
item-diesel-additive-for = Er hält die Düsenspitzen sauber; er ist nur für Diesel und darf nie in Benzin.

item-coolant-test = Kühlmittelstand und Frostschutz prüfen
item-coolant-test-for = Ein sinkender Stand bedeutet ein Leck, und zu dünnes Kühlmittel friert und lässt den Motor rosten.

item-timing-belt-look = Zahnriemen prüfen
item-timing-belt-look-for = Risse, Ausfransen oder Öl am Riemen zeigen sich, bevor er reißt.

item-timing-chain = Steuerkette prüfen
item-timing-chain-for = Eine gelängte Kette rasselt beim Kaltstart, lange bevor sie einen Zahn überspringt.

item-drive-belt-change = Keil- oder Rippenriemen
item-drive-belt-change-for = Ohne ihn stehen Lichtmaschine, Servolenkung und bei vielen Autos die Wasserpumpe still.

item-egr-valve = AGR-Ventil reinigen
item-egr-valve-for = Ruß lässt das Ventil klemmen, das Abgas zurückführt: unruhiger Lauf, Rauch, keine Leistung.

item-particulate-filter = Partikelfilter prüfen
item-particulate-filter-for = Ein Filter, der sich im Stadtverkehr nicht freibrennen kann, verstopft und legt den Wagen still.

item-particulate-filter-ash = Partikelfilter von Asche reinigen
item-particulate-filter-ash-for = Asche verbrennt nicht; ein voller Filter belastet Motor und Turbolader.

item-automatic-gearbox-oil = Automatikgetriebeöl und Filter
item-automatic-gearbox-oil-for = Verbrauchtes Öl macht die Schaltvorgänge ruppig und verschleißt Kupplungen, die mehr kosten als der Wagen wert sein mag.

item-axle-oil = Öl in Achs- und Verteilergetriebe
item-axle-oil-for = Es trägt die Last der angetriebenen Räder, und nichts filtert es.

item-drive-shaft-boots = Achsmanschetten prüfen
item-drive-shaft-boots-for = Eine gerissene Manschette verliert ihr Fett, und das Gelenk zermahlt sich.

item-engine-mounts = Motorlager prüfen
item-engine-mounts-for = Gerissene Lager lassen den Innenraum zittern und belasten Auspuff und Schläuche.

item-power-steering-fluid-change = Servoöl
item-power-steering-fluid-change-for = Dunkles Öl verschleißt die Pumpe und die Dichtungen des Lenkgetriebes.

item-brake-fluid-test = Bremsflüssigkeit prüfen
item-brake-fluid-test-for = Ein Prüfgerät zeigt, wie viel Wasser die Flüssigkeit gezogen hat, bevor es das Pedal tut.

item-brake-pads-front = Bremsbeläge vorn
item-brake-pads-front-for = Vorn wird am meisten gebremst; abgenutzte Beläge fressen die Scheiben an.

item-brake-discs-front = Bremsscheiben vorn
item-brake-discs-front-for = Eine Scheibe unter der eingeprägten Dicke überhitzt und kann brechen; neue Beläge gehören dazu.

item-brake-pads-rear = Bremsbeläge oder Backen hinten
item-brake-pads-rear-for = Sie verschleißen langsamer, rosten aber fest, wo die Bremse wenig gebraucht wird.

item-brake-discs-rear = Bremsscheiben oder Trommeln hinten
item-brake-discs-rear-for = Rost und Riefen nehmen Bremskraft; neue Beläge oder Backen gehören dazu.

item-brake-lines = Bremsleitungen und Schläuche prüfen
item-brake-lines-for = Eine verrostete Leitung oder ein gequollener Schlauch platzt, wenn das Pedal am härtesten getreten wird.

item-parking-brake = Feststellbremse prüfen
item-parking-brake-for = Sie muss den Wagen am Hang halten und setzt sich fest, wenn sie nie gebraucht wird.

item-tyre-pressure = Reifendruck prüfen
item-tyre-pressure-for = Weiche Reifen laufen heiß, verschleißen an den Rändern und kosten Kraftstoff; auch das Reserverad braucht seinen Druck.

item-wheels-changed = Räderwechsel nach Jahreszeit
item-wheels-changed-for = Winterreifen für die kalten Monate, Sommerreifen für die warmen; vielerorts sagt das Gesetz, wann.

item-wheel-torque = Radschrauben nachziehen
item-wheel-torque-for = Verschraubungen setzen sich, nachdem ein Rad ab war; der Wert steht im Handbuch.

item-washer-fluid = Scheibenwaschwasser auffüllen
item-washer-fluid-for = Durch eine verschmierte Scheibe sieht man gegen die tiefe Sonne nichts; bei Frost braucht es eine Wintermischung.

item-battery = Batterie
item-battery-for = Eine alte Batterie gibt am ersten kalten Morgen auf, wie gut sie im Sommer auch geprüft wurde.

item-high-voltage-cables = Hochvoltkabel ansehen
item-high-voltage-cables-for = Beschädigte orange Kabel oder Stecker können töten; nur dafür Ausgebildete fassen sie an.

item-high-voltage-coolant = Kühlmittel des Elektroantriebs
item-high-voltage-coolant-for = Es kühlt Antriebsbatterie und Wechselrichter und darf auch im Alter keinen Strom leiten.

item-drive-battery = Antriebsbatterie prüfen
item-drive-battery-for = Was sie noch fasst, bestimmt die Reichweite und den Wert des Wagens.

item-hinges-locks-seals = Scharniere, Schlösser, Dichtungen fetten
item-hinges-locks-seals-for = Trockene Scharniere verschleißen, trockene Dichtungen frieren an der Tür fest und lassen Wasser ein.

item-emergency-kit = Warndreieck, Weste, Verbandkasten prüfen
item-emergency-kit-for = Verbandmaterial hat ein Ablaufdatum, und manche Länder verlangen alle drei.

item-roadworthiness = Hauptuntersuchung
item-roadworthiness-for = Wie oft, sagen die Vorschriften vor Ort; ohne sie darf der Wagen nicht auf die Straße.

item-insurance = Versicherung verlängern
item-insurance-for = Ein Auto ohne Versicherung darf nicht auf die Straße.

item-road-tax = Kraftfahrzeugsteuer
item-road-tax-for = Wann sie fällig ist, sagen die Vorschriften vor Ort.

# Kinds of part and fluid, as an owner would tell them apart.

kind-standard-oil = Standardöl
kind-long-life-oil = Longlife-Öl, falls laut Handbuch erlaubt
kind-copper = Kupferkerzen
kind-platinum = Platinkerzen
kind-iridium = Iridiumkerzen
kind-inorganic-coolant = Anorganisches Kühlmittel
kind-long-life-coolant = Langzeit-Kühlmittel
kind-ribbed-belt = Keilrippenriemen
kind-v-belt = Keilriemen
kind-flooded-battery = Nassbatterie
kind-agm-battery = AGM-Batterie

# What an inspection found.

finding-at-limit = an der Verschleißgrenze
finding-within-limits = innerhalb der Grenzwerte
finding-worn = verschlissen
finding-dirty = verschmutzt oder verstopft
finding-cracked = rissig oder gerissen
finding-glazed = verglast
finding-leaking = undicht
finding-sooty = schwarz und verrußt
finding-noisy = macht Geräusche
finding-loose = lose oder mit Spiel
finding-corroded = verrostet
finding-rough-idle = unruhiger Leerlauf
finding-hesitation = ruckelt unter Last
finding-hard-cold-start = springt kalt schlecht an
finding-white-smoke = weißer Rauch beim Start
finding-water = Wasser darin
finding-frayed = ausgefranst

# What is measured.

measured-tread = Profiltiefe
measured-pad = Belagstärke
measured-disc = Scheibendicke
measured-water = Wassergehalt
measured-boiling-point = Siedepunkt
measured-charge = Ruhespannung
measured-freezing-point = Gefrierpunkt

# What some cars have and others lack.

fitted-turbo = Turbolader oder Kompressor
fitted-particulate-filter = Partikelfilter
fitted-timing-belt = Zahnriemen
fitted-timing-chain = Steuerkette
fitted-manual-gearbox = Schaltgetriebe
fitted-automatic-gearbox = Automatikgetriebe
fitted-driven-rear-axle = Heck- oder Allradantrieb
fitted-cable-throttle = Drosselklappe mit Gaszug
fitted-electronic-throttle = Elektronische Drosselklappe
fitted-hydraulic-steering = Servolenkung mit Öl
fitted-air-conditioning = Klimaanlage
fitted-ignition-leads = Zündverteiler oder Zündkabel

# What has to be opened up, drained or lifted, so that work can share it.

access-lifted = Wagen angehoben
access-wheels-off = Räder ab
access-air-path = Ansaugweg offen
access-ignition = Spulen und Kerzen freigelegt
access-front-belt = Motorstirnseite offen
access-cooling = Kühlmittel abgelassen
access-fuel = Kraftstoffleitung offen
access-cabin = Innenverkleidung ab
access-bonnet = Motorhaube offen
access-battery = Batterie freigelegt
access-papers = Papiere
