profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)

band shank {
  finger   ISO 57
  profile  dome
  metal    silver-925
}

stone-row lights on shank { stone princess diamond 1.5 mm  around full  count 20  sink 0.25 mm }
cut seats for lights from shank { hole 0.8 mm  clearance 0.01 mm }
