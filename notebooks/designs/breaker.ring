# Breaker: a section of our own, drawn point by point: a crest that leans to the fingertip.

title "Breaker"

finger-size = ISO 58

profile crest = outline {
  start (-2.4 mm, 0.25 mm)
  arc through (0 mm, 0 mm) to (2.4 mm, 0.25 mm)
  line to (2.4 mm, 1.5 mm)
  arc through (1.9 mm, 2.15 mm) to (1.2 mm, 2.3 mm)
  arc through (-0.7 mm, 1.9 mm) to (-2.2 mm, 1.7 mm)
  line to (-2.4 mm, 1.6 mm)
}

band shank {
  finger   finger-size
  profile  crest
  metal    silver-925
}

show ring
show section of ring
show weights
show checks
