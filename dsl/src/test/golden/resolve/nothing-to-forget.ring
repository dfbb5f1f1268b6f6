breadth = 4 mm
forget bredth
