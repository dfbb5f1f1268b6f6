finger-size = UK N1/2
