# The words of the catalogue: its items, then the kinds of part, the findings, what is measured, what a car has,
# and what has to be opened up for the work. What follows the first dash is the key in the catalogue.

# The items: a short name, and below it, where that helps, one sentence on what the work is for.
# A name says when the work is a look, a test or cleaning; without such a word the thing is replaced.

item-engine-oil = Engine oil and filter
item-engine-oil-for = Old oil thins, thickens with soot and wears the engine; the filter holds what it picked up.

item-engine-air-filter = Engine air filter
item-engine-air-filter-for = Keeps dust out of the engine; a clogged one costs power and fuel.

item-cabin-filter = Cabin air filter
item-cabin-filter-for = Keeps dust and pollen out of the cabin and the windows from misting.

item-throttle-body = Throttle body, cleaning
item-throttle-body-for = Deposits around the throttle make the idle rough and the response hesitant.

item-spark-plugs = Spark plugs
item-spark-plugs-for = Worn plugs misfire, waste fuel and in time harm the ignition coils and the catalytic converter.

item-glow-plugs = Glow plugs
item-glow-plugs-for = They warm a cold diesel for its start; failing ones give hard starts and white smoke. A seized one shears off in the head: warm engine, little force, and a workshop when it does not turn.

item-fuel-filter = Fuel filter
item-fuel-filter-for = Keeps dirt away from the pump and the injectors, which cost far more than the filter.

item-fuel-filter-water = Water in the diesel filter, draining
item-fuel-filter-water-for = Water that gets past the filter rusts the injection pump and the injectors from inside.

item-coolant = Coolant
item-coolant-for = Its protection against rust and frost wears out with age, however far the car goes.

item-brake-fluid = Brake fluid
item-brake-fluid-for = It draws water from the air; with too much of it the fluid boils under hard braking and the pedal gives way.

item-timing-belt = Timing belt with pump and rollers
item-timing-belt-for = When this belt breaks, most engines are wrecked at once.

item-drive-belt = Drive belt, check
item-drive-belt-for = Drives the alternator and on many cars the water pump; cracks, glazing or fraying mean a new one now.

item-hoses = Hoses, check
item-hoses-for = A hose that is soft, cracked or wet at its ends leaves the car standing and can overheat the engine.

item-battery-test = Battery, test
item-battery-test-for = A weak battery is found before the first cold morning does it.

item-tyre-check = Tyre tread and damage, check
item-tyre-check-for = Tread, damage and age decide how the car stops and holds the road.

item-brake-check = Brake pads and discs, check
item-brake-check-for = Pads and discs wear out of sight; a look in time saves the discs and the stopping distance.

item-gearbox-oil = Manual gearbox oil
item-gearbox-oil-for = It ages and gathers what wears off the gears; which oil and how much only the handbook says.

item-wipers = Wiper blades
item-wipers-for = Hardened blades smear just when the road is worst to see.

item-lamps = Lamps, check
item-lamps-for = From the seat nobody notices a brake lamp that is out.

item-air-mass-sensor = Air-mass sensor, check
item-air-mass-sensor-for = A dirty sensor misjudges the air, and the engine runs rich, lean or without power.

item-crankcase-valve = Crankcase ventilation valve, check
item-crankcase-valve-for = A stuck valve builds up pressure that pushes oil past the seals.

item-power-steering-fluid = Power steering fluid, check
item-power-steering-fluid-for = A falling level is a leak, and in the end the wheel turns heavy.

item-exhaust = Exhaust, check
item-exhaust-for = A leak ahead of the cabin lets fumes in; loose hangers break the pipe.

item-steering-suspension = Steering and suspension joints, check
item-steering-suspension-for = Play in a joint wears the tyres first and lets go later.

item-corrosion = Corrosion, check
item-corrosion-for = Rust on brake lines, sills and mounts is cheap while it is still on the surface.

item-air-conditioning = Air conditioning, test
item-air-conditioning-for = A slow loss of refrigerant starves the compressor of oil; only licensed shops may open the circuit.

item-tyres = Tyres
item-tyres-for = Rubber hardens with age, even where the tread is still deep.

item-engine-oil-level = Engine oil level, check
item-engine-oil-level-for = An engine that runs low on oil is wrecked within minutes; any engine may burn some.

item-throttle-cable = Throttle cable, check
item-throttle-cable-for = A frayed or sticking cable can hold the throttle open.

item-idle-valve = Idle valve, cleaning
item-idle-valve-for = Deposits make the idle hunt or the engine stall at the lights.

item-throttle-relearn = Idle relearning of the throttle
item-throttle-relearn-for = After cleaning or without current an electronic throttle no longer knows where it closes.

item-ignition-leads = Ignition leads, cap and rotor
item-ignition-leads-for = Aged leads let the spark escape, above all on damp mornings.

item-ignition-coils = Ignition coils, check
item-ignition-coils-for = A cracked coil or its boot misfires under load and can ruin the catalytic converter.

item-vacuum-hoses = Vacuum hoses, check
item-vacuum-hoses-for = Air that leaks in makes the mixture lean, the idle rough and the brake pedal hard.

item-charge-air-hoses = Charge-air hoses, check
item-charge-air-hoses-for = A split hose costs power, fills the filter with soot and can overspeed the turbocharger.

item-petrol-additive = Petrol system cleaner, adding
item-petrol-additive-for = It dissolves deposits on injectors and valves; it is for petrol only and must never go into diesel.

item-diesel-additive = Diesel system cleaner, adding
item-diesel-additive-for = It keeps injector tips clean; it is for diesel only and must never go into petrol.

item-coolant-test = Coolant level and freezing point, test
item-coolant-test-for = A falling level is a leak, and thin coolant freezes and rusts the engine.

item-timing-belt-look = Timing belt, look
item-timing-belt-look-for = Cracks, fraying or oil on the belt show before it breaks.

item-timing-chain = Timing chain, listen and look
item-timing-chain-for = A stretched chain rattles at a cold start long before it jumps a tooth.

item-drive-belt-change = Drive belt
item-drive-belt-change-for = Without it the battery, the steering and on many cars the water pump stand still.

item-egr-valve = EGR valve, cleaning
item-egr-valve-for = Soot jams the valve that leads exhaust gas back: rough running, smoke, no power.

item-particulate-filter = Particulate filter, test
item-particulate-filter-for = A filter that cannot burn itself free in town traffic clogs and stops the car.

item-particulate-filter-ash = Particulate filter, ash out
item-particulate-filter-ash-for = Ash does not burn; a full filter strains the engine and the turbocharger.

item-automatic-gearbox-oil = Automatic gearbox oil and filter
item-automatic-gearbox-oil-for = Worn oil makes the shifts rough and wears clutches that cost more than the car may be worth.

item-axle-oil = Differential and transfer box oil
item-axle-oil-for = It carries the load of the driven wheels, and nothing filters it.

item-drive-shaft-boots = Drive-shaft boots, check
item-drive-shaft-boots-for = A split boot loses its grease, and the joint grinds itself away.

item-engine-mounts = Engine mounts, check
item-engine-mounts-for = Torn mounts shake the cabin and strain the exhaust and hoses.

item-power-steering-fluid-change = Power steering fluid
item-power-steering-fluid-change-for = Dark fluid wears the pump and the seals of the rack.

item-brake-fluid-test = Brake fluid, test
item-brake-fluid-test-for = A tester shows how much water the fluid has drawn before the pedal does.

item-brake-pads-front = Brake pads, front
item-brake-pads-front-for = The front brakes do most of the stopping; worn-out pads eat the discs.

item-brake-discs-front = Brake discs, front
item-brake-discs-front-for = A disc below the thickness stamped on it overheats and can break; new pads come with it.

item-brake-pads-rear = Brake pads or shoes, rear
item-brake-pads-rear-for = They wear more slowly, but rust and seize where the brakes are little used.

item-brake-discs-rear = Brake discs or drums, rear
item-brake-discs-rear-for = Rust and ridges take braking away; new pads or shoes come with them.

item-brake-lines = Brake pipes and hoses, check
item-brake-lines-for = A rusted pipe or a swollen hose bursts when the pedal is pressed hardest.

item-parking-brake = Parking brake, test
item-parking-brake-for = It must hold the car on a slope, and seizes when it is never used.

item-tyre-pressure = Tyre pressures, test
item-tyre-pressure-for = Soft tyres run hot, wear out at the edges and cost fuel; the spare wants its pressure too.

item-wheels-changed = Seasonal wheel change
item-wheels-changed-for = Winter tyres for the cold months, summer tyres for the warm; the law in many places says when.

item-wheel-torque = Wheel nuts or bolts, re-tighten
item-wheel-torque-for = Fastenings settle after a wheel was off; the value stands in the handbook.

item-washer-fluid = Washer fluid, topping up
item-washer-fluid-for = A smeared screen is blind against a low sun; frost calls for a winter mixture.

item-battery = Battery
item-battery-for = An old battery gives up on the first cold morning, however well it tested in summer.

item-high-voltage-cables = High-voltage cables, look
item-high-voltage-cables-for = Damaged orange cables or plugs can kill; only people trained for it touch them.

item-high-voltage-coolant = Coolant of the electric drive
item-high-voltage-coolant-for = It cools the drive battery and the inverter, and must not conduct as it ages.

item-drive-battery = Drive battery, test
item-drive-battery-for = What it still holds decides the range and what the car is worth.

item-hinges-locks-seals = Hinges, locks and seals, greasing
item-hinges-locks-seals-for = Dry hinges wear, and dry seals freeze to the door and let water in.

item-emergency-kit = Triangle, vest, first-aid kit, check
item-emergency-kit-for = Dressings have a last day, and some countries require all three.

item-roadworthiness = Roadworthiness inspection
item-roadworthiness-for = How often, the rules where you live say; without it the car may not be on the road.

item-insurance = Insurance, renewal
item-insurance-for = A car without insurance may not be on the road.

item-road-tax = Road tax
item-road-tax-for = When it is due, the rules where you live say.

# Kinds of part and fluid, as an owner would tell them apart.

kind-standard-oil = Standard oil
kind-long-life-oil = Long-life oil, if the handbook allows
kind-copper = Copper plugs
kind-platinum = Platinum plugs
kind-iridium = Iridium plugs
kind-inorganic-coolant = Inorganic coolant
kind-long-life-coolant = Long-life coolant
kind-ribbed-belt = Ribbed belt
kind-v-belt = V-belt
kind-flooded-battery = Wet battery
kind-agm-battery = AGM battery

# What an inspection found.

finding-at-limit = at its limit
finding-within-limits = within limits
finding-worn = worn
finding-dirty = dirty or clogged
finding-cracked = cracked or torn
finding-glazed = glazed
finding-leaking = leaking
finding-sooty = black and sooty
finding-noisy = noisy
finding-loose = loose or with play
finding-corroded = corroded
finding-rough-idle = rough idle
finding-hesitation = hesitates under load
finding-hard-cold-start = hard to start when cold
finding-white-smoke = white smoke at the start
finding-water = water in it
finding-frayed = frayed

# What is measured.

measured-tread = Tread depth
measured-pad = Lining thickness
measured-disc = Disc thickness
measured-water = Water content
measured-boiling-point = Boiling point
measured-charge = Voltage at rest
measured-freezing-point = Freezing point

# What some cars have and others lack.

fitted-turbo = Turbocharger or supercharger
fitted-particulate-filter = Particulate filter
fitted-timing-belt = Timing belt
fitted-timing-chain = Timing chain
fitted-manual-gearbox = Manual gearbox
fitted-automatic-gearbox = Automatic gearbox
fitted-driven-rear-axle = Rear- or all-wheel drive
fitted-cable-throttle = Throttle with a cable
fitted-electronic-throttle = Electronic throttle
fitted-hydraulic-steering = Power steering with fluid
fitted-air-conditioning = Air conditioning
fitted-ignition-leads = Distributor or ignition leads

# What has to be opened up, drained or lifted, so that work can share it.

access-lifted = car lifted
access-wheels-off = wheels off
access-air-path = air intake open
access-ignition = coils and plugs laid bare
access-front-belt = front of the engine open
access-cooling = coolant drained
access-fuel = fuel line open
access-cabin = cabin trim off
access-bonnet = bonnet open
access-battery = battery laid bare
access-papers = papers
