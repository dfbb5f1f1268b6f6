finger-size = ISO 57
breadth     = 4.6 mm   between 3 mm and 8 mm
thickness   = 1.9 mm   between 1.4 mm and 2.6 mm step 0.2 mm
shank-metal = silver-925

profile dome = d-shape(width: breadth, height: thickness, side: 1.25 mm)

band shank {
  finger   finger-size
  profile  dome
  metal    shank-metal
}

find largest bredth with weight(shank) <= 6 g
find largest finger-size with weight(shank) <= 6 g
find largest breadth with weight(shank)
find largest breadth with weight(shank) <= 6 mm
find largest breadth with thickness > 1 mm
find largest shank with weight(shank) <= 6 g
