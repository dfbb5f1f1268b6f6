profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)
band shank { finger ISO 57  profile dome  metal white-gold-750-pd }
cut line from shank { width 1 mm  depth 0.6 mm  made at bench }

measured weight(shank) = 7.99 g because "before the line was cut"
measured weight(shank) = 7.1 g
measured weight(shank) = 4 g
