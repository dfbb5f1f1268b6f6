profile p = d-shape(width 4 mm, height: 2 mm)
profile q = flat(width: 4 mm, height thickness)
