# Ridgeline: two slopes that meet in a line, and a wall at either side.
# The ridge is rounded a little: a true knife edge wears round within weeks and feels sharp until then.

title "Ridgeline"

finger-size = ISO 53
breadth     = 3.6 mm   between 3 mm and 5 mm
thickness   = 2.3 mm   between 2 mm and 2.6 mm

profile ridge = knife-edge(width: breadth, height: thickness, side: 1.3 mm, edge: 0.2 mm)

band shank {
  finger   finger-size
  profile  ridge
  metal    rose-gold-750
}

show ring
show section of ring
show weights
show checks
