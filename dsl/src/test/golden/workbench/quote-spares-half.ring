profile slim = flat(width: 4 mm, height: 2 mm, edge: 0.2 mm)
band shank { finger ISO 57  profile slim  metal silver-925 }
quote { metal 1.2 EUR/g  spares 0.5 }
