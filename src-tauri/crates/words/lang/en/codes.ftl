# The words of trouble codes: what a code is by itself, what a scan says, and a sentence for every code of the table
# `codes.toml` in the rules. The sentences are this program's own, from memory of the trade; the standard's list is
# not free to copy. A sentence says what a control unit found, not which part is at fault.

## What a letter stands for

code-system-powertrain = Engine, gearbox and drive
code-system-chassis = Brakes, steering and suspension
code-system-body = Body: airbags, locks, seats, climate
code-system-network = Network between control units

code-origin-standard = Standard code: it means the same on every car
code-origin-maker = The maker’s own code: it means something else on another make
code-origin-reserved = A code that the standard has given to nobody

# Said where the table has no row.
code-no-text = There is no text for this code here; your handbook or a workshop has it.

# What the third character hints at. New codes no longer keep to it, so it is said as a hint only.
code-area-hint = Probably about: { $area }
code-area-mixture = fuel and air
code-area-ignition = ignition and misfire
code-area-emission = exhaust cleaning
code-area-idle = speed and idle
code-area-computer = the control unit
code-area-gearbox = the gearbox
code-area-modules = control modules
code-area-electric-drive = the electric drive

## How sure, and how urgent

code-status-confirmed = Confirmed
code-status-pending = Pending
code-status-permanent = Permanent
code-status-unstated = Status not stated
code-status-confirmed-for = Found often enough to be stored.
code-status-pending-for = Found once; it is stored when it is found again.
code-status-permanent-for = No tool can clear it; it goes when the car has tested itself and found nothing.
code-status-unstated-for = The text does not say whether it is stored or pending.

code-urgency-watch = At the next opportunity
code-urgency-soon = Within days, driving gently
code-urgency-stop = Stop where it is safe
code-urgency-watch-for = The car drives as usual, and waiting costs little.
code-urgency-soon-for = Waiting can harm a dearer part, or a system that helps you is off.
code-urgency-stop-for = Do not drive on before it has been looked at.

## The life of a code

code-standing-present = There when last looked
code-standing-cleared = Cleared, not yet known to be mended
code-standing-gone = Gone

code-warning-not-mended = Cleared is not mended: the report is gone, the fault may not be.
code-warning-readiness-lost = Clearing also erased the car’s own tests. Until it has finished them again, an inspection may turn it away.
code-warning-cannot-be-cleared = This one cannot be cleared with a tool; it goes by itself once the car has tested itself.

## The car's own tests

# $count: how many, by the year of the car's first use
code-tests-allowed = In the United States an inspection usually lets { $count ->
    [one] one unfinished test
   *[other] { $count } unfinished tests
} of a car of this year pass (66 FR 18156 and 40 CFR 85.2222, from memory); elsewhere other rules hold.

## What could not be read, or not without a doubt

code-note-nothing-found = There is no code and no answer of a car in this text.
code-note-not-a-code = ‘{ $text }’ looks like a code, but there is none like it.
code-note-misread = ‘{ $text }’ was not read; if { $meant } is meant, write it so, with digits and without gaps.
code-note-status-unclear = Whether { $code } is stored or pending is not clear from the text.
code-note-maybe-counted = An answer can be read in two ways; the other reading is { $codes }. Paste the whole output of the tool to be sure.
code-note-cut-short = An answer ends too early: { $text }. Codes may be missing.
code-note-part-missing = A part of a long answer is missing. Codes may be missing.
code-note-parts-mixed = Several control units answered at once, and their answers could not be told apart. Ask them one by one.
code-note-no-data = The car gave no answer. Older cars also say this when they have no codes.
code-note-link-failed = The tool could not talk to the car: { $text }
code-note-refused = A control unit refused service { $service }, reason { $reason }.
code-note-cleared = The control unit says that it has cleared its codes.
code-note-unread = These bytes mean nothing here: { $text }
code-note-too-long = The text is too long; only its first { $most } characters were read.

## Readiness

code-monitor-misfire = Misfire
code-monitor-fuel-system = Fuel system
code-monitor-components = Sensors and actuators
code-monitor-catalyst = Catalytic converter
code-monitor-heated-catalyst = Heated catalytic converter
code-monitor-evaporative = Fuel vapour system
code-monitor-secondary-air = Secondary air
code-monitor-refrigerant-or-filter = Refrigerant, or petrol particulate filter
code-monitor-oxygen-sensor = Oxygen sensors
code-monitor-oxygen-heater = Heaters of the oxygen sensors
code-monitor-exhaust-recirculation = Exhaust recirculation or valve timing
code-monitor-oxidation-catalyst = Oxidation catalyst
code-monitor-nitrogen-oxides = Nitrogen oxides treatment
code-monitor-boost-pressure = Boost pressure
code-monitor-exhaust-sensor = Exhaust gas sensors
code-monitor-particulate-filter = Particulate filter

## Values

code-value-load = Engine load
code-value-coolant = Coolant temperature
code-value-short-trim-1 = Fuel correction now, bank 1
code-value-long-trim-1 = Fuel correction learnt, bank 1
code-value-short-trim-2 = Fuel correction now, bank 2
code-value-long-trim-2 = Fuel correction learnt, bank 2
code-value-fuel-pressure = Fuel pressure
code-value-manifold-pressure = Manifold pressure
code-value-engine-speed = Engine speed
code-value-speed = Speed
code-value-advance = Ignition advance
code-value-intake-air = Intake air temperature
code-value-air-flow = Air flow
code-value-throttle = Throttle
code-value-run-time = Time since start
code-value-distance-with-lamp = Distance with the lamp on
code-value-rail-pressure = Fuel rail pressure
code-value-fuel-level = Fuel level
code-value-distance-since-clearing = Distance since clearing
code-value-barometer = Outside air pressure
code-value-voltage = Voltage at the control unit
code-value-outside-air = Outside temperature
code-value-time-with-lamp = Time with the lamp on
code-value-time-since-clearing = Time since clearing
code-value-oil-temperature = Engine oil temperature
code-value-odometer = Odometer

## Camshaft timing and variable valves

code-P0010 = Intake camshaft adjuster, bank 1: fault in its circuit
code-P0011 = Intake camshaft too far advanced, bank 1
code-P0012 = Intake camshaft too far retarded, bank 1
code-P0013 = Exhaust camshaft adjuster, bank 1: fault in its circuit
code-P0014 = Exhaust camshaft too far advanced, bank 1
code-P0015 = Exhaust camshaft too far retarded, bank 1
code-P0020 = Intake camshaft adjuster, bank 2: fault in its circuit
code-P0021 = Intake camshaft too far advanced, bank 2
code-P0022 = Intake camshaft too far retarded, bank 2
code-P0023 = Exhaust camshaft adjuster, bank 2: fault in its circuit
code-P0024 = Exhaust camshaft too far advanced, bank 2
code-P0025 = Exhaust camshaft too far retarded, bank 2
code-P0016 = Crankshaft and intake camshaft do not agree, bank 1
code-P0017 = Crankshaft and exhaust camshaft do not agree, bank 1
code-P0018 = Crankshaft and intake camshaft do not agree, bank 2
code-P0019 = Crankshaft and exhaust camshaft do not agree, bank 2
code-P0075 = Intake valve control solenoid, bank 1: fault in its circuit
code-P0078 = Exhaust valve control solenoid, bank 1: fault in its circuit
code-P0081 = Intake valve control solenoid, bank 2: fault in its circuit
code-P0084 = Exhaust valve control solenoid, bank 2: fault in its circuit
code-P3400 = Cylinder deactivation, bank 1: does not work as it should
code-P3497 = Cylinder deactivation, bank 2: does not work as it should

## Oxygen sensors and their heaters

code-P0030 = Heater of oxygen sensor 1, bank 1: fault in its circuit
code-P0031 = Heater of oxygen sensor 1, bank 1: control circuit, voltage too low
code-P0032 = Heater of oxygen sensor 1, bank 1: control circuit, voltage too high
code-P0036 = Heater of oxygen sensor 2, bank 1: fault in its circuit
code-P0037 = Heater of oxygen sensor 2, bank 1: control circuit, voltage too low
code-P0038 = Heater of oxygen sensor 2, bank 1: control circuit, voltage too high
code-P0042 = Heater of oxygen sensor 3, bank 1: fault in its circuit
code-P0043 = Heater of oxygen sensor 3, bank 1: control circuit, voltage too low
code-P0044 = Heater of oxygen sensor 3, bank 1: control circuit, voltage too high
code-P0050 = Heater of oxygen sensor 1, bank 2: fault in its circuit
code-P0051 = Heater of oxygen sensor 1, bank 2: control circuit, voltage too low
code-P0052 = Heater of oxygen sensor 1, bank 2: control circuit, voltage too high
code-P0056 = Heater of oxygen sensor 2, bank 2: fault in its circuit
code-P0057 = Heater of oxygen sensor 2, bank 2: control circuit, voltage too low
code-P0058 = Heater of oxygen sensor 2, bank 2: control circuit, voltage too high
code-P0130 = Oxygen sensor 1, bank 1: fault in its circuit
code-P0131 = Oxygen sensor 1, bank 1: voltage too low
code-P0132 = Oxygen sensor 1, bank 1: voltage too high
code-P0133 = Oxygen sensor 1, bank 1: responds too slowly
code-P0134 = Oxygen sensor 1, bank 1: no activity
code-P0135 = Oxygen sensor 1, bank 1: heater does not work as it should
code-P0136 = Oxygen sensor 2, bank 1: fault in its circuit
code-P0137 = Oxygen sensor 2, bank 1: voltage too low
code-P0138 = Oxygen sensor 2, bank 1: voltage too high
code-P0139 = Oxygen sensor 2, bank 1: responds too slowly
code-P0140 = Oxygen sensor 2, bank 1: no activity
code-P0141 = Oxygen sensor 2, bank 1: heater does not work as it should
code-P0142 = Oxygen sensor 3, bank 1: fault in its circuit
code-P0143 = Oxygen sensor 3, bank 1: voltage too low
code-P0144 = Oxygen sensor 3, bank 1: voltage too high
code-P0145 = Oxygen sensor 3, bank 1: responds too slowly
code-P0146 = Oxygen sensor 3, bank 1: no activity
code-P0147 = Oxygen sensor 3, bank 1: heater does not work as it should
code-P0150 = Oxygen sensor 1, bank 2: fault in its circuit
code-P0151 = Oxygen sensor 1, bank 2: voltage too low
code-P0152 = Oxygen sensor 1, bank 2: voltage too high
code-P0153 = Oxygen sensor 1, bank 2: responds too slowly
code-P0154 = Oxygen sensor 1, bank 2: no activity
code-P0155 = Oxygen sensor 1, bank 2: heater does not work as it should
code-P0156 = Oxygen sensor 2, bank 2: fault in its circuit
code-P0157 = Oxygen sensor 2, bank 2: voltage too low
code-P0158 = Oxygen sensor 2, bank 2: voltage too high
code-P0159 = Oxygen sensor 2, bank 2: responds too slowly
code-P0160 = Oxygen sensor 2, bank 2: no activity
code-P0161 = Oxygen sensor 2, bank 2: heater does not work as it should
code-P0162 = Oxygen sensor 3, bank 2: fault in its circuit
code-P0163 = Oxygen sensor 3, bank 2: voltage too low
code-P0164 = Oxygen sensor 3, bank 2: voltage too high
code-P0165 = Oxygen sensor 3, bank 2: responds too slowly
code-P0166 = Oxygen sensor 3, bank 2: no activity
code-P0167 = Oxygen sensor 3, bank 2: heater does not work as it should
code-P0053 = Heater of oxygen sensor 1, bank 1: resistance not plausible
code-P0054 = Heater of oxygen sensor 2, bank 1: resistance not plausible
code-P0059 = Heater of oxygen sensor 1, bank 2: resistance not plausible
code-P0060 = Heater of oxygen sensor 2, bank 2: resistance not plausible
code-P00D1 = Heater of oxygen sensor 1, bank 1: too weak
code-P00D2 = Heater of oxygen sensor 2, bank 1: too weak
code-P00D3 = Heater of oxygen sensor 1, bank 2: too weak
code-P00D4 = Heater of oxygen sensor 2, bank 2: too weak
code-P013A = Oxygen sensor 2, bank 1: slow from rich to lean
code-P013B = Oxygen sensor 2, bank 1: slow from lean to rich
code-P013E = Oxygen sensor 2, bank 1: late from rich to lean
code-P014A = Oxygen sensor 2, bank 2: late from rich to lean
code-P0040 = Oxygen sensors 1 of the two banks: plugs swapped
code-P0041 = Oxygen sensors 2 of the two banks: plugs swapped
code-P2195 = Oxygen sensor 1, bank 1: stays at lean
code-P2196 = Oxygen sensor 1, bank 1: stays at rich
code-P2197 = Oxygen sensor 1, bank 2: stays at lean
code-P2198 = Oxygen sensor 1, bank 2: stays at rich
code-P2237 = Oxygen sensor 1, bank 1: pump current circuit open
code-P2238 = Oxygen sensor 1, bank 1: pump current too low
code-P2239 = Oxygen sensor 1, bank 1: pump current too high
code-P2243 = Oxygen sensor 1, bank 1: reference voltage circuit open
code-P2251 = Oxygen sensor 1, bank 1: reference earth circuit open
code-P2270 = Oxygen sensor 2, bank 1: stays at lean
code-P2271 = Oxygen sensor 2, bank 1: stays at rich
code-P2272 = Oxygen sensor 2, bank 2: stays at lean
code-P2273 = Oxygen sensor 2, bank 2: stays at rich
code-P2A00 = Oxygen sensor 1, bank 1: signal not plausible
code-P2A01 = Oxygen sensor 2, bank 1: signal not plausible
code-P2A03 = Oxygen sensor 1, bank 2: signal not plausible
code-P2A04 = Oxygen sensor 2, bank 2: signal not plausible

## Air: mass, pressure, temperature

code-P0100 = Air-mass sensor: fault in its circuit
code-P0102 = Air-mass sensor: signal too low
code-P0103 = Air-mass sensor: signal too high
code-P0104 = Air-mass sensor: signal comes and goes
code-P0101 = Air-mass sensor: signal not plausible
code-P0105 = Manifold pressure sensor: fault in its circuit
code-P0106 = Manifold pressure sensor: signal not plausible
code-P0107 = Manifold pressure sensor: signal too low
code-P0108 = Manifold pressure sensor: signal too high
code-P0109 = Manifold pressure sensor: signal comes and goes
code-P0110 = Intake air temperature sensor: fault in its circuit
code-P0111 = Intake air temperature sensor: signal not plausible
code-P0112 = Intake air temperature sensor: signal too low
code-P0113 = Intake air temperature sensor: signal too high
code-P0114 = Intake air temperature sensor: signal comes and goes
code-P0095 = Intake air temperature sensor 2: fault in its circuit
code-P0096 = Intake air temperature sensor 2: signal not plausible
code-P0097 = Intake air temperature sensor 2: signal too low
code-P0098 = Intake air temperature sensor 2: signal too high
code-P0070 = Outside temperature sensor: fault in its circuit
code-P0071 = Outside temperature sensor: signal not plausible
code-P0072 = Outside temperature sensor: signal too low
code-P0073 = Outside temperature sensor: signal too high
code-P2226 = Pressure sensor of the outside air: fault in its circuit
code-P2227 = Pressure sensor of the outside air: signal not plausible
code-P2228 = Pressure sensor of the outside air: signal too low
code-P2229 = Pressure sensor of the outside air: signal too high
code-P0068 = Air drawn in does not fit the throttle position
code-P0069 = Manifold pressure and outside air pressure do not agree
code-P0127 = Intake air too hot
code-P0129 = Outside air pressure too low
code-P2279 = Air leak in the intake

## Boost

code-P0235 = Boost pressure sensor: fault in its circuit
code-P0236 = Boost pressure sensor: signal not plausible
code-P0237 = Boost pressure sensor: signal too low
code-P0238 = Boost pressure sensor: signal too high
code-P0243 = Boost control valve: fault in its circuit
code-P0244 = Boost control valve: does not do what it is told
code-P0245 = Boost control valve: control circuit, voltage too low
code-P0246 = Boost control valve: control circuit, voltage too high
code-P0045 = Turbocharger control: control circuit open
code-P0046 = Turbocharger control: does not do what it is told
code-P0047 = Turbocharger control: control circuit, voltage too low
code-P0048 = Turbocharger control: control circuit, voltage too high
code-P0033 = Boost relief valve: fault in its circuit
code-P0034 = Boost relief valve: control circuit, voltage too low
code-P0035 = Boost relief valve: control circuit, voltage too high
code-P2562 = Position sensor of the turbocharger: fault in its circuit
code-P2563 = Position sensor of the turbocharger: signal not plausible
code-P2564 = Position sensor of the turbocharger: signal too low
code-P2565 = Position sensor of the turbocharger: signal too high
code-P0049 = Turbocharger turns too fast
code-P0234 = Boost pressure too high
code-P0299 = Boost pressure too low
code-P2261 = Boost relief valve: sticks
code-P2262 = Boost pressure does not build up
code-P2263 = Boost does not follow what is asked for

## Coolant, oil and outside: temperature and level

code-P0115 = Coolant temperature sensor: fault in its circuit
code-P0116 = Coolant temperature sensor: signal not plausible
code-P0117 = Coolant temperature sensor: signal too low
code-P0118 = Coolant temperature sensor: signal too high
code-P0119 = Coolant temperature sensor: signal comes and goes
code-P2183 = Coolant temperature sensor 2: signal not plausible
code-P2184 = Coolant temperature sensor 2: signal too low
code-P2185 = Coolant temperature sensor 2: signal too high
code-P0195 = Engine oil temperature sensor: fault in its circuit
code-P0196 = Engine oil temperature sensor: signal not plausible
code-P0197 = Engine oil temperature sensor: signal too low
code-P0198 = Engine oil temperature sensor: signal too high
code-P0480 = Radiator fan 1: fault in its circuit
code-P0481 = Radiator fan 2: fault in its circuit
code-P0482 = Radiator fan 3: fault in its circuit
code-P0691 = Radiator fan 1: control circuit, voltage too low
code-P0692 = Radiator fan 1: control circuit, voltage too high
code-P0693 = Radiator fan 2: control circuit, voltage too low
code-P0694 = Radiator fan 2: control circuit, voltage too high
code-P0597 = Thermostat heater: control circuit open
code-P0598 = Thermostat heater: control circuit, voltage too low
code-P0599 = Thermostat heater: control circuit, voltage too high
code-P0125 = Coolant too cold to control the mixture
code-P0126 = Coolant too cold for steady running
code-P0128 = Engine stays too cold: thermostat
code-P0217 = Engine overheats
code-P0298 = Engine oil overheats
code-P0483 = Radiator fan: does not turn as it should
code-P0495 = Radiator fan turns too fast
code-P2181 = Cooling does not work as it should

## Throttle and pedal

code-P0120 = Throttle position sensor A: fault in its circuit
code-P0121 = Throttle position sensor A: signal not plausible
code-P0122 = Throttle position sensor A: signal too low
code-P0123 = Throttle position sensor A: signal too high
code-P0124 = Throttle position sensor A: signal comes and goes
code-P0220 = Throttle position sensor B: fault in its circuit
code-P0221 = Throttle position sensor B: signal not plausible
code-P0222 = Throttle position sensor B: signal too low
code-P0223 = Throttle position sensor B: signal too high
code-P0224 = Throttle position sensor B: signal comes and goes
code-P2120 = Accelerator pedal sensor D: fault in its circuit
code-P2121 = Accelerator pedal sensor D: signal not plausible
code-P2122 = Accelerator pedal sensor D: signal too low
code-P2123 = Accelerator pedal sensor D: signal too high
code-P2125 = Accelerator pedal sensor E: fault in its circuit
code-P2126 = Accelerator pedal sensor E: signal not plausible
code-P2127 = Accelerator pedal sensor E: signal too low
code-P2128 = Accelerator pedal sensor E: signal too high
code-P0638 = Throttle does not go where it is told, bank 1
code-P2100 = Throttle motor: circuit open
code-P2101 = Throttle motor: does not do what it is told
code-P2102 = Throttle motor: circuit, voltage too low
code-P2103 = Throttle motor: circuit, voltage too high
code-P2104 = Throttle fault: engine held at idle
code-P2105 = Throttle fault: engine shut off
code-P2106 = Throttle fault: power limited
code-P2107 = Throttle control: its processor
code-P2108 = Throttle control: does not work as it should
code-P2110 = Throttle fault: engine speed limited
code-P2111 = Throttle stays open
code-P2112 = Throttle stays shut
code-P2118 = Throttle motor: draws too much or too little current
code-P2119 = Throttle does not come back as it should
code-P2135 = Throttle position sensors A and B do not agree
code-P2138 = Accelerator pedal sensors D and E do not agree
code-P2176 = Throttle: idle position not learnt
code-P2299 = Brake and accelerator pressed at once

## Mixture

code-P0170 = Fuel correction out of range, bank 1
code-P0171 = Mixture too lean, bank 1
code-P0172 = Mixture too rich, bank 1
code-P0173 = Fuel correction out of range, bank 2
code-P0174 = Mixture too lean, bank 2
code-P0175 = Mixture too rich, bank 2
code-P2177 = Mixture too lean under way, bank 1
code-P2178 = Mixture too rich under way, bank 1
code-P2179 = Mixture too lean under way, bank 2
code-P2180 = Mixture too rich under way, bank 2
code-P2187 = Mixture too lean at idle, bank 1
code-P2188 = Mixture too rich at idle, bank 1
code-P2189 = Mixture too lean at idle, bank 2
code-P2190 = Mixture too rich at idle, bank 2
code-P2191 = Mixture too lean under load, bank 1
code-P2096 = Mixture behind the catalytic converter too lean, bank 1
code-P2097 = Mixture behind the catalytic converter too rich, bank 1
code-P2098 = Mixture behind the catalytic converter too lean, bank 2
code-P2099 = Mixture behind the catalytic converter too rich, bank 2

## Fuel supply and pressure

code-P0001 = Fuel volume valve: control circuit open
code-P0002 = Fuel volume valve: does not do what it is told
code-P0003 = Fuel volume valve: control circuit, voltage too low
code-P0004 = Fuel volume valve: control circuit, voltage too high
code-P0090 = Fuel pressure valve: fault in its circuit
code-P0091 = Fuel pressure valve: control circuit, voltage too low
code-P0092 = Fuel pressure valve: control circuit, voltage too high
code-P0180 = Fuel temperature sensor: fault in its circuit
code-P0181 = Fuel temperature sensor: signal not plausible
code-P0182 = Fuel temperature sensor: signal too low
code-P0183 = Fuel temperature sensor: signal too high
code-P0190 = Fuel rail pressure sensor: fault in its circuit
code-P0191 = Fuel rail pressure sensor: signal not plausible
code-P0192 = Fuel rail pressure sensor: signal too low
code-P0193 = Fuel rail pressure sensor: signal too high
code-P0194 = Fuel rail pressure sensor: signal comes and goes
code-P0627 = Fuel pump: control circuit open
code-P0628 = Fuel pump: control circuit, voltage too low
code-P0629 = Fuel pump: control circuit, voltage too high
code-P0460 = Fuel gauge sender: fault in its circuit
code-P0461 = Fuel gauge sender: signal not plausible
code-P0462 = Fuel gauge sender: signal too low
code-P0463 = Fuel gauge sender: signal too high
code-P0087 = Fuel rail pressure too low
code-P0088 = Fuel rail pressure too high
code-P0089 = Fuel pressure valve: does not hold the pressure
code-P008A = Fuel pressure in the low-pressure line too low
code-P008B = Fuel pressure in the low-pressure line too high
code-P0093 = Large fuel leak
code-P0094 = Small fuel leak
code-P0176 = Fuel mix sensor (petrol and alcohol): fault in its circuit
code-P0178 = Fuel mix sensor (petrol and alcohol): signal too low
code-P0179 = Fuel mix sensor (petrol and alcohol): signal too high
code-P0215 = Fuel shut-off valve: fault in its circuit
code-P0216 = Injection timing: not under control
code-P0230 = Fuel pump: fault in its feed circuit
code-P0231 = Fuel pump: feed voltage too low
code-P0232 = Fuel pump: feed voltage too high
code-P0251 = Injection pump: fuel metering
code-P0252 = Injection pump: fuel metering not plausible
code-P0313 = Misfire with the fuel nearly used up
code-P2264 = Water-in-fuel sensor: fault in its circuit
code-P2265 = Water-in-fuel sensor: signal not plausible
code-P2266 = Water-in-fuel sensor: signal too low
code-P2267 = Water-in-fuel sensor: signal too high
code-P2269 = Water in the fuel
code-P2291 = Injection pressure too low when starting
code-P2293 = Fuel pressure valve 2: does not hold the pressure
code-P2294 = Fuel pressure valve 2: fault in its circuit
code-P2635 = Fuel pump delivers too little

## Injectors

code-P0200 = Injectors: fault in a circuit
code-P0201 = Injector of cylinder 1: fault in its circuit
code-P0202 = Injector of cylinder 2: fault in its circuit
code-P0203 = Injector of cylinder 3: fault in its circuit
code-P0204 = Injector of cylinder 4: fault in its circuit
code-P0205 = Injector of cylinder 5: fault in its circuit
code-P0206 = Injector of cylinder 6: fault in its circuit
code-P0207 = Injector of cylinder 7: fault in its circuit
code-P0208 = Injector of cylinder 8: fault in its circuit
code-P0261 = Injector of cylinder 1: voltage too low
code-P0262 = Injector of cylinder 1: voltage too high
code-P0263 = Cylinder 1 does less than the others
code-P0264 = Injector of cylinder 2: voltage too low
code-P0265 = Injector of cylinder 2: voltage too high
code-P0266 = Cylinder 2 does less than the others
code-P0267 = Injector of cylinder 3: voltage too low
code-P0268 = Injector of cylinder 3: voltage too high
code-P0269 = Cylinder 3 does less than the others
code-P0270 = Injector of cylinder 4: voltage too low
code-P0271 = Injector of cylinder 4: voltage too high
code-P0272 = Cylinder 4 does less than the others
code-P0273 = Injector of cylinder 5: voltage too low
code-P0274 = Injector of cylinder 5: voltage too high
code-P0275 = Cylinder 5 does less than the others
code-P0276 = Injector of cylinder 6: voltage too low
code-P0277 = Injector of cylinder 6: voltage too high
code-P0278 = Cylinder 6 does less than the others
code-P0279 = Injector of cylinder 7: voltage too low
code-P0280 = Injector of cylinder 7: voltage too high
code-P0281 = Cylinder 7 does less than the others
code-P0282 = Injector of cylinder 8: voltage too low
code-P0283 = Injector of cylinder 8: voltage too high
code-P0284 = Cylinder 8 does less than the others
code-P2146 = Injectors, group A: feed circuit open
code-P2147 = Injectors, group A: feed voltage too low
code-P2148 = Injectors, group A: feed voltage too high
code-P2149 = Injectors, group B: feed circuit open

## Misfire and ignition

code-P0300 = Misfire on several cylinders
code-P0301 = Misfire on cylinder 1
code-P0302 = Misfire on cylinder 2
code-P0303 = Misfire on cylinder 3
code-P0304 = Misfire on cylinder 4
code-P0305 = Misfire on cylinder 5
code-P0306 = Misfire on cylinder 6
code-P0307 = Misfire on cylinder 7
code-P0308 = Misfire on cylinder 8
code-P0314 = Misfire on a single cylinder
code-P0315 = Even running of the crankshaft not learnt
code-P0316 = Misfire just after starting
code-P0320 = Engine speed signal for the ignition: fault in its circuit
code-P0321 = Engine speed signal for the ignition: not plausible
code-P0322 = Engine speed signal for the ignition: none
code-P0323 = Engine speed signal for the ignition: comes and goes
code-P0350 = Ignition coils: fault in a circuit
code-P0351 = Ignition coil 1: fault in its circuit
code-P0352 = Ignition coil 2: fault in its circuit
code-P0353 = Ignition coil 3: fault in its circuit
code-P0354 = Ignition coil 4: fault in its circuit
code-P0355 = Ignition coil 5: fault in its circuit
code-P0356 = Ignition coil 6: fault in its circuit
code-P0357 = Ignition coil 7: fault in its circuit
code-P0358 = Ignition coil 8: fault in its circuit
code-P2300 = Ignition coil A: voltage too low
code-P2301 = Ignition coil A: voltage too high
code-P2303 = Ignition coil B: voltage too low
code-P2304 = Ignition coil B: voltage too high
code-P2306 = Ignition coil C: voltage too low
code-P2307 = Ignition coil C: voltage too high
code-P2309 = Ignition coil D: voltage too low
code-P2310 = Ignition coil D: voltage too high
code-P0325 = Knock sensor 1: fault in its circuit
code-P0326 = Knock sensor 1: signal not plausible
code-P0327 = Knock sensor 1: signal too low
code-P0328 = Knock sensor 1: signal too high
code-P0330 = Knock sensor 2: fault in its circuit
code-P0331 = Knock sensor 2: signal not plausible
code-P0332 = Knock sensor 2: signal too low
code-P0333 = Knock sensor 2: signal too high

## Crankshaft and camshaft sensors

code-P0335 = Crankshaft sensor: fault in its circuit
code-P0336 = Crankshaft sensor: signal not plausible
code-P0337 = Crankshaft sensor: signal too low
code-P0338 = Crankshaft sensor: signal too high
code-P0339 = Crankshaft sensor: signal comes and goes
code-P0340 = Camshaft sensor A, bank 1: fault in its circuit
code-P0341 = Camshaft sensor A, bank 1: signal not plausible
code-P0342 = Camshaft sensor A, bank 1: signal too low
code-P0343 = Camshaft sensor A, bank 1: signal too high
code-P0344 = Camshaft sensor A, bank 1: signal comes and goes
code-P0345 = Camshaft sensor A, bank 2: fault in its circuit
code-P0346 = Camshaft sensor A, bank 2: signal not plausible
code-P0347 = Camshaft sensor A, bank 2: signal too low
code-P0348 = Camshaft sensor A, bank 2: signal too high
code-P0349 = Camshaft sensor A, bank 2: signal comes and goes
code-P0365 = Camshaft sensor B, bank 1: fault in its circuit
code-P0366 = Camshaft sensor B, bank 1: signal not plausible
code-P0367 = Camshaft sensor B, bank 1: signal too low
code-P0368 = Camshaft sensor B, bank 1: signal too high
code-P0390 = Camshaft sensor B, bank 2: fault in its circuit
code-P0391 = Camshaft sensor B, bank 2: signal not plausible
code-P0392 = Camshaft sensor B, bank 2: signal too low
code-P0393 = Camshaft sensor B, bank 2: signal too high
code-P0385 = Crankshaft sensor B: fault in its circuit
code-P0386 = Crankshaft sensor B: signal not plausible

## Glow plugs

code-P0380 = Glow plugs: fault in their circuit
code-P0381 = Glow lamp: fault in its circuit
code-P0382 = Glow plugs, second circuit: fault
code-P0670 = Glow control: fault in its circuit
code-P0683 = Glow control: does not answer the engine control
code-P0684 = Glow control: answers are not plausible
code-P0671 = Glow plug of cylinder 1: fault in its circuit
code-P0672 = Glow plug of cylinder 2: fault in its circuit
code-P0673 = Glow plug of cylinder 3: fault in its circuit
code-P0674 = Glow plug of cylinder 4: fault in its circuit
code-P0675 = Glow plug of cylinder 5: fault in its circuit
code-P0676 = Glow plug of cylinder 6: fault in its circuit
code-P0677 = Glow plug of cylinder 7: fault in its circuit
code-P0678 = Glow plug of cylinder 8: fault in its circuit

## Exhaust gas recirculation and intake flaps

code-P0403 = Exhaust gas recirculation valve: fault in its circuit
code-P0404 = Exhaust gas recirculation valve: does not do what it is told
code-P0405 = Position sensor A of the exhaust gas recirculation: signal too low
code-P0406 = Position sensor A of the exhaust gas recirculation: signal too high
code-P0407 = Position sensor B of the exhaust gas recirculation: signal too low
code-P0408 = Position sensor B of the exhaust gas recirculation: signal too high
code-P0489 = Exhaust gas recirculation valve: control circuit, voltage too low
code-P0490 = Exhaust gas recirculation valve: control circuit, voltage too high
code-P2014 = Position sensor of the intake flaps, bank 1: fault in its circuit
code-P2015 = Position sensor of the intake flaps, bank 1: signal not plausible
code-P2016 = Position sensor of the intake flaps, bank 1: signal too low
code-P2017 = Position sensor of the intake flaps, bank 1: signal too high
code-P2008 = Intake flaps: control circuit open
code-P2009 = Intake flaps: control circuit, voltage too low
code-P2010 = Intake flaps: control circuit, voltage too high
code-P0400 = Exhaust gas recirculation: flow not as it should be
code-P0401 = Exhaust gas recirculation: too little flow
code-P0402 = Exhaust gas recirculation: too much flow
code-P0409 = Position sensor of the exhaust gas recirculation: fault in its circuit
code-P0487 = Air flap for the exhaust gas recirculation: fault in its circuit
code-P0488 = Air flap for the exhaust gas recirculation: does not do what it is told
code-P2004 = Intake flaps stay open, bank 1
code-P2005 = Intake flaps stay open, bank 2
code-P2006 = Intake flaps stay shut, bank 1
code-P2007 = Intake flaps stay shut, bank 2
code-P2413 = Exhaust gas recirculation: does not work as it should
code-P2425 = Cooler bypass of the exhaust gas recirculation: circuit open
code-P2457 = Cooler of the exhaust gas recirculation: cools too little

## Secondary air

code-P0410 = Secondary air: does not work as it should
code-P0411 = Secondary air: flow not as it should be
code-P0412 = Secondary air valve: fault in its circuit
code-P0413 = Secondary air valve: circuit open
code-P0414 = Secondary air valve: short circuit
code-P0418 = Secondary air pump: fault in its relay circuit
code-P0491 = Secondary air: too little flow, bank 1
code-P0492 = Secondary air: too little flow, bank 2
code-P2440 = Secondary air valve stays open, bank 1
code-P2445 = Secondary air pump does not run

## Catalytic converter

code-P0420 = Catalytic converter works too little, bank 1
code-P0421 = First catalytic converter works too little, bank 1
code-P0422 = Main catalytic converter works too little, bank 1
code-P0430 = Catalytic converter works too little, bank 2
code-P0431 = First catalytic converter works too little, bank 2
code-P0432 = Main catalytic converter works too little, bank 2

## Fuel vapour

code-P0450 = Tank pressure sensor: fault in its circuit
code-P0451 = Tank pressure sensor: signal not plausible
code-P0452 = Tank pressure sensor: signal too low
code-P0453 = Tank pressure sensor: signal too high
code-P0454 = Tank pressure sensor: signal comes and goes
code-P0440 = Fuel vapour system: does not work as it should
code-P0441 = Fuel vapour system: purge flow not as it should be
code-P0442 = Fuel vapour system: small leak
code-P0443 = Purge valve: fault in its circuit
code-P0444 = Purge valve: circuit open
code-P0445 = Purge valve: short circuit
code-P0446 = Vent valve of the fuel vapour system: does not work as it should
code-P0447 = Vent valve of the fuel vapour system: circuit open
code-P0448 = Vent valve of the fuel vapour system: short circuit
code-P0449 = Vent valve of the fuel vapour system: fault in its circuit
code-P0455 = Fuel vapour system: large leak
code-P0456 = Fuel vapour system: very small leak
code-P0457 = Fuel vapour system: leak, filler cap loose or off
code-P0458 = Purge valve: voltage too low
code-P0459 = Purge valve: voltage too high
code-P0496 = Fuel vapour drawn in when it should not be
code-P0497 = Fuel vapour system: too little purge flow
code-P0498 = Vent valve of the fuel vapour system: voltage too low
code-P0499 = Vent valve of the fuel vapour system: voltage too high
code-P2422 = Vent valve of the fuel vapour system stays shut

## Particulate filter, nitrogen oxides, exhaust sensors

code-P0470 = Exhaust pressure sensor: fault in its circuit
code-P0471 = Exhaust pressure sensor: signal not plausible
code-P0472 = Exhaust pressure sensor: signal too low
code-P0473 = Exhaust pressure sensor: signal too high
code-P0544 = Exhaust temperature sensor 1, bank 1: fault in its circuit
code-P0545 = Exhaust temperature sensor 1, bank 1: signal too low
code-P0546 = Exhaust temperature sensor 1, bank 1: signal too high
code-P2031 = Exhaust temperature sensor 2, bank 1: fault in its circuit
code-P2032 = Exhaust temperature sensor 2, bank 1: signal too low
code-P2033 = Exhaust temperature sensor 2, bank 1: signal too high
code-P2452 = Pressure sensor of the particulate filter: fault in its circuit
code-P2453 = Pressure sensor of the particulate filter: signal not plausible
code-P2454 = Pressure sensor of the particulate filter: signal too low
code-P2455 = Pressure sensor of the particulate filter: signal too high
code-P2456 = Pressure sensor of the particulate filter: signal comes and goes
code-P2047 = Reductant injector: control circuit open
code-P2048 = Reductant injector: control circuit, voltage too low
code-P2049 = Reductant injector: control circuit, voltage too high
code-P203A = Reductant level sensor: fault in its circuit
code-P203B = Reductant level sensor: signal not plausible
code-P203C = Reductant level sensor: signal too low
code-P203D = Reductant level sensor: signal too high
code-P205A = Reductant temperature sensor: fault in its circuit
code-P205B = Reductant temperature sensor: signal not plausible
code-P2200 = Nitrogen oxides sensor, bank 1: fault in its circuit
code-P2201 = Nitrogen oxides sensor, bank 1: signal not plausible
code-P2202 = Nitrogen oxides sensor, bank 1: signal too low
code-P2203 = Nitrogen oxides sensor, bank 1: signal too high
code-P2002 = Particulate filter works too little, bank 1
code-P2003 = Particulate filter works too little, bank 2
code-P2080 = Exhaust temperature sensor 1, bank 1: signal not plausible
code-P2084 = Exhaust temperature sensor 2, bank 1: signal not plausible
code-P203F = Reductant nearly used up
code-P204F = Reductant system: does not work as it should
code-P207F = Reductant: quality not as it should be
code-P20BA = Reductant heater: does not work as it should
code-P20E8 = Reductant pressure too low
code-P20E9 = Reductant pressure too high
code-P20EE = Nitrogen oxides catalyst works too little, bank 1
code-P242F = Particulate filter full of ash
code-P244A = Particulate filter: pressure difference too small
code-P244B = Particulate filter: pressure difference too large
code-P2458 = Particulate filter: burning off takes too long
code-P2459 = Particulate filter burns off too often
code-P2463 = Particulate filter full of soot

## Speed, idle, brake switch

code-P0500 = Speed sensor: fault in its circuit
code-P0501 = Speed sensor: signal not plausible
code-P0502 = Speed sensor: signal too low
code-P0503 = Speed sensor: signal comes and goes
code-P0508 = Idle valve: control circuit, voltage too low
code-P0509 = Idle valve: control circuit, voltage too high
code-P0571 = Brake light switch: fault in its circuit
code-P0572 = Brake light switch: signal too low
code-P0573 = Brake light switch: signal too high
code-P0504 = The two contacts of the brake light switch do not agree
code-P0505 = Idle: not under control
code-P0506 = Idle slower than it should be
code-P0507 = Idle faster than it should be
code-P0511 = Idle valve: fault in its circuit
code-P0564 = Cruise control switches: fault in their circuit
code-P0575 = Cruise control: fault in its input circuit

## Oil pressure, steering pressure, air conditioning

code-P0520 = Oil pressure sensor: fault in its circuit
code-P0521 = Oil pressure sensor: signal not plausible
code-P0523 = Oil pressure sensor: signal too high
code-P0530 = Refrigerant pressure sensor: fault in its circuit
code-P0531 = Refrigerant pressure sensor: signal not plausible
code-P0532 = Refrigerant pressure sensor: signal too low
code-P0533 = Refrigerant pressure sensor: signal too high
code-P0550 = Power steering pressure sensor: fault in its circuit
code-P0551 = Power steering pressure sensor: signal not plausible
code-P0522 = Oil pressure sensor: signal too low
code-P0524 = Oil pressure too low
code-P0534 = Air conditioning: refrigerant lost
code-P0645 = Air conditioning clutch: fault in its relay circuit

## Voltage, charging, starting, immobiliser

code-P0512 = Starter: fault in the request circuit
code-P0513 = Immobiliser: key not the right one
code-P0560 = Supply voltage: not as it should be
code-P0561 = Supply voltage: unsteady
code-P0562 = Supply voltage too low
code-P0563 = Supply voltage too high
code-P0615 = Starter relay: fault in its circuit
code-P0616 = Starter relay: voltage too low
code-P0617 = Starter relay: voltage too high
code-P0620 = Alternator: fault in its control circuit
code-P0621 = Charge lamp: fault in its circuit
code-P0622 = Alternator: fault in its field circuit
code-P0625 = Alternator: field voltage too low
code-P0626 = Alternator: field voltage too high
code-P0633 = Immobiliser: key not programmed
code-P2502 = Charging: voltage not as it should be
code-P2503 = Charging: voltage too low
code-P2504 = Charging: voltage too high
code-P2509 = Feed of the engine control comes and goes
code-P2610 = Engine control: clock of the time at rest

## Control units and what feeds them

code-P0641 = Sensor supply A: circuit open
code-P0642 = Sensor supply A: signal too low
code-P0643 = Sensor supply A: signal too high
code-P0651 = Sensor supply B: circuit open
code-P0652 = Sensor supply B: signal too low
code-P0653 = Sensor supply B: signal too high
code-P0697 = Sensor supply C: circuit open
code-P0698 = Sensor supply C: signal too low
code-P0699 = Sensor supply C: signal too high
code-P0600 = Data link inside the engine control
code-P0601 = Engine control: memory checksum wrong
code-P0602 = Engine control: not programmed
code-P0603 = Engine control: lost its learnt values
code-P0604 = Engine control: working memory
code-P0605 = Engine control: program memory
code-P0606 = Engine control: processor
code-P0607 = Engine control: does not work as it should
code-P0610 = Engine control: equipment of the car set wrongly
code-P0630 = Engine control: identification number not entered
code-P0650 = Engine lamp: fault in its circuit
code-P0657 = Supply of the actuators: circuit open
code-P0658 = Supply of the actuators: voltage too low
code-P0685 = Main relay of the engine control: circuit open
code-P0686 = Main relay of the engine control: voltage too low
code-P0687 = Main relay of the engine control: voltage too high

## Gearbox

code-P0705 = Gear selector sensor: fault in its circuit
code-P0706 = Gear selector sensor: signal not plausible
code-P0707 = Gear selector sensor: signal too low
code-P0708 = Gear selector sensor: signal too high
code-P0710 = Gearbox oil temperature sensor: fault in its circuit
code-P0711 = Gearbox oil temperature sensor: signal not plausible
code-P0712 = Gearbox oil temperature sensor: signal too low
code-P0713 = Gearbox oil temperature sensor: signal too high
code-P0715 = Input speed sensor of the gearbox: fault in its circuit
code-P0716 = Input speed sensor of the gearbox: signal not plausible
code-P0720 = Output speed sensor of the gearbox: fault in its circuit
code-P0721 = Output speed sensor of the gearbox: signal not plausible
code-P0218 = Gearbox oil overheats
code-P0700 = Gearbox control has codes of its own: have them read
code-P0701 = Gearbox control: not plausible
code-P0702 = Gearbox control: electrical fault
code-P0703 = Brake light switch, second contact: fault in its circuit
code-P0704 = Clutch pedal switch: fault in its circuit
code-P0717 = Input speed sensor of the gearbox: no signal
code-P0722 = Output speed sensor of the gearbox: no signal
code-P0725 = Engine speed signal to the gearbox: fault in its circuit
code-P0730 = Gearbox: ratio not that of the gear
code-P0731 = Gearbox slips in first gear
code-P0732 = Gearbox slips in second gear
code-P0733 = Gearbox slips in third gear
code-P0734 = Gearbox slips in fourth gear
code-P0735 = Gearbox slips in fifth gear
code-P0729 = Gearbox slips in sixth gear
code-P0736 = Gearbox slips in reverse
code-P0740 = Lock-up clutch of the converter: fault in its circuit
code-P0741 = Lock-up clutch of the converter slips or does not close
code-P0742 = Lock-up clutch of the converter does not let go
code-P0743 = Lock-up clutch of the converter: electrical fault
code-P0745 = Pressure valve A of the gearbox: fault
code-P0746 = Pressure valve A of the gearbox: stays off or works too little
code-P0748 = Pressure valve A of the gearbox: electrical fault
code-P0750 = Shift valve A: fault
code-P0751 = Shift valve A stays off
code-P0752 = Shift valve A stays on
code-P0753 = Shift valve A: electrical fault
code-P0755 = Shift valve B: fault
code-P0756 = Shift valve B stays off
code-P0757 = Shift valve B stays on
code-P0758 = Shift valve B: electrical fault
code-P0760 = Shift valve C: fault
code-P0763 = Shift valve C: electrical fault
code-P0765 = Shift valve D: fault
code-P0768 = Shift valve D: electrical fault
code-P0775 = Pressure valve B of the gearbox: fault
code-P0776 = Pressure valve B of the gearbox: stays off or works too little
code-P0780 = Gearbox: fault while shifting
code-P0830 = Clutch pedal switch A: fault in its circuit
code-P0840 = Oil pressure sensor of the gearbox: fault in its circuit
code-P0841 = Oil pressure sensor of the gearbox: signal not plausible
code-P0868 = Gearbox oil pressure too low
code-P0882 = Gearbox control: supply voltage too low
code-P0894 = Gearbox: something inside slips
code-P0897 = Gearbox oil worn out

## Hybrid and electric drive

code-P0A05 = Coolant pump of the drive electronics: circuit open
code-P0A08 = Converter for the 12 V supply: fault in its status circuit
code-P0A0C = High-voltage safety loop: signal too low
code-P0A0D = High-voltage safety loop open
code-P0A0F = Engine did not start when it was asked to
code-P0A1F = Control unit of the drive battery
code-P0A78 = Inverter of the drive motor: does not work as it should
code-P0A7D = Drive battery nearly empty
code-P0A7F = Drive battery worn
code-P0A80 = Drive battery at its end
code-P0A81 = Fan of the drive battery: fault in its circuit
code-P0A82 = Fan of the drive battery: turns too slowly
code-P0A93 = Cooling of the inverter: does not work as it should
code-P0A94 = Converter for the 12 V supply: does not work as it should
code-P0A9C = Temperature sensor of the drive battery: signal not plausible
code-P0AA1 = Main contactor of the drive battery (plus) stays shut
code-P0AA4 = Main contactor of the drive battery (minus) stays shut
code-P0AA6 = High-voltage insulation too low
code-P0AFA = Drive battery: voltage too low
code-P0BBD = Drive battery: blocks differ too much from one another

## Brakes, steering, wheels

code-C0035 = Wheel speed sensor front left: fault in its circuit
code-C0040 = Wheel speed sensor front right: fault in its circuit
code-C0045 = Wheel speed sensor rear left: fault in its circuit
code-C0050 = Wheel speed sensor rear right: fault in its circuit
code-C0051 = Steering angle sensor: fault
code-C0077 = Tyre pressure low
code-C0110 = Pump motor of the anti-lock brakes: fault in its circuit
code-C0121 = Valve relay of the anti-lock brakes: fault in its circuit
code-C0161 = Brake light switch signal to the anti-lock brakes
code-C0186 = Sideways acceleration sensor: fault
code-C0196 = Turning rate sensor: fault
code-C0545 = Steering torque sensor: fault
code-C0561 = Stability control switched off by a fault elsewhere
code-C0750 = Tyre pressure sensor front left
code-C0755 = Tyre pressure sensor front right
code-C0760 = Tyre pressure sensor rear left
code-C0765 = Tyre pressure sensor rear right
code-C0899 = Chassis control unit: supply voltage too low
code-C0900 = Chassis control unit: supply voltage too high

## Airbags and belts (workshop only)

code-B0001 = Driver airbag, first stage: fault in its circuit
code-B0002 = Driver airbag, second stage: fault in its circuit
code-B0010 = Passenger airbag, first stage: fault in its circuit
code-B0011 = Passenger airbag, second stage: fault in its circuit
code-B0020 = Side airbag left: fault in its circuit
code-B0028 = Side airbag right: fault in its circuit
code-B0070 = Driver belt tensioner: fault in its circuit
code-B0072 = Passenger belt tensioner: fault in its circuit
code-B0081 = Passenger seat sensor: fault
code-B0090 = Crash sensor front left: fault
code-B0095 = Crash sensor front right: fault

## Network between control units

code-U0001 = Fast data network: does not work as it should
code-U0073 = A control unit has left the data network
code-U0100 = No contact with the engine control
code-U0101 = No contact with the gearbox control
code-U0103 = No contact with the gear selector
code-U0107 = No contact with the throttle control
code-U0109 = No contact with the fuel pump control
code-U0111 = No contact with the drive battery control
code-U0121 = No contact with the anti-lock brakes
code-U0122 = No contact with the stability control
code-U0126 = No contact with the steering angle sensor
code-U0128 = No contact with the parking brake control
code-U0129 = No contact with the brake control
code-U0131 = No contact with the power steering
code-U0140 = No contact with the body control
code-U0146 = No contact with the gateway between networks
code-U0151 = No contact with the airbag control
code-U0155 = No contact with the instruments
code-U0164 = No contact with the climate control
code-U0167 = No contact with the immobiliser
code-U0184 = No contact with the radio
code-U0199 = No contact with the door control
code-U0212 = No contact with the steering column control
code-U0235 = No contact with the distance sensor of the cruise control
code-U0300 = Programs of the control units do not fit one another
code-U0401 = Engine control sends values that are not plausible
code-U0402 = Gearbox control sends values that are not plausible
code-U0415 = Anti-lock brakes send values that are not plausible
code-U0422 = Body control sends values that are not plausible
code-U0423 = Instruments send values that are not plausible
code-U3000 = A control unit has a fault of its own
code-U3003 = A control unit measures a wrong supply voltage
