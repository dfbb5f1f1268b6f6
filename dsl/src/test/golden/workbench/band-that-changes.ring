profile dome = d-shape(width: 4.6 mm, height: 2.1 mm, side: 1.3 mm)
profile slim = half-round(width: 3.4 mm, height: 1.6 mm)

band shank {
  finger   ISO 57
  profile  dome at 0 deg, slim at 180 deg
  metal    silver-925
}

cut trough from shank {
  width   1.6 mm
  depth   0.9 mm
  around  150 deg
  ends    round
  keep    stripe in red-gold-585
}

stone-row lights on stripe {
  stone    round diamond 1.2 mm
  around   130 deg
  spacing  at least 0.15 mm
  sink     0.2 mm
}

cut seats for lights from stripe, shank { hole 0.6 mm  bearing 0.25 mm  clearance 0.01 mm }
prongs pins for lights on stripe { diameter 0.4 mm  rise 0.25 mm  root 0.4 mm  across 0.4 mm }

show weights
show section of ring at 0 deg
show section of ring at 180 deg
count(lights)
gap(lights)
pitch(lights)
width(shank)
height(ring)
wall(shank)
