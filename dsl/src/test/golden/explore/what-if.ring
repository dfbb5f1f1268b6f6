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

require weight(shank) <= 5.5 g

what-if finger-size = US 8 1/2, breadth = breadth + 0.9 mm, shank-metal = platinum-950-ru {
  weight(shank)
  gap(lights), count(lights)
  per-stone = weight(shank) / count(lights)
  per-stone
}
what-if thickness = 2 mm
