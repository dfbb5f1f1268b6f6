profile slim = flat(width: 4 mm, height: 2 mm, edge: 0.2 mm)
band shank { finger ISO 57  profile slim  metal platinium-950 }
band guard { finger ISO 57  profile slim  metal redd-gold-585 }
