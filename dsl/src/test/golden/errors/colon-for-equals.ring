breadth: 4 mm
depth := 1 mm
