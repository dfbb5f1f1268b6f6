# One missing name in many lines is told once.
profile slim = flat(width: breadth, height: 2 mm, edge: 0.2 mm)
other = breadth + 1 mm
third = breadth + 2 mm
fourth = other + third
show breadth
