option "broad" { breadth = 5 mm  thickness = 1.7 mm }
