hers = UK N 1/2
his = US 10 1/4
breadth = 4 mm
show size
