# The words of trouble: what an owner notices, what can be at fault, what to check and how, the tools, and when to stop
# first. What follows the first dash is the key in the tables of symptoms, causes and checks.
#
# Names are short enough for a line of a phone. Nothing here is a diagnosis; the handbook, local rules and licensed
# practice come first.

# ---- The headings under which symptoms are asked for

about-starting = Starting
about-running = How the engine runs
about-smoke = Smoke
about-fluids = Oil, coolant and spots
about-temperature = Temperature
about-lamps = Lamps on the dashboard
about-noises = Noises
about-vibration = Shaking
about-steering = Steering and ride
about-brakes = Brakes
about-gears = Clutch and gearbox
about-smells = Smells
about-electrics = Electrics
about-cabin = Cabin
about-electric-drive = Electric drive

# ---- The symptoms

symptom-hard-cold-start = Starts badly when cold
symptom-hard-hot-start = Starts badly when warm
symptom-cranks-no-start = Turns over but does not start
symptom-no-crank = Does not turn over, or only clicks
symptom-slow-crank = Turns over slowly
symptom-rough-idle = Rough idle
symptom-unsteady-idle = Idle goes up and down
symptom-high-idle = Idles too fast
symptom-stalls-when-stopping = Stalls when rolling to a stop
symptom-stalls-while-driving = Dies while driving
symptom-hesitation = Hesitates when you press the pedal
symptom-jerky-throttle = Jerks at small movements of the pedal
symptom-misfires-under-load = Misses or stumbles when pulling
symptom-weak-pull = Pulls weakly
symptom-power-held-back = Power suddenly held back
symptom-pinking = Pinks: a rattle under load
symptom-thirst = Uses more fuel than usual
symptom-white-smoke = White smoke
symptom-blue-smoke = Blue smoke
symptom-black-smoke = Black smoke
symptom-smoke-from-bonnet = Smoke or burning smell from the bonnet
symptom-uses-oil = Uses oil
symptom-oil-spots = Oil spots under the car
symptom-milky-oil = Creamy slime in the oil or its cap
symptom-uses-coolant = Uses coolant
symptom-coolant-spots = Coolant under the car, or a crust
symptom-overheats = Runs too hot
symptom-runs-cold = Takes long to get warm
symptom-heater-cold = Heater stays cold or lukewarm
symptom-engine-lamp = Engine lamp is on
symptom-engine-lamp-flashing = Engine lamp flashes
symptom-oil-lamp = Oil pressure lamp is on or flickers
symptom-charge-lamp = Battery lamp is on
symptom-temperature-lamp = Temperature lamp is on
symptom-glow-lamp-flashing = Glow lamp flashes while driving
symptom-particulate-filter-lamp = Particulate filter lamp is on
symptom-brake-lamp = Brake lamp on the dashboard is on
symptom-abs-lamp = Anti-lock brake lamp is on
symptom-steering-lamp = Steering lamp is on
symptom-airbag-lamp = Airbag lamp is on
symptom-tyre-lamp = Tyre pressure lamp is on
symptom-high-voltage-lamp = Warning of the hybrid or electric drive
symptom-lamp-dark = An outside lamp does not light
symptom-squeal-at-start = Squeals after starting
symptom-ticking-engine = Ticks from the engine
symptom-rattle-cold-start = Rattles for a moment on a cold start
symptom-knocking-engine = Knocks deep in the engine
symptom-whistle-under-load = Whistles when pulling
symptom-hiss-at-idle = Hisses at idle
symptom-blowing-exhaust = Exhaust is loud or puffs
symptom-rattle-underneath = Rattles from underneath
symptom-knock-over-bumps = Knocks over bumps
symptom-hum-with-speed = Hum that rises with speed
symptom-click-on-turns = Clicks in tight turns
symptom-clonk-on-load-change = Clonks on and off the power
symptom-whine-when-steering = Whines when steering
symptom-squeal-when-braking = Squeals when braking
symptom-grinding-when-braking = Grinds when braking
symptom-vibration-at-idle = Shakes at idle
symptom-vibration-at-speed = Shakes at speed
symptom-judder-when-braking = Shudders when braking
symptom-judder-pulling-away = Shudders when pulling away
symptom-pulls-to-one-side = Pulls to one side
symptom-pulls-when-braking = Pulls to one side when braking
symptom-heavy-steering = Steering has become heavy
symptom-loose-steering = Steering is loose or wanders
symptom-uneven-tyre-wear = Tyres wear unevenly
symptom-wallows = Wallows or nods over waves in the road
symptom-wheel-loose = A wheel wobbles or feels loose
symptom-soft-brake-pedal = Brake pedal is soft, long or sinks
symptom-hard-brake-pedal = Brake pedal is hard and brakes little
symptom-hot-wheel = One wheel gets much hotter
symptom-weak-parking-brake = Parking brake holds badly or sticks
symptom-clutch-slips = Revs rise but the speed does not
symptom-hard-to-shift = Gears go in badly
symptom-jerky-shifts = Automatic changes gear with a jerk
symptom-slips-in-gear = Automatic slips in gear
symptom-fuel-smell = Smell of fuel
symptom-burning-oil-smell = Smell of burning oil
symptom-sweet-smell = Sweet smell
symptom-rotten-egg-smell = Smell of rotten eggs
symptom-hot-brake-smell = Smell of hot brakes
symptom-hot-clutch-smell = Smell of a hot clutch
symptom-exhaust-inside = Exhaust fumes inside the car
symptom-musty-smell = Musty smell from the vents
symptom-flat-after-rest = Battery flat after standing
symptom-dim-or-flickering-lamps = Lamps dim or flicker
symptom-several-lamps-at-once = Many warnings at once
symptom-dead-appliance = Something electric does not work
symptom-weak-airflow = Little air from the vents
symptom-cooling-warm = Air conditioning does not cool
symptom-misted-windows = Windows mist up
symptom-wet-carpet = Carpet is wet
symptom-short-electric-range = Electric range has become short
symptom-will-not-charge = Will not charge
symptom-drive-battery-hot = Warning of a hot drive battery

# ---- The causes

cause-air-filter-clogged = Engine air filter clogged
cause-air-mass-sensor-dirty = Air-mass sensor dirty or worn
cause-vacuum-leak = Air leaking in past the throttle
cause-throttle-body-dirty = Throttle body dirty
cause-throttle-actuator-faulty = Throttle motor or its sensor faulty
cause-throttle-not-relearned = Throttle has not learnt its idle again
cause-throttle-cable-worn = Throttle cable worn or sticking
cause-idle-valve-sticking = Idle valve sticking
cause-pedal-sensor-faulty = Accelerator pedal sensor faulty
cause-intake-temperature-sensor-faulty = Intake air temperature sensor faulty
cause-manifold-pressure-sensor-faulty = Intake pressure sensor faulty
cause-crankcase-valve-stuck = Crankcase valve stuck or torn
cause-charge-air-leak = Charge air leaking
cause-turbo-worn = Turbocharger worn
cause-turbo-control-faulty = Control of the turbocharger faulty
cause-egr-valve-stuck = Exhaust recirculation valve stuck
cause-intake-sooted = Intake full of soot
cause-spark-plug-worn = Spark plugs worn
cause-ignition-coil-faulty = Ignition coil faulty or not seated
cause-ignition-leads-worn = Ignition leads worn
cause-knock-sensor-faulty = Knock sensor faulty
cause-crankshaft-sensor-faulty = Crankshaft sensor faulty
cause-camshaft-sensor-faulty = Camshaft sensor faulty
cause-glow-plug-faulty = Glow plugs faulty
cause-glow-control-faulty = Glow control unit faulty
cause-fuel-filter-clogged = Fuel filter clogged
cause-water-in-fuel = Water in the fuel filter
cause-fuel-pump-weak = Fuel pump weak or dead
cause-high-pressure-pump-worn = High-pressure fuel pump worn
cause-fuel-pressure-sensor-faulty = Fuel pressure sensor faulty
cause-fuel-pressure-valve-faulty = Fuel pressure valve faulty
cause-injector-dirty = Injectors dirty
cause-injector-faulty = An injector worn or dead
cause-air-in-fuel = Air drawn into the fuel line
cause-fuel-leak = Fuel leaking
cause-bad-fuel = Wrong, stale or dirty fuel
cause-purge-valve-stuck = Tank vapour valve stuck
cause-fuel-cap-leaking = Fuel cap loose or its seal cracked
cause-vapour-system-leak = Tank vapour system leaking
cause-oxygen-sensor-faulty = Oxygen sensor faulty or slow
cause-catalyst-worn = Catalytic converter worn out
cause-particulate-filter-full = Particulate filter full
cause-exhaust-pressure-sensor-faulty = Filter pressure sensor or its hoses
cause-exhaust-temperature-sensor-faulty = Exhaust temperature sensor faulty
cause-reductant-system-faulty = Exhaust fluid system faulty
cause-secondary-air-faulty = Secondary air system faulty
cause-exhaust-leak = Exhaust leaking
cause-exhaust-loose = Exhaust or a heat shield loose
cause-thermostat-open = Thermostat stuck open
cause-thermostat-shut = Thermostat stuck shut
cause-coolant-leak = Coolant leaking
cause-coolant-cap-weak = Coolant cap no longer holds
cause-radiator-fan-faulty = Radiator fan not running as it should
cause-radiator-clogged = Radiator clogged
cause-water-pump-worn = Water pump worn
cause-head-gasket-failed = Head gasket failed
cause-coolant-sensor-faulty = Coolant temperature sensor faulty
cause-heater-core-clogged = Heater core clogged
cause-oil-level-low = Too little engine oil
cause-oil-overfilled = Too much engine oil
cause-oil-leak = Engine oil leaking
cause-oil-pump-worn = Oil pressure really too low
cause-oil-pressure-sensor-faulty = Oil pressure switch faulty
cause-piston-rings-worn = Piston rings worn
cause-valve-seals-worn = Valve stem seals worn
cause-valve-burnt = A valve burnt or sticking
cause-tappets-noisy = Tappets noisy
cause-timing-chain-stretched = Timing chain stretched
cause-timing-belt-slipped = Timing belt slipped
cause-cam-timing-valve-stuck = Cam timing valve stuck
cause-engine-mount-broken = Engine mount broken
cause-drive-belt-worn = Drive belt worn
cause-belt-tensioner-worn = Belt tensioner or a pulley worn
cause-battery-weak = 12 V battery weak
cause-battery-terminals-loose = Battery terminals loose or corroded
cause-alternator-faulty = Alternator faulty
cause-starter-worn = Starter motor worn
cause-earth-cable-poor = An earth cable making poor contact
cause-battery-drained-at-rest = Something draws current when parked
cause-fuse-blown = A fuse blown
cause-relay-faulty = A relay faulty
cause-wiring-damaged = A wire or plug damaged
cause-network-fault = Control units lose touch
cause-control-unit-faulty = A control unit faulty
cause-immobiliser-fault = Immobiliser does not know the key
cause-bulb-blown = A bulb blown
cause-clutch-worn = Clutch worn
cause-clutch-release-faulty = Clutch does not release
cause-flywheel-worn = Dual-mass flywheel worn
cause-gearbox-oil-low = Gearbox oil low
cause-automatic-gearbox-oil-old = Automatic gearbox oil old or low
cause-automatic-gearbox-valve-faulty = A valve of the automatic faulty
cause-automatic-gearbox-worn = Automatic gearbox worn inside
cause-gearbox-sensor-faulty = A gearbox sensor faulty
cause-drive-shaft-joint-worn = Drive shaft joint worn
cause-wheel-unbalanced = A wheel out of balance
cause-tyre-damaged = A tyre damaged or worn out of shape
cause-tyre-pressure-low = Tyre pressure too low
cause-tyre-sensor-faulty = Tyre pressure sensor faulty
cause-wheel-bolts-loose = Wheel bolts or nuts loose
cause-wheel-bearing-worn = Wheel bearing worn
cause-alignment-out = Wheels out of line
cause-suspension-joint-worn = A steering or suspension joint worn
cause-anti-roll-link-worn = Anti-roll bar link worn
cause-shock-absorber-worn = Shock absorber worn
cause-spring-broken = A spring broken
cause-steering-fluid-low = Steering fluid low, or its pump weak
cause-electric-steering-faulty = Electric power steering faulty
cause-steering-angle-sensor-faulty = Steering angle sensor faulty
cause-brake-pads-worn = Brake pads worn
cause-brake-disc-warped = Brake discs uneven
cause-brake-caliper-seized = Brake calliper seized
cause-brake-fluid-old = Brake fluid old and full of water
cause-brake-fluid-leak = Brake fluid leaking
cause-brake-servo-faulty = Brake servo without help
cause-brake-switch-faulty = Brake lamp switch faulty
cause-parking-brake-seized = Parking brake seized or slack
cause-wheel-speed-sensor-faulty = A wheel speed sensor faulty
cause-cabin-filter-clogged = Cabin filter clogged
cause-cabin-drain-blocked = Water drain of the cabin blocked
cause-blower-faulty = Cabin blower faulty
cause-air-conditioning-low = Air conditioning low on refrigerant
cause-airbag-connector-loose = An airbag plug loose
cause-drive-battery-worn = Drive battery worn
cause-drive-battery-cooling-blocked = Cooling of the drive battery blocked
cause-high-voltage-cooling-faulty = Cooling of the electric drive faulty
cause-high-voltage-insulation-low = High-voltage insulation too low
cause-charging-socket-faulty = Charging socket or cable faulty
cause-inverter-faulty = Inverter or converter faulty

# ---- What is plugged in or gone to first; the groups of the catalogue have their words there

opening-drive = A drive on the road
opening-reader = Code reader plugged in
opening-workshop = At a workshop

# ---- The tools

check-tool-torch = Torch
check-tool-gloves = Heat-proof gloves
check-tool-hand-tools = Screwdrivers and spanners
check-tool-pliers = Flat pliers
check-tool-jack-and-stands = Jack, stands and chocks
check-tool-wheel-brace = Wheel brace
check-tool-plug-socket = Spark plug socket
check-tool-multimeter = Multimeter
check-tool-code-reader = Code reader with live values
check-tool-tyre-gauge = Tyre pressure gauge
check-tool-torque-wrench = Torque wrench
check-tool-thermometer = Thermometer
check-tool-pry-bar = Pry bar
check-tool-listening-rod = Listening rod or a length of hose
check-tool-camera = Inspection camera
check-tool-battery-tester = Battery load tester
check-tool-brake-fluid-tester = Brake fluid tester
check-tool-calliper-gauge = Calliper gauge
check-tool-combustion-gas-tester = Combustion gas tester
check-tool-cooling-pressure-tester = Cooling system pressure tester
check-tool-compression-gauge = Compression gauge

# ---- The checks: a name, and below it how it is done

check-look-at-air-filter = Look at the air filter
check-look-at-air-filter-how = Engine off, open the airbox and hold the filter against the light. Grey felt, oil, water or a gap at the seal is a find; wipe the box before you close it.

check-clean-air-mass-sensor = Clean the air-mass sensor
check-clean-air-mass-sensor-how = Engine off and cool, battery off. Take the sensor out, spray it outdoors with cleaner made for it, touch nothing inside, and let it dry. Fit it, battery on, start the engine outdoors: if it runs better, this was it.

check-read-air-mass = Read the air-mass sensor
check-read-air-mass-how = Outdoors, with the engine warm and idling, read the air mass and the intake temperature. Many engines idle at about a gram a second for each litre; a value that jumps, sticks or makes no sense is a find.

check-look-at-air-hoses = Look over the intake and vacuum hoses
check-look-at-air-hoses-how = Engine off, key away, follow every thin hose and the big intake hose with a torch and bend each one. Cracks, soft oily rubber and an end that has come off are finds.

check-pinch-hoses = Pinch the vacuum hoses one by one
check-pinch-hoses-how = Idling outdoors, brake on, out of gear. Pinch one thin rubber air hose after another with flat pliers, clear of belts and fan; none with fuel or coolant. If the idle or the hiss changes, the leak is beyond that spot.

check-read-fuel-trim = Read the fuel trims
check-read-fuel-trim-how = Outdoors and warm, read the long and short trims at idle and at 2500 turns. Much above zero at idle and better when revved speaks for a leak of air; worse when revved, for too little fuel.

check-smoke-test = Have a smoke test made
check-smoke-test-how = A workshop fills the intake or the tank vapour system with harmless smoke and watches where it comes out. It finds nearly every leak.

check-look-at-throttle-body = Look into the throttle body
check-look-at-throttle-body-how = Ignition off, engine cool. Take the intake hose off and look round the edge of the flap: a dark ring of deposits is a find. Never push an electric flap open by hand; its gears break.

check-relearn-throttle = Let the throttle learn its idle
check-relearn-throttle-how = Outdoors, the handbook's way, if it has one: commonly ignition on for half a minute without touching the pedal, off, then ten minutes of idle, brake on, out of gear. If the idle settles, this was it.

check-read-throttle = Read pedal and throttle positions
check-read-throttle-how = Ignition on, engine off: press the pedal slowly and watch both pedal values and the flap. They must rise smoothly together, without jumps or gaps.

check-look-at-throttle-cable = Look at the throttle cable
check-look-at-throttle-cable-how = Engine off, let a helper press the pedal slowly. Look for broken strands, a cable that hangs, and a flap that does not close by itself.

check-test-idle-valve = Test the idle valve
check-test-idle-valve-how = Engine off and cool, battery off. Take the valve out, look for deposits and see whether it moves freely. Clean it as the handbook allows and fit it with a good seal.

check-read-intake-pressure = Read the intake pressure sensor
check-read-intake-pressure-how = Ignition on, engine off, it must show the pressure of the air outside: about 100 kPa at sea level. Idling outdoors, a petrol engine falls to about a third of that.

check-test-crankcase-valve = Test the crankcase valve
check-test-crankcase-valve-how = Idling outdoors, lay a piece of stiff paper over the open oil filler, goggles on: slight pull or none is right. A strong pull, a whistle or pressure that lifts it is a find. Keep clear of hot and moving parts.

check-look-at-charge-air-hoses = Look over the charge-air hoses
check-look-at-charge-air-hoses-how = Engine off and cool. Feel the big hoses from the turbocharger through the cooler to the intake, as far as you reach from above. An oily patch, a split or a loose clip is a find.

check-read-boost = Read the boost on a drive
check-read-boost-how = Let a passenger read wanted and real boost while you pull away on a free road, within the law. Real far below wanted is a leak or a tired turbocharger; late or far above, its control.

check-look-at-turbo = Look at the turbocharger
check-look-at-turbo-how = Engine off and cold, key away. Take the intake hose off and turn the wheel by hand: it turns freely and touches nothing. A little oil mist is usual; a puddle, scraping or play up and down is a find.

check-move-turbo-rod = Move the turbocharger's control rod
check-move-turbo-rod-how = Engine off and cold. The rod of a vacuum actuator must travel smoothly and come back by itself; look at its hose. An electric one breaks when forced: look at its plug and leave the rest to the reader.

check-look-at-egr-valve = Look at the recirculation valve
check-look-at-egr-valve-how = Engine off and cold, battery off. Take the valve off, look for soot and see whether it shuts fully. It can be cleaned; fit a new gasket. Leave one with coolant pipes to a workshop.

check-look-at-intake = Look into the intake
check-look-at-intake-how = Engine off and cold. Look past the flap or the recirculation valve with a camera. Soot that narrows the way, or flaps that stick, is a find.

check-look-at-plugs = Take the spark plugs out and look
check-look-at-plugs-how = Engine cold, battery off. Goggles on, blow the wells clean, take out one plug after another and keep them in order. Look at the gap, wear, oil and colour; they go back by hand first, then to the car's own torque.

check-swap-coil = Swap two ignition coils
check-swap-coil-how = Key away, battery off. Exchange the coil of the cylinder that misses with its neighbour and push both home. Battery on, let it idle outdoors, hands away, and read again. If the fault moves along, it is the coil.

check-look-at-leads = Look at the ignition leads
check-look-at-leads-how = Battery off: look for cracks and green ends. Then battery on and all covers back, outdoors in the dark, let it idle and look from a step away. Small blue sparks along a lead are a find. Touch nothing while it runs.

check-read-knock-sensor = Read the knock sensor
check-read-knock-sensor-how = On a quiet road, let a passenger watch the ignition angle and the sensor's value. A value that never moves, or ignition always pulled back, is a find.

check-read-crank-signal = Read the engine speed while cranking
check-read-crank-signal-how = Outdoors, brake on, out of gear. Watch the engine speed on the reader while the starter turns. Nothing, or a figure that drops out, speaks for the crankshaft sensor or its plug.

check-read-cam-signal = Read whether the camshaft is seen
check-read-cam-signal-how = With the engine running outdoors, look for the values of camshaft position or synchronisation. One that is missing or drops out speaks for the sensor or its plug.

check-measure-glow-plugs = Measure the glow plugs
check-measure-glow-plugs-how = Engine cold, battery off. Take the connectors off and measure each plug to earth: about an ohm or less is good, no reading is dead. Refit them before the battery goes on. Leave a seized plug to a workshop.

check-test-glow-control = Test the supply of the glow plugs
check-test-glow-control-how = With a cold engine and the ignition on, measure the voltage at the plugs' connector. Nothing for several seconds speaks for the control unit, its fuse or its wiring.

check-change-fuel-filter = Try a new fuel filter
check-change-fuel-filter-how = Only a low-pressure filter, cold and outdoors, no flame or sparks. Pressure off as the handbook says, battery off. Catch what runs out, wipe up, air. Battery on, bleed, look for leaks; then drive and see if the pull is back.

check-drain-fuel-filter = Drain the water from the fuel filter
check-drain-fuel-filter-how = Outdoors, engine off and cold, no flame. Let half a glass out of the drain screw into a clear jar, close it, wipe up. Water settles below the fuel; take it to a collection point.

check-listen-fuel-pump = Listen for the fuel pump
check-listen-fuel-pump-how = Ignition on, do not start: listen at the back seat or the filler for a hum of about two seconds. Silence on a car that used to hum is a find.

check-measure-fuel-pressure = Have the fuel pressure measured
check-measure-fuel-pressure-how = A workshop measures it with a gauge. High-pressure lines of diesels and direct-injection petrol engines must never be opened at home.

check-read-rail-pressure = Read the fuel rail pressure
check-read-rail-pressure-how = Outdoors, compare wanted and real rail pressure at idle, while cranking and when revved. Real far below wanted is a find on the supply side; jumps speak for the sensor or the valve. Touch no fuel pipe.

check-use-cleaner = Use an injector cleaner for two tanks
check-use-cleaner-how = Engine off, no flame. Pour in one made for this fuel, as much as its label says, and drive two tanks as usual. It costs little, but patience. Never petrol cleaner in a diesel or the other way round.

check-read-corrections = Read the injectors' corrections
check-read-corrections-how = Outdoors, with the engine warm and idling, read the correction or the misfire count of each cylinder. One far from the others points at its injector, or at that cylinder.

check-measure-leak-off = Have the injectors' leak-off measured
check-measure-leak-off-how = A workshop catches what each injector returns and compares. Diesel injection works at pressures that cut through skin; leave it shut.

check-look-for-bubbles = Look for air in the fuel line
check-look-for-bubbles-how = Outdoors, out of gear, brake on. Look at a clear piece of the low-pressure fuel line while a helper cranks; hands off, clear of belts and fan. A stream of bubbles is a find; start with the seal last touched.

check-look-at-fuel-lines = Look along the fuel lines
check-look-at-fuel-lines-how = Outdoors, cold, no flame, no smoking, the car on stands. Follow the lines from tank to engine, the filler neck too. Damp, smell and heavy rust are finds: then neither start nor drive it.

check-sample-fuel = Look at a sample of the fuel
check-sample-fuel-how = Outdoors, cold, away from sparks. Where the filter has a drain, take a little into a jar and let it stand; never open a line under pressure. Layers, dirt or a wrong smell is a find. Wrong fuel: leave the engine off.

check-pinch-purge-hose = Pinch the vapour hose off
check-pinch-purge-hose-how = With the engine idling outdoors, pinch the hose between the vapour valve and the intake, clear of belts and fan. It should carry nothing at a cold idle; if the engine runs better pinched, the valve does not shut.

check-look-at-fuel-cap = Look at the fuel cap
check-look-at-fuel-cap-how = Look at its seal for cracks and at the neck for rust and dirt. Close it to the click; the lamp may need some days to go out.

check-read-oxygen-sensors = Watch the oxygen sensors
check-read-oxygen-sensors-how = Outdoors and warm, watch the front sensor at 2500 turns. One that is slow, sticks, or never gets warm is a find.

check-compare-oxygen-sensors = Compare the two oxygen sensors
check-compare-oxygen-sensors-how = On a steady drive, let a passenger watch both sensors. Behind a good catalytic converter the second hardly moves; one that copies the first is a find, if the exhaust is tight.

check-read-filter-load = Read the particulate filter's load
check-read-filter-load-how = Outdoors, read soot, ash and the pressure difference at idle and when revved. High soot is a full filter; a pressure with the engine off that is not nought speaks for the sensor.

check-look-at-pressure-hoses = Look at the filter's pressure hoses
check-look-at-pressure-hoses-how = Exhaust cold. Follow the two thin hoses from the pressure sensor to the filter. A split, a melted spot or a plug of soot is a find.

check-read-exhaust-temperatures = Read the exhaust temperatures
check-read-exhaust-temperatures-how = With a cold engine all of them must read about the temperature outside. Start it outdoors and let it idle: they rise together. One that stands alone is a find.

check-read-reductant = Read the exhaust fluid system
check-read-reductant-how = Read level, quality and sensors; then, engine warm and idling outdoors, the pressure. White crystals at the doser or its pipe are a find to the naked eye: look with the engine off and cold.

check-listen-secondary-air = Listen for the secondary air pump
check-listen-secondary-air-how = Start the engine quite cold, outdoors, brake on, out of gear: the pump howls for a minute or so. Silence, or a rattle as of gravel, is a find.

check-listen-exhaust = Listen for a leaking exhaust
check-listen-exhaust-how = Outdoors, on a cold start, listen along the manifold and the joints for a tick or a puff, look for black marks. Let a helper, gloved and beside the pipe, close it for a moment with a thick rag. Do not breathe the gas.

check-shake-exhaust = Shake the exhaust and its shields
check-shake-exhaust-how = Exhaust cold, car on stands. Shake pipe, silencer and every heat shield by hand. Rattles, torn rubbers and rusted clamps are finds.

check-watch-warm-up = Watch the engine get warm
check-watch-warm-up-how = From cold, let a passenger watch the coolant temperature on a drive. It should start at the outside temperature, reach about 90 °C within ten to fifteen minutes, and stay. Jumps speak for the sensor.

check-feel-coolant-hoses = Feel the coolant hoses
check-feel-coolant-hoses-how = Outdoors, idling while it warms up, touch the hoses with gloves, clear of fan and belts. The lower one must get warm after the upper, and both heater hoses hot. Never open a hot system.

check-look-for-coolant = Look at coolant level and for leaks
check-look-for-coolant-how = Engine off and cold. The level must stand between the marks of the tank: too low is a find. Look for wet spots and coloured crusts at hoses, radiator, pump and the carpet under the heater. Never open the cap hot.

check-press-cooling-system = Put the cooling system under pressure
check-press-cooling-system-how = Engine cold, cap opened slowly. Pump up to the pressure printed on the cap and wait ten minutes. Falling pressure is a leak: look where it drips. Let the pressure off before you take the tester away. Test the cap as well.

check-watch-fan = Watch the radiator fan
check-watch-fan-how = Let it idle outdoors and watch the temperature: the fan must start before the gauge leaves its place; with the air conditioning on, most start at once. It can start by itself, engine off too: hands away.

check-look-at-radiator = Look at the radiator
check-look-at-radiator-how = Engine off and cold, key away: the fan can start by itself. Look through the fins with a torch from behind: leaves, mud and crumbling fins are finds. Cool patches while the rest is still warm speak for blockage inside.

check-listen-water-pump = Listen to the water pump
check-listen-water-pump-how = Idling outdoors, listen for a growl at the pump, clear of belt and fan. With the engine off and cool, look for a trail of coolant below it and feel for play in its pulley.

check-test-coolant-gas = Test the coolant tank for exhaust gas
check-test-coolant-gas-how = Open the cap only when cold. Set the tester on the tank and let it idle outdoors: a liquid that changes colour means exhaust gas in the coolant. Stop the engine before the coolant rises or boils; it scalds.

check-read-dipstick = Read the dipstick
check-read-dipstick-how = Level ground, engine off for five minutes, key away. Wipe it, put it back, read it: between the marks is right. With too little, fill up before the engine runs again.

check-look-for-oil = Look for leaking oil
check-look-for-oil-how = Engine off and cool, the car on stands. Start at the highest wet spot, for oil runs down and back. Look above the exhaust too. Wipe it clean and look again another day.

check-measure-oil-pressure = Measure the oil pressure
check-measure-oil-pressure-how = A workshop fits a gauge in place of the switch and compares with the maker’s figure, warm, at idle and at 2000 turns. Good pressure and the lamp on: the switch.

check-measure-compression = Measure the compression
check-measure-compression-how = Fuel and ignition made safe as the handbook says, plugs out with the battery off. Outdoors, throttle open, a helper cranks; stay clear of the holes. One cylinder well below the others is a find. Diesel: a workshop's job.

check-watch-smoke = Watch the smoke on a drive
check-watch-smoke-how = Let a passenger look back, or someone follow, after a long idle, after a long hill down, and under load. Blue after idling or on the overrun speaks for seals, blue under load for rings or the turbocharger.

check-listen-engine = Listen along the engine
check-listen-engine-how = Idling outdoors, brake on, out of gear. With a rod or a hose at the ear, clear of belts and fan, listen at the cover, the chain case and each pulley's housing. The place where it is loudest is the find.

check-look-at-timing = Have the timing looked at
check-look-at-timing-how = A workshop opens the cover and compares the marks and the tensioner. If you fear that a belt has slipped, do not turn the engine.

check-read-cam-angle = Read the camshaft's angle
check-read-cam-angle-how = Outdoors, read the angle between cam and crank, or wanted and real cam timing, at idle and when revved. A constant offset speaks for chain or belt, one that lags for the timing valve.

check-test-cam-valve = Test the cam timing valve
check-test-cam-valve-how = Engine off and cool, battery off. Take the plug off, measure the coil, take the valve out and look for grit in its screen. Taken out, it should click when it gets current for a moment.

check-look-at-mounts = Look at the engine mounts
check-look-at-mounts-how = Outdoors, nobody before or behind the car; stand at its side, hands out of the engine bay. A helper, foot hard on the brake, lets the engine idle and take load for a moment both ways. A jump, torn rubber or a leak is a find.

check-look-at-drive-belt = Look at the drive belt
check-look-at-drive-belt-how = Engine off and cool, key out. Look at the ribs all round for cracks, glaze, oil and fraying, and at the tensioner's pointer. Squeals when it is damp or cold speak for the belt. Never touch it while it runs.

check-spin-pulleys = Spin the pulleys by hand
check-spin-pulleys-how = Engine off and cool, key away, belt off; let its tensioner go slowly, with the right tool. Turn each pulley: growl, grit or play is a find. Draw the way of the belt before you take it off.

check-measure-battery = Measure the battery at rest
check-measure-battery-how = After some hours of rest, without load: about 12.6 V is full, 12.2 V half, below 12.0 V empty (flooded lead-acid). Charge it before you judge it.

check-load-test-battery = Test the battery under load
check-load-test-battery-how = With the battery charged, everything switched off, connect the tester and enter what is printed on the case. Many shops test for nothing. Do not test one that is frozen, swollen or leaks.

check-wiggle-terminals = Turn the battery terminals by hand
check-wiggle-terminals-how = Ignition off. Neither clamp may move on its post; white or green crust is a find. Tighten them, the minus clamp off first and on last.

check-measure-charging = Measure the charging voltage
check-measure-charging-how = Engine running outdoors, lamps on: 13.5 to 14.7 V at the battery is usual; some cars let it fall for a while on purpose. Steady below 13 V is a find. Leads of the meter clear of belts and fan.

check-listen-starter = Listen to the starter
check-listen-starter-how = Outdoors, out of gear, brake on, nobody at the open bonnet: a helper turns the key. Lamps that stay bright with a single click speak for the starter; lamps that go out, for battery or terminals.

check-measure-voltage-drop = Measure the drop along the cables
check-measure-voltage-drop-how = Outdoors, out of gear, brake on. While a helper cranks, measure from the battery's minus to bare metal of the engine, and from plus to the starter where you reach it from above, clear of belts. Over half a volt is a find.

check-measure-rest-current = Measure the current at rest
check-measure-rest-current-how = Ammeter in line at the minus pole, its 10 A range, doors latched, wait half an hour. Above about 50 mA is a find: pull fuses one by one until it falls. The ignition stays off while the meter is in line.

check-look-at-fuses = Look at the fuses
check-look-at-fuses-how = Ignition off. The handbook shows which one. Replace a blown one by the same rating once, never by a larger one or a wire; if it blows again, something is shorted.

check-swap-relay = Swap the relay for its twin
check-swap-relay-how = Ignition off. Exchange the relay with one of the same number in the box, if the handbook shows that both are of one kind; none of airbags, brakes or high voltage. If the fault moves along, it is the relay.

check-look-at-wiring = Look along the wires and plugs
check-look-at-wiring-how = Engine off and cool, key away. Look where wires rub, bend or were touched last, pull gently at each plug, look for green. Leave orange cables and yellow airbag plugs alone.

check-test-wiring = Measure the wire to the part
check-test-wiring-how = Battery off, plug off at both ends: measure each wire end to end and against earth. You need the circuit diagram. Not on airbags, not on high voltage.

check-scan-all-units = Read the codes of every control unit
check-scan-all-units-how = Not only the engine's: brakes, steering, gearbox, airbag, body. Write everything down before you clear anything; the units that several others miss come first.

check-workshop-electronics = Have the electronics looked at
check-workshop-electronics-how = A workshop with the maker's tester and diagrams measures networks and control units. Take the list of codes and of what you have done along.

check-try-second-key = Try the other key
check-try-second-key-how = Outdoors, brake on, out of gear or in P. Keep the first key away from the lock, and try the other. Starts with that one: the first key or its battery.

check-look-at-lamps = Walk round the lamps
check-look-at-lamps-how = All lamps on, a walk round, brake lamps against a wall or with a helper. A dark one: bulb first, then fuse and earth.

check-test-clutch = Test the clutch for slipping
check-test-clutch-how = On a free road, in a high gear at low speed, press the pedal fully. If the revs rise and the speed does not, it slips. Once is enough.

check-look-at-clutch-fluid = Look at the clutch fluid
check-look-at-clutch-fluid-how = Look at the level, often shared with the brakes, and under the pedal and from above at the gearbox for wet spots. Wet or a falling level is a find; with shared fluid, think of the brakes first.

check-listen-clutch = Listen to clutch and flywheel
check-listen-clutch-how = Outdoors, brake on, idling out of gear, press and let go of the clutch. A noise that comes with the pedal speaks for the release bearing, one that goes for gearbox or flywheel; rattle on switching off, flywheel.

check-check-gearbox-oil = Check the gearbox oil
check-check-gearbox-oil-how = Engine off and cool, car level on stands. Make sure the filler plug comes loose before you touch the drain. Oil should stand at its edge; glitter in it is a find.

check-check-automatic-oil = Check the automatic's oil
check-check-automatic-oil-how = Temperature and way as the handbook says. With a dipstick: outdoors on its wheels, often idling. With a plug that is opened while the engine runs, leave it to a workshop. Dark oil that smells burnt is a find.

check-workshop-gearbox = Have the gearbox looked at
check-workshop-gearbox-how = A workshop reads pressures and valves, and looks at clutch and flywheel from inside if it must. Say when the jerk comes: cold or warm, which gears.

check-turn-full-lock = Drive slow circles at full lock
check-turn-full-lock-how = On an empty yard, windows down, circle both ways with a little power. Clicks that follow the speed are the outer joint.

check-look-at-boots = Look at the drive shaft boots
check-look-at-boots-how = Car on stands, engine off. Turn the wheel and look into every fold. A split and grease flung about is a find.

check-look-at-tyres = Look at the tyres all round
check-look-at-tyres-how = Look and feel: bulges, cuts, nails, flat spots, one edge worn more. A bulge or cords in sight: do not drive on it.

check-measure-tyre-pressure = Measure the tyre pressures
check-measure-tyre-pressure-how = Tyres cold. Compare with the label at the door or the flap, and do not forget the spare. Set them, and tell the car where it needs telling.

check-read-tyre-sensors = Have the tyre sensors read
check-read-tyre-sensors-how = A tyre shop wakes each sensor and reads its battery and pressure in a few minutes.

check-torque-wheels = Tighten the wheels to their torque
check-torque-wheels-how = Car on its wheels, crosswise, with this car's own torque. If one was loose, look at its thread and hole before you drive, and check again after 50 to 100 km.

check-balance-wheels = Have the wheels balanced
check-balance-wheels-how = A tyre shop spins each wheel, shows what is missing, and sees a bent rim or a bad tyre as well.

check-spin-wheels = Spin each wheel by hand
check-spin-wheels-how = Car on stands on level ground, chocks at the wheels that stay down. Turn it by hand only, one hand on the spring. Roughness felt in the spring is the bearing; a wheel that drags is a brake that does not let go.

check-rock-wheels = Rock each wheel
check-rock-wheels-how = Car on stands. Rock at top and bottom, then at the sides, while a helper looks behind. Play top and bottom: bearing or ball joint; at the sides: steering joints. Do not drive far with any.

check-pry-suspension = Look over springs, dampers and links
check-pry-suspension-how = Car on stands. Press each link and bush lightly with a bar, look at the ends of the springs and for oil on the dampers. Springs under load belong in a workshop.

check-bounce-car = Bounce each corner
check-bounce-car-how = Push a corner down hard and let go. More than once up and down is a find, though a car can pass this and still have tired dampers.

check-measure-tracking = Have the wheels measured
check-measure-tracking-how = A workshop measures how the wheels stand. Have worn joints seen to first, or the money is lost.

check-look-at-steering-fluid = Look at the steering fluid
check-look-at-steering-fluid-how = Engine off. Look at the level in its tank, and for wet hoses. Foam, a low level or dark fluid is a find; use only what the handbook names.

check-look-at-pads = Look at pads and discs
check-look-at-pads-how = Brakes cool, car on stands, wheel off. Measure the thinnest pad, inner one too; look for scores and cracks. Wipe dust wet, never blow it. Wheel bolts by torque wrench to the handbook's value, and again after 50 to 100 km.

check-measure-discs = Measure the brake discs
check-measure-discs-how = Brakes cool, car on stands, wheel off, disc held by two nuts. Measure at eight places; the limit stands on the disc. Wipe dust wet. Wheel bolts by torque wrench to the handbook's value, and again after 50 to 100 km.

check-feel-wheels = Feel the wheels after a drive
check-feel-wheels-how = Drive ten minutes with little braking. Hold a hand near each wheel, do not touch: one much hotter than its partner is a find. Smoke or a glow: keep away and let it cool by itself.

check-test-brake-fluid = Test the brake fluid for water
check-test-brake-fluid-how = Dip a clean tester into the tank, or boil a drop with a boiling-point tester, which is surer. Keep dirt and other fluids away from it; rinse spills off paint and skin with water.

check-look-at-brake-fluid = Look at the level of the brake fluid
check-look-at-brake-fluid-how = Level ground. Below the mark means worn pads or a leak: do not simply fill up. With a soft pedal as well, do not drive.

check-look-at-brake-lines = Look along the brake lines
check-look-at-brake-lines-how = Car on stands. Follow every line and hose; look inside the wheels for wet. Flaking rust, damp and cracked hoses are finds: do not drive, have it towed.

check-test-servo = Test the brake servo
check-test-servo-how = Outdoors, in P or out of gear, parking brake on. Engine off, pump the pedal until it is hard, hold it and start the engine: it must sink a little. If it does not, the servo gets no help.

check-look-at-brake-lamps = Look at the brake lamps
check-look-at-brake-lamps-how = Against a wall or with a helper: all come on with the lightest press and go out when you let go.

check-test-parking-brake = Test the parking brake
check-test-parking-brake-how = On a gentle slope, nobody in front of or behind the car, foot ready. Count the clicks, see whether it holds, and whether the car rolls freely by itself when it is let off.

check-read-wheel-speeds = Compare the wheel speeds
check-read-wheel-speeds-how = Let a passenger watch all four on a straight, slow drive. One that drops to nought or jumps is a find.

check-look-at-speed-sensors = Look at the wheel speed sensors
check-look-at-speed-sensors-how = Brakes cool, car on stands, wheel off. Look at sensor, wire and ring for rust, swarf and cracks. Wipe dust wet. Wheel bolts by torque wrench to the handbook's value, and again after 50 to 100 km.

check-look-at-cabin-filter = Look at the cabin filter
check-look-at-cabin-filter-how = Ignition off. The handbook shows where it is, often behind the glove box. Grey, leafy or damp is a find. Mind the arrow for the air when it goes back. Leave yellow plugs alone.

check-look-at-drains = Look at the water drains
check-look-at-drains-how = Ignition off: wipers and fan must not start. Take the leaves out from below the windscreen and pour in a little water: it must run out under the car at once. The air conditioning's own drain drips on a hot day.

check-test-blower = Test the cabin blower
check-test-blower-how = Try every speed. Only the fastest works: its resistor. None: fuse first, then measure the voltage at its plug. Leave yellow plugs alone, they are airbags.

check-measure-vents = Measure how cold the air gets
check-measure-vents-how = Engine idling outdoors, or an electric car switched on; coldest setting, air recirculated, middle vent: after five minutes it should be well below the outside, commonly by 10 °C or more.

check-workshop-cooling = Have the air conditioning looked at
check-workshop-cooling-how = Refrigerant may be handled only by those licensed for it. A workshop weighs it, looks for the leak and refills.

check-workshop-airbag = Have the airbag system looked at
check-workshop-airbag-how = Only a workshop: no meter and no hand on its plugs at home. Say what was last done at seats and steering wheel.

check-read-drive-battery = Read the drive battery's health
check-read-drive-battery-how = Read the capacity or health that the car states, and the spread between its cells, at a middling charge and temperature. Nothing is opened for it.

check-look-at-battery-vent = Look at the drive battery's air vent
check-look-at-battery-vent-how = Car off. Find the grille, often beside the rear seat, take fluff and hair away and look at its filter as the handbook shows. Open nothing orange and nothing beyond the grille.

check-look-at-inverter-coolant = Look at the electric drive's coolant
check-look-at-inverter-coolant-how = Car off and cold. It has a tank of its own; the level must stand between its marks. Fill up only with what the handbook names. Touch nothing orange.

check-try-other-charger = Try another charger and cable
check-try-other-charger-how = Charge once elsewhere, with another cable. Works there: it is the first charger, its cable or its supply, and that is an electrician's. Use no cable or plug that is damaged or got hot.

check-look-at-socket = Look at the charging socket
check-look-at-socket-how = Car off, cable out. Look, do not touch or put anything in: dirt, bent or dark pins are finds. Dark pins: do not charge again before a workshop has seen it.

check-workshop-high-voltage = Have the high-voltage system looked at
check-workshop-high-voltage-how = Only someone trained for it may open anything orange: its voltage kills, also with the car off.

# ---- When to stop first

stop-brakes = Do not drive. If you are driving: slow down with the gears and the parking brake, gently, and stop where it is safe. Have it towed; brakes are not tried out on the road. Keep away from a hot wheel and let it cool by itself.
stop-steering = Do not drive on. Slow down gently, hold the wheel with both hands, stop where it is safe, and have it towed unless the handbook says otherwise.
stop-wheel = Stop now, off the road and away from traffic. Look at the bolts or nuts of every wheel and tighten them to this car's torque; if threads or holes are damaged, do not drive.
stop-fire = Stop where it is safe, switch off, everyone out and well away from traffic; call the emergency services, and say if it is a hybrid or electric. Do not open the bonnet: air feeds a fire. Extinguisher only if it is small and you have been shown how.
stop-throttle-open = The engine may pull without the pedal. Foot on the brake, gear out or lever in N, stop where it is safe, engine off. Do not drive on: have it fetched.
stop-gearbox-hot = Stop where it is safe, lever in P or N, and let the gearbox cool. If the handbook says so, let the engine idle meanwhile. Do not tow or drive on before its oil has been looked at.
stop-fuel-smell = Stop, engine off, everybody out, no flame and no switch. If fuel drips or you see smoke, keep away and call the emergency services. Do not start it again before the leak is found.
stop-exhaust-inside = Open the windows now and stop. Exhaust gas kills unnoticed: do not drive with it, and never run the engine indoors. Whoever has a headache or feels dizzy needs air and a doctor.
stop-high-voltage = Stop where it is safe and switch off. Touch nothing orange, open nothing. With smoke, heat or a smell, get well away and tell the emergency services that it is an electric or hybrid car.
stop-oil-pressure = Stop as soon as it is safe and switch the engine off at once: without oil pressure it is ruined within moments. Look at the level; if that is right and the lamp stays on, have it towed.
stop-overheating = Stop where it is safe and switch off. Heater to hottest helps on the way there. Do not open the cap: it scalds. Let it cool for half an hour or more before you look.
stop-engine-knock = Switch the engine off and do not start it again. A knock from deep inside gets dearer with every turn. If wrong fuel is possible, say so; have it towed.
stop-engine-lamp-flashing = Foot off, stop where it is safe, switch off. Do not drive on: unburnt fuel can burn the catalytic converter and set fire to what is under the car. Have it fetched or mended before it is driven, unless the handbook says otherwise.
stop-charging-at-night = The battery will not last long with lamps on, and then lamps, and on many cars power steering, go. Leave the road at the next lit, safe place now; do not drive on in the dark.
stop-charging = The car runs on what is left in the battery. Switch off what you can, drive straight to help and do not stop the engine before. If the temperature rises or the steering gets heavy, the belt may be gone: stop.
stop-airbag = Airbags and belt tensioners may fail in a crash, or go off without one. Have it seen to soon by a workshop. Do not touch their yellow plugs, and carry no one on the seat concerned if you can help it.
stop-particulate-filter-and-more = The particulate filter is filling and other lamps are on. Do not try to burn it clean by driving: go gently to a workshop, before it has to be replaced.
stop-particulate-filter = The particulate filter is filling. If no other lamp is on, drive half an hour as the handbook says, where traffic and law allow: diesel steadily on a motorway, petrol with the foot off in gear now and then. If the lamp stays, have it seen to soon.
