a = 5 grams
b = 3 tola
c = x in ounces
d = 4 MM
