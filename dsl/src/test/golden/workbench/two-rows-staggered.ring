profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)

band shank {
  finger   ISO 57
  profile  dome
  metal    silver-925
}

stone-row lights on shank { stone round diamond 1 mm around full count 48 sink 0.2 mm across -0.7 mm, 0.7 mm staggered }
cut seats for lights from shank { hole 0.5 mm clearance 0.01 mm }
show weights
show stones
pitch(lights)
depth-left(lights)
count(ring)
carats(ring)
