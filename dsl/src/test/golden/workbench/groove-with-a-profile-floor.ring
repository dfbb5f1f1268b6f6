profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)

band shank {
  finger   ISO 57
  profile  dome
  metal    silver-925
}

profile round-floor = half-round(width: 1 mm, height: 0.5 mm)
profile bowl = outline { start (-0.5 mm, 0.5 mm)  arc through (0 mm, 0 mm) to (0.5 mm, 0.5 mm)  line to (-0.5 mm, 0.5 mm) }
cut trough from shank { profile bowl depth 0.6 mm keep stripe in red-gold-585 fit 0.05 mm }
show weights
