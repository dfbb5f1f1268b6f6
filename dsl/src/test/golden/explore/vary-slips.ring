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

vary bredth from 3 mm to 4 mm { weight(shank) }
vary shank from 3 mm to 4 mm { weight(shank) }
vary finger-size { weight(shank) }
vary breadth from 3 mm to 4 mm step 0 mm { weight(shank) }
vary breadth from 3 mm to 4 mm step -0.1 mm { weight(shank) }
vary breadth from 3 mm to 4 mm step 1 g { weight(shank) }
vary finger-size from US 4 to US 6 step 1 mm { weight(shank) }
vary breadth from 3 g to 4 mm { weight(shank) }
vary breadth over 3 mm, US 7 { weight(shank) }
vary breadth from 5 mm to 4 mm { weight(shank) }
vary breadth from 4 mm to 4 mm { weight(shank) }
vary shank-metal from silver-925 to platinum-950-ru { weight(shank) }
vary breadth from 3 mm to 4 mm step 0.000001 mm { weight(shank) }
vary breadth from 3 mm to 4 mm step 0.01 mm, thickness from 1.5 mm to 2 mm step 0.0001 mm { weight(shank) }
vary breadth, breadth over 3 mm { weight(shank) }
vary breadth over 3 mm { per-mm = weight(shank) / breadth }
vary breadth over 3 mm { shank = 4 mm, breadth }
vary breadth over 3 mm { a = 4 mm, a = 5 mm, a }
vary breadth over 3 mm { weight(shank) + 1 mm }
vary breadth over 3 mm { weight(shnk) }
