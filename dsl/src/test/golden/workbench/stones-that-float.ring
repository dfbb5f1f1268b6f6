profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)

band shank {
  finger   ISO 57
  profile  dome
  metal    silver-925
}

stone-row lights on shank { stone round diamond 1.5 mm around full count 20 sink 0 mm - 2 mm }
