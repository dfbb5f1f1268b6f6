profile hook = outline { start (-2 mm, 0 mm)  line to (2 mm, 0 mm)  line to (2 mm, 0.5 mm)  line to (-1.7 mm, 0.5 mm)  line to (-1.7 mm, 2 mm)  line to (1.5 mm, 2 mm)  line to (1.5 mm, 2.5 mm)  line to (-2 mm, 2.5 mm) }
profile eye = outline { start (-2 mm, 0 mm)  line to (2 mm, 0 mm)  line to (2 mm, 2.5 mm)  line to (-1.5 mm, 2.5 mm)  line to (-1.5 mm, 2 mm)  line to (1.7 mm, 2 mm)  line to (1.7 mm, 0.5 mm)  line to (-2 mm, 0.5 mm) }
band shank { finger ISO 57  profile hook at 0 deg, eye at 180 deg  metal silver-925 }
