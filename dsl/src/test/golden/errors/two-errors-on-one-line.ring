thickness = 1,3 mm + 5 in
