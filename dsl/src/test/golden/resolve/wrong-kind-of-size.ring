weight-limit = 6 g
profile dome = flat(width: weight-limit, height: 2)
profile sound = flat(width: 4 mm, height: 2 mm)
band shank { finger 17 mm profile sound metal silver-925 }
band wide { finger ISO 54 allow 1 mm profile sound metal silver-925 }
cut trough from wide { width 1 mm depth 1 mm around 5 mm }
