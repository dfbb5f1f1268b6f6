profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)
band shank { finger ISO 57  profile dome  metal silver-925 }
cut trough from shank { width 1.6 mm  depth 0.8 mm  around 120 deg  keep stripe in red-gold-585 }
stone-row lights on stripe { stone round diamond 1.2 mm  around 140 deg  spacing at least 0.15 mm  sink 0.2 mm }
