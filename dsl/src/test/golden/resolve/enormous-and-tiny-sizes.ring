profile large = flat(width: 4000 mm, height: 2 mm)
profile small = flat(width: 0.0000001 mm, height: 2 mm)
profile nearly = d-shape(width: 4 mm, height: 2 mm, side: 1.9999999 mm, edge: 0.0000001 mm)
