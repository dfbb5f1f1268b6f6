breadth = 4
profile slim = flat(width: breadth, height: 2 mm, edge: 0.2 mm)
band shank { finger ISO 57  profile slim  metal silver-925 }
