# Mooring line: oval sapphires lying along the band, all the way round.

title "Mooring line"

finger-size = ISO 53

profile plain = flat(width: 4.4 mm, height: 2.7 mm, edge: 0.3 mm)

band shank {
  finger   finger-size
  profile  plain
  metal    yellow-gold-750
}

stone-row buoys on shank {
  stone    oval sapphire 4 mm by 3 mm within 0.02 mm
  around   full
  spacing  at least 0.3 mm
  sink     0.1 mm
}

cut seats for buoys from shank {
  hole       1.4 mm
  clearance  0.02 mm
  deburr     0.1 mm
  made at bench
}

prongs pins for buoys on shank {
  diameter    0.9 mm
  rise        0.6 mm
  root        0.8 mm
  reach       0.2 mm
  set-height  0.4 mm
}

show ring
show weights
show stones
show checks
