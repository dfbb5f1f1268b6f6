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

require gap(lights) >= 0.152 mm
require breadth < 7 mm   because "it hides the joint"

vary breadth from 2 mm to 10 mm step 1 mm, thickness over 1.2 mm, 2 mm { weight(shank), if breadth > 4 mm then true else false }
