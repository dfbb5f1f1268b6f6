x = 1/0 mm
