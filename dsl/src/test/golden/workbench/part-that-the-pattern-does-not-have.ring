profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)

band shank {
  finger   ISO 57
  profile  dome
  metal    silver-925
}

cut trough from shank { width 1.9 mm depth 1 mm keep stripe in red-gold-585 let-in cast made at bench }
weight(shank, pattern)
weight(stripe, pattern)
