breadth = 5 mm
thickness = 2 mm
profile one = court(breadth, thickness)
profile two = court(thickness, width: breadth, side: 1 mm)
profile three = flat(breadth, thickness, 0.2 mm, 0.1 mm)
profile four = bulged(breadth)
