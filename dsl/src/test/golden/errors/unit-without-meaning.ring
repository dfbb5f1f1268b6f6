a = 5 g^2
b = 5 mm^4
