profile dome = flat(width: 4 mm, height: 2 mm)
band shank { finger ISO 54 profile dome metal silver-925 }
cut trough from shank { width 1 mm depth 1 mm around 400 deg }
