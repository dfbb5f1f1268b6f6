thickness = 1,3 mm
