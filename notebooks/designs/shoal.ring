# Shoal: two staggered rows, each stone in the gap of its neighbours, all the way round.

title "Shoal"

finger-size = ISO 55

profile wide = flat(width: 5.6 mm, height: 2.2 mm, edge: 0.25 mm)

band shank {
  finger   finger-size allow 1/2 US
  profile  wide
  metal    white-gold-750-pd
}

stone-row fish on shank {
  stone    round diamond 1.5 mm within 0.02 mm
  around   full
  spacing  at least 0.3 mm
  sink     0.1 mm
  across   -0.95 mm, 0.95 mm
  staggered
}

cut seats for fish from shank {
  hole       0.8 mm
  bearing    0.35 mm
  clearance  0.02 mm
  deburr     0.1 mm
  made at bench
}

prongs pins for fish on shank {
  diameter    0.58 mm
  rise        0.3 mm
  root        0.5 mm
  reach       0.1 mm
  set-height  0.2 mm
}

show ring
show weights
show stones
show checks
