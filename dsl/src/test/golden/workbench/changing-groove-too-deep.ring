profile dome = d-shape(width: 4.6 mm, height: 2.1 mm, side: 1.3 mm)
profile slim = d-shape(width: 3 mm, height: 1.3 mm, side: 0.9 mm)
band shank { finger ISO 57  profile dome at 0 deg, slim at 180 deg  metal silver-925 }
cut trough from shank { width 1.6 mm  depth 1.4 mm }
