# The catalogue's items: a short name, and below it, where that helps, one sentence on what the work is for.
# The part after `item-` is the item's key in the catalogue.
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
item-glow-plugs-for = They warm a cold diesel for its start; failing ones give hard starts and white smoke.

item-fuel-filter = Fuel filter
item-fuel-filter-for = Keeps dirt away from the pump and the injectors, which cost far more than the filter.

item-fuel-filter-water = Water in the diesel filter, draining
item-fuel-filter-water-for = Water that gets past the filter rusts the injection pump and the injectors from inside.

item-coolant = Coolant
item-coolant-for = Its protection against rust and frost wears out with age, however far the car goes.

item-brake-fluid = Brake fluid
item-brake-fluid-for = It draws water from the air; with too much of it the fluid boils under hard braking and the pedal gives way.

item-timing-belt = Timing belt with pump and rollers
item-timing-belt-for = When this belt breaks, most engines are wrecked at once; an engine with a chain has none.

item-drive-belt = Drive belt, check
item-drive-belt-for = Drives the alternator and on many cars the water pump; cracks, glazing or fraying mean a new one now.

item-hoses = Hoses, check
item-hoses-for = A hose that is soft, cracked or wet at its ends leaves the car standing and can overheat the engine.

item-battery-test = Battery, test
item-battery-test-for = A weak battery is found before the first cold morning does it.

item-tyre-check = Tyres, check
item-tyre-check-for = Pressure, tread, damage and age decide how the car stops and holds the road.

item-brake-check = Brake pads and discs, check
item-brake-check-for = Pads and discs wear out of sight; a look in time saves the discs and the stopping distance.

item-gearbox-oil = Gearbox oil
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
item-power-steering-fluid-for = A falling level is a leak; cars with electric steering have none.

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
