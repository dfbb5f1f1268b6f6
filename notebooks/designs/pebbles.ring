# Pebbles: a slim half-round silver band, made to be worn three together.
# Three are made alike and differ by metal alone, so the first is the whole text.

title "Pebbles"

finger-size = US 6 1/2
breadth     = 2.4 mm   between 2 mm and 3 mm

profile pebble = d-shape(width: breadth, height: 1.7 mm, side: 0.9 mm, edge: 0.2 mm)

metal-of-this = silver-925

band shank {
  finger   finger-size
  profile  pebble
  metal    metal-of-this
}

option "the warm one"  { metal-of-this = rose-gold-750 }
option "the grey one"  { metal-of-this = palladium-950 }

show ring
show options
show checks
