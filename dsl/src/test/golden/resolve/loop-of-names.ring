breadth = shoulder * 2
shoulder = depth + 1 mm
depth = breadth / 4
height = depth
itself = itself + 1
