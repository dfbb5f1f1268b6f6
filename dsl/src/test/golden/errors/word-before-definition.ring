let breadth = 4 mm
