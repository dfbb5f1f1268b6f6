breadth = 4 mm between 3 mm and 8 mm
profile dome = d-shape(width: breadth, height: 1.9 mm, side: 1.25 mm)
band shank { finger ISO 57  profile dome  metal silver-925 }
band guard { finger ISO 57  profile dome  metal silver-925 }

vary breadth from 3.5 mm to 3.51 mm step 0.0025 mm
