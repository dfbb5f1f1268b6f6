breadth = 1/4 in
