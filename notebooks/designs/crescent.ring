# Crescent: a yellow inlay over the top third of a dark-grey palladium band.
# On an arc the inlay is pushed in along the radius; nothing has to slide over a shoulder.

title "Crescent"

finger-size = ISO 52

profile soft = flat-court(width: 5 mm, height: 2.1 mm, inside: 0.2 mm, edge: 0.35 mm)

band shank {
  finger   finger-size allow 1/2 US
  profile  soft
  metal    palladium-950
}

cut bed from shank {
  width   2.2 mm
  depth   0.9 mm
  around  130 deg centred 0 deg
  ends    round
  keep    moon in yellow-gold-750
  fit     0.04 mm
  joined by solder
}

show ring
show section of ring
show weights
show checks
