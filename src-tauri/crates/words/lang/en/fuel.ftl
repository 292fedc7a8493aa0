# What a car runs on, and the units in which it is told how much of it: said on screen and on the full report.

fuel-kind-petrol = Petrol
fuel-kind-diesel = Diesel
fuel-kind-gas = Gas
fuel-kind-electric = Electricity
use-litres-per-100-km = L/100 km
use-km-per-litre = km/L
use-miles-per-us-gallon = mpg (US)
use-miles-per-imperial-gallon = mpg (imperial)
use-kwh-per-100-km = kWh/100 km
use-miles-per-kwh = mi/kWh
