# A two-tone band: palladium white outside, a red stripe let into the middle, set all the way round.
title "Harbour light"

finger-size = ISO 57
breadth     = 4.6 mm   between 3 mm and 8 mm   because "level with the ring worn beside it"
thickness   = 1.9 mm

profile dome = d-shape(width: breadth, height: thickness, side: 1.25 mm)

band shank {
  finger   finger-size
  profile  dome
  metal    white-gold-585-pd
}

cut trough from shank {
  width   1.9 mm
  depth   1 mm
  keep    stripe in red-gold-585
  let-in  from fingertip leaving collar
  joined  by solder
  fit     0.05 mm
}

stone-row lights on stripe {
  stone    round diamond 1.5 mm within 0.02 mm
  around   full
  spacing  at least 0.15 mm
  sink     0.25 mm
}

cut seats for lights from stripe, shank {
  hole       0.8 mm
  bearing    0.35 mm
  clearance  0.01 mm
  deburr     0.1 mm
  made       at bench
}

prongs pins for lights on stripe {
  diameter  0.55 mm
  rise      0.28 mm
  root      0.6 mm
  across    0.42 mm
  set-height 0.21 mm
}


limit casting-wall 0.3 mm because "our caster holds this in gold"
limit culet-to-finger 0.3 mm because "drilled through"

show checks
show ring
