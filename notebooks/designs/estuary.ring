# Estuary: narrow at the palm, where the fingers meet, and broad at the top, where it is seen.

title "Estuary"

finger-size = ISO 54
top-breadth = 7 mm     between 5 mm and 8 mm   because "broad enough to carry a crest later"
palm        = 3 mm     between 2.4 mm and 4 mm because "narrow between the fingers"

profile top    = d-shape(width: top-breadth, height: 2.4 mm, side: 1.3 mm, edge: 0.3 mm)
profile bottom = d-shape(width: palm, height: 1.6 mm, side: 1 mm, edge: 0.2 mm)

band shank {
  finger   finger-size allow 1/2 US
  profile  top at 0 deg, bottom at 180 deg
  metal    yellow-gold-585
}

show ring
show section of ring at 0 deg
show section of ring at 180 deg
show weights
show checks
