a = 1 mm +
b = 2 mm
