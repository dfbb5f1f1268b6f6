vary finger-size from US 4 to US 10 step 1/2, breadth over 4 mm, 5 mm { weight(shank), count(lights) }
vary breadth, thickness from 1 mm to 2 mm
vary shank-metal over platinum-950-ru, white-gold-585-pd, breadth over 4 mm {
  per-mm = weight(shank) / breadth
  per-mm
  weight(shank)
    + weight(stripe)
}
