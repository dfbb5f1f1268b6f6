# Sluice: sapphire baguettes across the top, walls at their ends.

title "Sluice"

finger-size = ISO 55

profile block = flat-court(width: 5 mm, height: 2.7 mm, inside: 0.2 mm, edge: 0.25 mm)

band shank {
  finger   finger-size allow 1/2 US
  profile  block
  metal    yellow-gold-750
}

stone-row blades on shank {
  stone    baguette sapphire 1.5 mm by 2.5 mm within 0.02 mm
  around   100 deg centred 0 deg
  spacing  0.08 mm
  sink     0.5 mm
}

cut slot for blades from shank {
  channel {
    width  90 %
    notch  0.15 mm
    lip    0.15 mm
    floor  1 mm
  }
  hole       0.6 mm
  deburr     0.1 mm
  clearance  0.02 mm
  made at bench
}

show ring
show section of ring
show weights
show stones
show checks
