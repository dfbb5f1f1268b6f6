profile lens = outline { start (-2 mm, 0.4 mm)  arc through (0 mm, 0 mm) to (2 mm, 0.4 mm)  arc through (0 mm, 0.8 mm) to (-2 mm, 0.4 mm) }
band shank { finger ISO 57  profile lens  metal silver-925 }
wall(shank)
