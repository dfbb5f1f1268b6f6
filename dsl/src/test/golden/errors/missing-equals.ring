breadth 4.6 mm
profile dome d-shape(width: 1 mm)
what-if breadth 5 mm
