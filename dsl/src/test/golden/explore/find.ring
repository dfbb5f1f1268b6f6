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
stone-row lights on shank {
  stone    round diamond 1.5 mm
  around   full
  spacing  at least 0.15 mm
  sink     0.25 mm
}

require breadth < 5 mm

find largest breadth with weight(shank) <= 6 g
find smallest thickness with weight(shank) >= 5 g and wall(shank) >= 1.2 mm
find smallest breadth with weight(shank) <= 6 g
find largest breadth with weight(shank) <= 3 g
find largest breadth with weight(shank) between 4 g and 5 g
