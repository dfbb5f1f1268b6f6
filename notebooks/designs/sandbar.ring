# Sandbar: a red stripe let into a pale band.
# A closed stripe cannot pass a shoulder wider than itself, so one flank is a ring of its own, the collar.

title "Sandbar"

finger-size = ISO 60
breadth     = 6 mm     between 5.5 mm and 8 mm

profile plain = flat(width: breadth, height: 2.2 mm, edge: 0.25 mm)

band shank {
  finger   finger-size allow 1/2 US
  profile  plain
  metal    white-gold-585-pd
}

cut trough from shank {
  width   2.4 mm
  depth   0.9 mm
  keep    stripe in red-gold-585
  fit     0.04 mm
  let-in  from fingertip leaving collar
  joined by solder
}

show ring
show section of ring
show weights
show checks
