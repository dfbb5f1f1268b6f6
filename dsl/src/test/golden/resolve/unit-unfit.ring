breadth = 4 mm
a = breadth in g
