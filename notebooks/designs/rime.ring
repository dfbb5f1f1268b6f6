# Rime: a full round of brilliants in white gold, two pins to a gap.
# Fully set rings cannot be sized afterwards: the finger is measured twice, warm and cold.

title "Rime"

finger-size = ISO 53   because "measured twice, on different days"
breadth     = 3.4 mm   between 3 mm and 4.5 mm

profile slim = flat(width: breadth, height: 2.2 mm, edge: 0.2 mm)

band shank {
  finger   finger-size
  profile  slim
  metal    white-gold-750-pd
}

stone-row frost on shank {
  stone    round diamond 1.7 mm within 0.02 mm
  around   full
  spacing  at least 0.2 mm
  sink     0.1 mm
}

cut seats for frost from shank {
  hole       0.9 mm
  bearing    0.4 mm
  clearance  0.02 mm
  deburr     0.1 mm
  made at bench
}

prongs pins for frost on shank {
  diameter    0.65 mm
  rise        0.34 mm
  root        0.6 mm
  reach       0.12 mm
  set-height  0.24 mm
}

show ring
show weights
show stones
show checks
