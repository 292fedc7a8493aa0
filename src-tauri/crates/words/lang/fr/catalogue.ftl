# The words of the catalogue: its items, then the kinds of part, the findings, what is measured, what a car has,
# and what has to be opened up for the work. What follows the first dash is the key in the catalogue.

# The items: a short name, and below it, where that helps, one sentence on what the work is for.
# A name says when the work is a look, a test or cleaning; without such a word the thing is replaced.

item-engine-oil = Vidange et filtre à huile
item-engine-oil-for = L’huile vieillie perd sa tenue, s’épaissit de suie et use le moteur ; le filtre retient ce qu’elle a ramassé.

item-engine-air-filter = Filtre à air
item-engine-air-filter-for = Il garde la poussière hors du moteur ; encrassé, il coûte de la puissance et du carburant.

item-cabin-filter = Filtre d’habitacle
item-cabin-filter-for = Il garde poussière et pollen hors de l’habitacle et évite la buée sur les vitres.

item-throttle-body = Nettoyage du boîtier papillon
item-throttle-body-for = Les dépôts autour du papillon rendent le ralenti irrégulier et la réponse hésitante.

item-spark-plugs = Bougies d’allumage
item-spark-plugs-for = Usées, elles ont des ratés, gaspillent le carburant et finissent par abîmer les bobines et le catalyseur.

item-glow-plugs = Bougies de préchauffage
item-glow-plugs-for = Elles chauffent un diesel froid au démarrage ; défaillantes, elles donnent des démarrages difficiles et de la fumée blanche. Grippée, une bougie casse dans la culasse : moteur chaud, peu de force, et un garage si elle ne tourne pas.

item-fuel-filter = Filtre à carburant
item-fuel-filter-for = Il protège de la saleté la pompe et les injecteurs, qui coûtent bien plus cher que le filtre.

item-fuel-filter-water = Purge d’eau du filtre à gazole
item-fuel-filter-water-for = L’eau qui passe le filtre rouille de l’intérieur la pompe d’injection et les injecteurs.

item-coolant = Liquide de refroidissement
item-coolant-for = Sa protection contre la rouille et le gel s’épuise avec l’âge, quel que soit le kilométrage.

item-brake-fluid = Liquide de frein
item-brake-fluid-for = Il absorbe l’eau de l’air ; s’il en contient trop, il bout lors d’un freinage appuyé et la pédale s’enfonce.

item-timing-belt = Distribution : courroie, pompe et galets
item-timing-belt-for = Quand cette courroie casse, la plupart des moteurs sont détruits d’un coup.

item-drive-belt = Contrôle de la courroie d’accessoires
item-drive-belt-for = Elle entraîne l’alternateur et souvent la pompe à eau ; fissurée, glacée ou effilochée, elle se remplace aussitôt.

item-hoses = Contrôle des durites
item-hoses-for = Une durite molle, fissurée ou humide aux extrémités immobilise la voiture et peut faire surchauffer le moteur.

item-battery-test = Contrôle de la batterie
item-battery-test-for = Une batterie faible se découvre ainsi avant le premier matin froid.

item-tyre-check = Contrôle des pneus (usure et dommages)
item-tyre-check-for = Sculptures, dommages et âge décident du freinage et de la tenue de route.

item-brake-check = Contrôle des plaquettes et disques
item-brake-check-for = Plaquettes et disques s’usent à l’abri des regards ; un contrôle à temps sauve les disques et la distance d’arrêt.

item-gearbox-oil = Huile de boîte manuelle
item-gearbox-oil-for = Elle vieillit et recueille l’usure des pignons ; laquelle et combien, seul le manuel le dit.

item-wipers = Balais d’essuie-glace
item-wipers-for = Durcis, les balais étalent l’eau quand on voit le moins bien.

item-lamps = Contrôle de l’éclairage
item-lamps-for = Depuis son siège, personne ne remarque un feu stop éteint.

item-air-mass-sensor = Contrôle du débitmètre d’air
item-air-mass-sensor-for = Encrassé, il mesure mal l’air, et le moteur tourne trop riche, trop pauvre ou sans puissance.

item-crankcase-valve = Contrôle du clapet de reniflard
item-crankcase-valve-for = Un clapet bloqué fait monter une pression qui pousse l’huile à travers les joints.

item-power-steering-fluid = Contrôle du liquide de direction
item-power-steering-fluid-for = Un niveau qui baisse est une fuite, et la direction finit par durcir.

item-exhaust = Contrôle de l’échappement
item-exhaust-for = Une fuite en amont de l’habitacle y laisse entrer les gaz ; des supports lâches font casser le tuyau.

item-steering-suspension = Contrôle direction et suspension
item-steering-suspension-for = Le jeu d’une rotule use d’abord les pneus, puis elle lâche.

item-corrosion = Contrôle de la corrosion
item-corrosion-for = La rouille des conduites de frein, des bas de caisse et des fixations coûte peu tant qu’elle reste en surface.

item-air-conditioning = Contrôle de la climatisation
item-air-conditioning-for = Une lente perte de fluide prive le compresseur d’huile ; seuls les ateliers agréés peuvent ouvrir le circuit.

item-tyres = Pneus
item-tyres-for = Le caoutchouc durcit avec l’âge, même quand les sculptures sont encore profondes.

item-engine-oil-level = Contrôle du niveau d’huile moteur
item-engine-oil-level-for = Un moteur qui manque d’huile est perdu en quelques minutes, et tout moteur peut en consommer.

item-throttle-cable = Contrôle du câble d’accélérateur
item-throttle-cable-for = Un câble effiloché ou qui accroche peut garder le papillon ouvert.

item-idle-valve = Nettoyage de la vanne de ralenti
item-idle-valve-for = Les dépôts font pomper le ralenti ou caler le moteur aux feux.

item-throttle-relearn = Réapprentissage du papillon
item-throttle-relearn-for = Après un nettoyage ou une coupure de courant, un papillon électronique ne sait plus où il se ferme.

item-ignition-leads = Câbles, tête et doigt d’allumeur
item-ignition-leads-for = Vieillis, les câbles laissent fuir l’étincelle, surtout les matins humides.

item-ignition-coils = Contrôle des bobines d’allumage
item-ignition-coils-for = Une bobine ou un capuchon fissuré a des ratés en charge et peut détruire le catalyseur.

item-vacuum-hoses = Contrôle des durites de dépression
item-vacuum-hoses-for = Une prise d’air appauvrit le mélange, dérègle le ralenti et durcit la pédale de frein.

item-charge-air-hoses = Contrôle des durites de turbo
item-charge-air-hoses-for = Une durite fendue coûte de la puissance, charge le filtre de suie et peut faire tourner le turbo trop vite.

item-petrol-additive = Additif nettoyant essence
item-petrol-additive-for = Il dissout les dépôts des injecteurs et des soupapes ; il est pour l’essence seule et ne doit jamais aller dans du gazole.

item-diesel-additive = Additif nettoyant diesel
item-diesel-additive-for = Il garde propre le nez des injecteurs ; il est pour le gazole seul et ne doit jamais aller dans de l’essence.

item-coolant-test = Contrôle du liquide de refroidissement
item-coolant-test-for = Un niveau qui baisse est une fuite, et un liquide trop dilué gèle et rouille le moteur.

item-timing-belt-look = Contrôle visuel de la distribution
item-timing-belt-look-for = Fissures, effilochage ou huile sur la courroie se voient avant qu’elle casse.

item-timing-chain = Contrôle de la chaîne de distribution
item-timing-chain-for = Une chaîne détendue claque au démarrage à froid bien avant de sauter une dent.

item-drive-belt-change = Courroie d’accessoires
item-drive-belt-change-for = Sans elle, l’alternateur, la direction et souvent la pompe à eau s’arrêtent.

item-egr-valve = Nettoyage de la vanne EGR
item-egr-valve-for = La suie bloque la vanne qui ramène les gaz d’échappement : marche irrégulière, fumée, manque de puissance.

item-particulate-filter = Contrôle du filtre à particules
item-particulate-filter-for = Un filtre qui ne peut pas se régénérer en ville se colmate et immobilise la voiture.

item-particulate-filter-ash = Décolmatage du filtre à particules
item-particulate-filter-ash-for = Les cendres ne brûlent pas ; un filtre plein fatigue le moteur et le turbo.

item-automatic-gearbox-oil = Vidange boîte automatique et filtre
item-automatic-gearbox-oil-for = Usée, l’huile rend les passages brusques et use des embrayages qui coûtent parfois plus que la voiture ne vaut.

item-axle-oil = Huile de pont et boîte de transfert
item-axle-oil-for = Elle porte la charge des roues motrices, et rien ne la filtre.

item-drive-shaft-boots = Contrôle des soufflets de cardan
item-drive-shaft-boots-for = Un soufflet fendu perd sa graisse, et le joint se détruit.

item-engine-mounts = Contrôle des supports moteur
item-engine-mounts-for = Déchirés, ils font vibrer l’habitacle et fatiguent l’échappement et les durites.

item-power-steering-fluid-change = Liquide de direction assistée
item-power-steering-fluid-change-for = Un liquide noirci use la pompe et les joints de la crémaillère.

item-brake-fluid-test = Test du liquide de frein
item-brake-fluid-test-for = Un testeur montre l’eau que le liquide a absorbée avant que la pédale ne le fasse.

item-brake-pads-front = Plaquettes de frein avant
item-brake-pads-front-for = L’avant fait l’essentiel du freinage ; des plaquettes finies rongent les disques.

item-brake-discs-front = Disques de frein avant
item-brake-discs-front-for = Un disque sous l’épaisseur gravée surchauffe et peut casser ; il va avec des plaquettes neuves.

item-brake-pads-rear = Plaquettes ou mâchoires arrière
item-brake-pads-rear-for = Elles s’usent moins vite, mais rouillent et grippent quand le frein sert peu.

item-brake-discs-rear = Disques ou tambours arrière
item-brake-discs-rear-for = Rouille et rayures diminuent le freinage ; ils vont avec des plaquettes ou mâchoires neuves.

item-brake-lines = Contrôle des conduites de frein
item-brake-lines-for = Une conduite rouillée ou un flexible gonflé éclate quand on appuie le plus fort.

item-parking-brake = Contrôle du frein de stationnement
item-parking-brake-for = Il doit tenir la voiture en pente, et grippe s’il ne sert jamais.

item-tyre-pressure = Contrôle de la pression des pneus
item-tyre-pressure-for = Sous-gonflés, les pneus chauffent, s’usent aux bords et coûtent du carburant ; la roue de secours veut aussi sa pression.

item-wheels-changed = Permutation été/hiver des roues
item-wheels-changed-for = Pneus hiver pour les mois froids, pneus été pour les chauds ; en bien des lieux, la loi dit quand.

item-wheel-torque = Resserrage des roues
item-wheel-torque-for = La visserie se tasse après la dépose d’une roue ; la valeur est dans le manuel.

item-washer-fluid = Appoint de lave-glace
item-washer-fluid-for = Un pare-brise sale aveugle face au soleil bas ; le gel demande un mélange d’hiver.

item-battery = Batterie
item-battery-for = Une vieille batterie lâche au premier matin froid, si bonne qu’elle ait paru en été.

item-high-voltage-cables = Examen des câbles haute tension
item-high-voltage-cables-for = Des câbles ou prises orange endommagés peuvent tuer ; seules des personnes habilitées y touchent.

item-high-voltage-coolant = Liquide de la chaîne électrique
item-high-voltage-coolant-for = Il refroidit la batterie de traction et l’onduleur, et ne doit pas devenir conducteur en vieillissant.

item-drive-battery = Test de la batterie de traction
item-drive-battery-for = Ce qu’elle contient encore décide de l’autonomie et de la valeur de la voiture.

item-hinges-locks-seals = Graissage charnières, serrures, joints
item-hinges-locks-seals-for = Des charnières sèches s’usent, des joints secs gèlent contre la porte et laissent entrer l’eau.

item-emergency-kit = Contrôle triangle, gilet, trousse
item-emergency-kit-for = Les pansements ont une date limite, et certains pays exigent les trois.

item-roadworthiness = Contrôle technique
item-roadworthiness-for = Sa fréquence dépend des règles locales ; sans lui, la voiture ne peut pas circuler.

item-insurance = Renouvellement de l’assurance
item-insurance-for = Une voiture sans assurance ne peut pas circuler.

item-road-tax = Taxe de circulation
item-road-tax-for = Son échéance dépend des règles locales.

# Kinds of part and fluid, as an owner would tell them apart.

kind-standard-oil = Huile standard
kind-long-life-oil = Huile longue durée, si le manuel l’admet
kind-copper = Bougies au cuivre
kind-platinum = Bougies au platine
kind-iridium = Bougies à l’iridium
kind-inorganic-coolant = Liquide minéral
kind-long-life-coolant = Liquide longue durée
kind-ribbed-belt = Courroie striée
kind-v-belt = Courroie trapézoïdale
kind-flooded-battery = Batterie à électrolyte liquide
kind-agm-battery = Batterie AGM

# What an inspection found.

finding-at-limit = à la limite d’usure
finding-within-limits = dans les limites
finding-worn = usé
finding-dirty = sale ou encrassé
finding-cracked = fissuré ou déchiré
finding-glazed = glacé
finding-leaking = fuit
finding-sooty = noir de suie
finding-noisy = bruyant
finding-loose = desserré ou avec du jeu
finding-corroded = corrodé
finding-rough-idle = ralenti irrégulier
finding-hesitation = hésite en charge
finding-hard-cold-start = démarre mal à froid
finding-white-smoke = fumée blanche au démarrage
finding-water = contient de l’eau
finding-frayed = effiloché

# What is measured.

measured-tread = Profondeur des sculptures
measured-pad = Épaisseur de garniture
measured-disc = Épaisseur du disque
measured-water = Teneur en eau
measured-boiling-point = Point d’ébullition
measured-charge = Tension à vide
measured-freezing-point = Point de congélation

# What some cars have and others lack.

fitted-turbo = Turbo ou compresseur
fitted-particulate-filter = Filtre à particules
fitted-timing-belt = Courroie de distribution
fitted-timing-chain = Chaîne de distribution
fitted-manual-gearbox = Boîte manuelle
fitted-automatic-gearbox = Boîte automatique
fitted-driven-rear-axle = Propulsion ou 4 roues motrices
fitted-cable-throttle = Papillon à câble
fitted-electronic-throttle = Papillon électronique
fitted-hydraulic-steering = Direction assistée hydraulique
fitted-air-conditioning = Climatisation
fitted-ignition-leads = Allumeur ou câbles de bougies

# What has to be opened up, drained or lifted, so that work can share it.

access-lifted = voiture levée
access-wheels-off = roues déposées
access-air-path = admission d’air ouverte
access-ignition = bobines et bougies dégagées
access-front-belt = face avant du moteur ouverte
access-cooling = liquide de refroidissement vidangé
access-fuel = circuit de carburant ouvert
access-cabin = garniture d’habitacle déposée
access-bonnet = capot ouvert
access-battery = batterie dégagée
access-papers = papiers
