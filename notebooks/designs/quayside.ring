# Quayside: a plain court ring, the shape most wedding rings have.
# Curved inside and out, it turns easily over the knuckle and shows no edge to catch on.

title "Quayside"

finger-size = ISO 56
breadth     = 4 mm     between 2.5 mm and 6 mm
thickness   = 2 mm     between 1.9 mm and 2.4 mm   because "worn every day, by a joiner"

profile court-section = court(width: breadth, height: thickness, side: 1.45 mm, inside: 0.2 mm, edge: 0.15 mm)

band shank {
  finger   finger-size
  profile  court-section
  metal    yellow-gold-750
}

show ring
show section of ring
show weights
show checks
