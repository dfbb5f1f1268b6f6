profile left = outline { start (-2 mm, 0 mm)  line to (2 mm, 0 mm)  line to (2 mm, 0.4 mm)  line to (-1.6 mm, 0.4 mm)  line to (-1.6 mm, 3 mm)  line to (-2 mm, 3 mm) }
profile right = outline { start (-2 mm, 0 mm)  line to (2 mm, 0 mm)  line to (2 mm, 3 mm)  line to (1.6 mm, 3 mm)  line to (1.6 mm, 0.4 mm)  line to (-2 mm, 0.4 mm) }
band shank { finger ISO 57  profile left at 0 deg, right at 180 deg  metal silver-925 }
