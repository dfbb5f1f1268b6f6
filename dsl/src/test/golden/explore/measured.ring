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

measured weight(shank) = 5.0 g because "first casting"
measured weight(shank) = 5.15 g because "second casting"
measured height(shank) = 1.93 mm

show weight(shank)
show weights
