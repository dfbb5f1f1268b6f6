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

vary finger-size from US 4 to US 10 step 1/2, breadth over 4 mm, 5 mm { weight(shank), count(lights) }
