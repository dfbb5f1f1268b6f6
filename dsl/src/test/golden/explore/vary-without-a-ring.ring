breadth = 4 mm
vary breadth from 3 mm to 4 mm
