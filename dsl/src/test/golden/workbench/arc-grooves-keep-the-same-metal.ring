profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)
band shank { finger ISO 57  profile dome  metal silver-925 }
cut first from shank { width 1.6 mm  depth 0.8 mm  around 120 deg  keep one in red-gold-585 }
cut second from shank { width 1.6 mm  depth 0.8 mm  around 60 deg centred 80 deg  keep two in red-gold-585 }
