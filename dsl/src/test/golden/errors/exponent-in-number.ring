x = 1e3 mm
