# The words of the catalogue: its items, then the kinds of part, the findings, what is measured, what a car has,
# and what has to be opened up for the work. What follows the first dash is the key in the catalogue.

# The items: a short name, and below it, where that helps, one sentence on what the work is for.
# A name says when the work is a look, a test or cleaning; without such a word the thing is replaced.

item-engine-oil = Aceite de motor y filtro
item-engine-oil-for = El aceite viejo pierde cuerpo, se espesa con el hollín y desgasta el motor; el filtro retiene lo que recogió.

item-engine-air-filter = Filtro de aire
item-engine-air-filter-for = Mantiene el polvo fuera del motor; obstruido, cuesta potencia y combustible.

item-cabin-filter = Filtro de habitáculo
item-cabin-filter-for = Mantiene polvo y polen fuera del habitáculo y evita que se empañen los cristales.

item-throttle-body = Limpieza del cuerpo de mariposa
item-throttle-body-for = Los depósitos en la mariposa vuelven irregular el ralentí y lenta la respuesta.

item-spark-plugs = Bujías
item-spark-plugs-for = Gastadas, fallan, malgastan combustible y con el tiempo dañan las bobinas y el catalizador.

item-glow-plugs = Calentadores
item-glow-plugs-for = Calientan un diésel frío para arrancar; si fallan, arranca mal y con humo blanco. Uno agarrotado se parte en la culata: motor caliente, poca fuerza, y un taller si no gira.

item-fuel-filter = Filtro de combustible
item-fuel-filter-for = Protege de la suciedad la bomba y los inyectores, que cuestan mucho más que el filtro.

item-fuel-filter-water = Purga de agua del filtro de gasóleo
item-fuel-filter-water-for = El agua que pasa el filtro oxida por dentro la bomba de inyección y los inyectores.

item-coolant = Refrigerante
item-coolant-for = Su protección contra el óxido y las heladas se agota con la edad, por poco que ande el coche.

item-brake-fluid = Líquido de frenos
item-brake-fluid-for = Absorbe agua del aire; con demasiada, hierve al frenar fuerte y el pedal se hunde.

item-timing-belt = Distribución: correa, bomba y rodillos
item-timing-belt-for = Cuando se rompe esta correa, la mayoría de los motores quedan destrozados al instante.

item-drive-belt = Revisión de la correa de accesorios
item-drive-belt-for = Mueve el alternador y en muchos coches la bomba de agua; grietas, cristalización o hilachas piden una nueva ya.

item-hoses = Revisión de manguitos
item-hoses-for = Un manguito blando, agrietado o húmedo en los extremos deja el coche parado y puede recalentar el motor.

item-battery-test = Comprobación de la batería
item-battery-test-for = Así se descubre una batería débil antes de que lo haga la primera mañana fría.

item-tyre-check = Revisión de neumáticos (dibujo y daños)
item-tyre-check-for = Dibujo, daños y edad deciden cómo frena y se agarra el coche.

item-brake-check = Revisión de pastillas y discos
item-brake-check-for = Pastillas y discos se gastan sin que se vea; mirarlos a tiempo salva los discos y la distancia de frenado.

item-gearbox-oil = Aceite de caja manual
item-gearbox-oil-for = Envejece y recoge el desgaste de los engranajes; cuál y cuánto, solo lo dice el manual.

item-wipers = Escobillas limpiaparabrisas
item-wipers-for = Endurecidas, emborronan justo cuando peor se ve.

item-lamps = Revisión de luces
item-lamps-for = Desde el asiento nadie nota que no luce una luz de freno.

item-air-mass-sensor = Revisión del caudalímetro de aire
item-air-mass-sensor-for = Sucio, mide mal el aire, y el motor va rico, pobre o sin fuerza.

item-crankcase-valve = Revisión de la válvula PCV del cárter
item-crankcase-valve-for = Atascada, deja subir una presión que empuja el aceite por los retenes.

item-power-steering-fluid = Revisión del líquido de dirección
item-power-steering-fluid-for = Un nivel que baja es una fuga, y al final la dirección se endurece.

item-exhaust = Revisión del escape
item-exhaust-for = Una fuga antes del habitáculo deja entrar gases; los soportes sueltos parten el tubo.

item-steering-suspension = Revisión de dirección y suspensión
item-steering-suspension-for = La holgura de una rótula gasta primero los neumáticos y después se suelta.

item-corrosion = Revisión de corrosión
item-corrosion-for = El óxido en tubos de freno, estribos y anclajes es barato mientras está en la superficie.

item-air-conditioning = Comprobación del aire acondicionado
item-air-conditioning-for = Una pérdida lenta de refrigerante deja sin aceite el compresor; solo talleres autorizados pueden abrir el circuito.

item-tyres = Neumáticos
item-tyres-for = La goma se endurece con la edad, aunque el dibujo siga profundo.

item-engine-oil-level = Revisión del nivel de aceite
item-engine-oil-level-for = Un motor con poco aceite se destroza en minutos, y cualquiera puede gastar algo.

item-throttle-cable = Revisión del cable del acelerador
item-throttle-cable-for = Deshilachado o agarrotado, puede dejar abierto el acelerador.

item-idle-valve = Limpieza de la válvula de ralentí
item-idle-valve-for = Los depósitos hacen oscilar el ralentí o calar el motor en los semáforos.

item-throttle-relearn = Reaprendizaje de la mariposa
item-throttle-relearn-for = Tras una limpieza o sin corriente, una mariposa electrónica ya no sabe dónde cierra.

item-ignition-leads = Cables, tapa y rotor de encendido
item-ignition-leads-for = Envejecidos, los cables dejan escapar la chispa, sobre todo en mañanas húmedas.

item-ignition-coils = Revisión de bobinas de encendido
item-ignition-coils-for = Una bobina o un capuchón agrietado falla bajo carga y puede arruinar el catalizador.

item-vacuum-hoses = Revisión de tubos de vacío
item-vacuum-hoses-for = El aire que se cuela empobrece la mezcla, altera el ralentí y endurece el pedal de freno.

item-charge-air-hoses = Revisión de manguitos del turbo
item-charge-air-hoses-for = Un manguito rajado cuesta potencia, llena el filtro de hollín y puede pasar de vueltas el turbo.

item-petrol-additive = Aditivo limpiador para gasolina
item-petrol-additive-for = Disuelve depósitos en inyectores y válvulas; es solo para gasolina y nunca debe ir al gasóleo.

item-diesel-additive = Aditivo limpiador para diésel
item-diesel-additive-for = Mantiene limpias las puntas de los inyectores; es solo para gasóleo y nunca debe ir a la gasolina.

item-coolant-test = Comprobación del refrigerante
item-coolant-test-for = Un nivel que baja es una fuga, y el refrigerante flojo se hiela y oxida el motor.

item-timing-belt-look = Revisión de la correa de distribución
item-timing-belt-look-for = Grietas, hilachas o aceite en la correa se ven antes de que se rompa.

item-timing-chain = Revisión de la cadena de distribución
item-timing-chain-for = Una cadena estirada suena al arrancar en frío mucho antes de saltar un diente.

item-drive-belt-change = Correa de accesorios
item-drive-belt-change-for = Sin ella se paran el alternador, la dirección y en muchos coches la bomba de agua.

item-egr-valve = Limpieza de la válvula EGR
item-egr-valve-for = El hollín atasca la válvula que devuelve los gases: marcha irregular, humo, falta de fuerza.

item-particulate-filter = Comprobación del filtro de partículas
item-particulate-filter-for = Un filtro que en ciudad no puede regenerarse se obstruye y para el coche.

item-particulate-filter-ash = Filtro de partículas: retirar cenizas
item-particulate-filter-ash-for = La ceniza no arde; un filtro lleno fuerza el motor y el turbo.

item-automatic-gearbox-oil = Aceite de caja automática y filtro
item-automatic-gearbox-oil-for = Gastado, vuelve bruscos los cambios y desgasta embragues que pueden costar más que el coche.

item-axle-oil = Aceite de diferencial y transfer
item-axle-oil-for = Lleva la carga de las ruedas motrices, y nada lo filtra.

item-drive-shaft-boots = Revisión de fuelles de transmisión
item-drive-shaft-boots-for = Un fuelle rajado pierde la grasa, y la junta se deshace.

item-engine-mounts = Revisión de soportes del motor
item-engine-mounts-for = Rotos, hacen temblar el habitáculo y fuerzan el escape y los manguitos.

item-power-steering-fluid-change = Líquido de dirección asistida
item-power-steering-fluid-change-for = Oscuro, desgasta la bomba y los retenes de la cremallera.

item-brake-fluid-test = Comprobación del líquido de frenos
item-brake-fluid-test-for = Un comprobador muestra el agua que ha absorbido el líquido antes de que lo haga el pedal.

item-brake-pads-front = Pastillas de freno delanteras
item-brake-pads-front-for = Delante se frena lo más; unas pastillas agotadas se comen los discos.

item-brake-discs-front = Discos de freno delanteros
item-brake-discs-front-for = Un disco por debajo del grosor grabado se recalienta y puede romperse; lleva pastillas nuevas.

item-brake-pads-rear = Pastillas o zapatas traseras
item-brake-pads-rear-for = Se gastan más despacio, pero se oxidan y agarrotan si el freno se usa poco.

item-brake-discs-rear = Discos o tambores traseros
item-brake-discs-rear-for = Óxido y surcos restan frenada; llevan pastillas o zapatas nuevas.

item-brake-lines = Revisión de tubos y latiguillos
item-brake-lines-for = Un tubo oxidado o un latiguillo hinchado revienta cuando más fuerte se pisa.

item-parking-brake = Comprobación del freno de mano
item-parking-brake-for = Debe sujetar el coche en cuesta, y se agarrota si nunca se usa.

item-tyre-pressure = Comprobación de presiones
item-tyre-pressure-for = Los neumáticos blandos se calientan, se gastan por los bordes y cuestan combustible; el de repuesto también pide su presión.

item-wheels-changed = Cambio de ruedas de temporada
item-wheels-changed-for = Neumáticos de invierno para los meses fríos y de verano para los cálidos; en muchos sitios la ley dice cuándo.

item-wheel-torque = Reapriete de ruedas
item-wheel-torque-for = La tornillería se asienta después de quitar una rueda; el valor está en el manual.

item-washer-fluid = Relleno de lavaparabrisas
item-washer-fluid-for = Un cristal emborronado ciega contra el sol bajo; las heladas piden mezcla de invierno.

item-battery = Batería
item-battery-for = Una batería vieja se rinde la primera mañana fría, por bien que saliera en verano.

item-high-voltage-cables = Examen de cables de alta tensión
item-high-voltage-cables-for = Cables o conectores naranjas dañados pueden matar; solo los toca personal formado para ello.

item-high-voltage-coolant = Refrigerante del sistema eléctrico
item-high-voltage-coolant-for = Enfría la batería de tracción y el inversor, y no debe conducir la corriente al envejecer.

item-drive-battery = Comprobación de batería de tracción
item-drive-battery-for = Lo que aún almacena decide la autonomía y lo que vale el coche.

item-hinges-locks-seals = Engrase de bisagras, cierres y gomas
item-hinges-locks-seals-for = Las bisagras secas se gastan, y las gomas secas se hielan a la puerta y dejan entrar agua.

item-emergency-kit = Revisión triángulos, chaleco y botiquín
item-emergency-kit-for = Las vendas caducan, y algunos países exigen las tres cosas.

item-roadworthiness = Inspección técnica (ITV)
item-roadworthiness-for = Cada cuánto, lo dicen las normas del lugar; sin ella el coche no puede circular.

item-insurance = Renovación del seguro
item-insurance-for = Un coche sin seguro no puede circular.

item-road-tax = Impuesto de circulación
item-road-tax-for = Cuándo vence, lo dicen las normas del lugar.

# Kinds of part and fluid, as an owner would tell them apart.

kind-standard-oil = Aceite estándar
kind-long-life-oil = Aceite de larga vida (según el manual)
kind-copper = Bujías de cobre
kind-platinum = Bujías de platino
kind-iridium = Bujías de iridio
kind-inorganic-coolant = Refrigerante inorgánico
kind-long-life-coolant = Refrigerante de larga duración
kind-ribbed-belt = Correa estriada
kind-v-belt = Correa trapezoidal
kind-flooded-battery = Batería de electrolito líquido
kind-agm-battery = Batería AGM

# What an inspection found.

finding-at-limit = en el límite
finding-within-limits = dentro de los límites
finding-worn = gastado
finding-dirty = sucio u obstruido
finding-cracked = agrietado o rasgado
finding-glazed = cristalizado
finding-leaking = con fugas
finding-sooty = negro de hollín
finding-noisy = ruidoso
finding-loose = suelto o con holgura
finding-corroded = corroído
finding-rough-idle = ralentí irregular
finding-hesitation = titubea bajo carga
finding-hard-cold-start = arranca mal en frío
finding-white-smoke = humo blanco al arrancar
finding-water = con agua
finding-frayed = deshilachado

# What is measured.

measured-tread = Profundidad del dibujo
measured-pad = Grosor del forro
measured-disc = Grosor del disco
measured-water = Contenido de agua
measured-boiling-point = Punto de ebullición
measured-charge = Tensión en reposo
measured-freezing-point = Punto de congelación

# What some cars have and others lack.

fitted-turbo = Turbo o compresor
fitted-particulate-filter = Filtro de partículas
fitted-timing-belt = Correa de distribución
fitted-timing-chain = Cadena de distribución
fitted-manual-gearbox = Caja manual
fitted-automatic-gearbox = Caja automática
fitted-driven-rear-axle = Propulsión o tracción total
fitted-cable-throttle = Mariposa por cable
fitted-electronic-throttle = Mariposa electrónica
fitted-hydraulic-steering = Dirección asistida hidráulica
fitted-air-conditioning = Aire acondicionado
fitted-ignition-leads = Distribuidor o cables de encendido

# What has to be opened up, drained or lifted, so that work can share it.

access-lifted = coche elevado
access-wheels-off = ruedas quitadas
access-air-path = admisión de aire abierta
access-ignition = bobinas y bujías a la vista
access-front-belt = frente del motor abierto
access-cooling = refrigerante vaciado
access-fuel = conducto de combustible abierto
access-cabin = guarnecido interior quitado
access-bonnet = capó abierto
access-battery = batería a la vista
access-papers = papeles
