profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)

band shank {
  finger   ISO 57
  profile  dome
  metal    silver-925
}

cut first from shank { width 1 mm depth 0.5 mm keep one in red-gold-585 }
cut second from shank { width 1 mm depth 0.4 mm across 0.3 mm keep two in red-gold-585 }
