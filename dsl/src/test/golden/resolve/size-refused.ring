finger-size = US 400
smaller = US 1 - 5
half = UK N 3/2
