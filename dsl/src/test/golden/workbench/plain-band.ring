profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)

band shank {
  finger   ISO 57
  profile  dome
  metal    silver-925
}

title "Plain"
weight(shank)
volume(shank)
surface(shank)
wall(shank)
width(shank)
height(shank)
density(shank)
weight(shank) in dwt
weight(ring)
show weights
show size
show blank
show fingerprint
require weight(shank) < 4 g   because "the scale of the post"
require width(shank) between 4 mm and 5 mm
