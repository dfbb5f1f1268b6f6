# Keel: red gold inside, where only the wearer knows it.

title "Keel"

finger-size = ISO 59

profile hull = flat(width: 5.5 mm, height: 2.3 mm, edge: 0.35 mm)

band shank {
  finger   finger-size allow 1/2 US
  profile  hull
  metal    platinum-950-ru
}

cut lining-groove from shank {
  inside
  width   2.5 mm
  depth   0.9 mm
  keep    lining in red-gold-750
  let-in  from fingertip leaving collar
  fit     0.04 mm
  joined by solder
}

show ring
show section of ring
show weights
show checks
