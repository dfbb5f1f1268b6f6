show ring
show shank, stripe from top
show shank from three-quarter
show ring from 30 deg
show ring as set
show shank, stripe as cast from top
show shank as cast
show set
show views
show views of shank, stripe
show section of ring at 0 deg
show section of shank, stripe 90 deg
show section
show layout of lights
show weights
show weights in all metals
show stones
show checks
show decisions
show blank
show steps
show options
show fingerprint
show size
show weight(shank) in dwt
show (stones)
weight(ring)
ring
stones
view ring
view shank, stripe
