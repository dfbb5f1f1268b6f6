profile dome = flat(width: 4 mm, height: 2 mm)
profile slim = flat(width: 3 mm, height: 1.5 mm)
profile low = outline { start (-2 mm, -0.5 mm) line to (2 mm, -0.5 mm) line to (2 mm, 1 mm) line to (-2 mm, 1 mm) }
band a { finger ISO 54 profile dome at 0 deg, slim metal silver-925 }
band b { finger ISO 54 profile dome at -30 deg, slim at 330 deg metal silver-925 }
band c { finger ISO 54 profile low metal silver-925 }
