a = breadth-1 mm
b = breadth-0.5 mm
c = 5 mm-2 mm
