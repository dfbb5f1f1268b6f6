breadth = 9 mm between 3 mm and 8 mm
thickness = 2 mm between 3 mm and 1 mm
size = US 12 between US 4 and US 10 step 1/2
depth = 1 mm between 0 mm and 2 mm step 0 mm
sink = 1 mm between 0 mm and 2 mm step 1 g
