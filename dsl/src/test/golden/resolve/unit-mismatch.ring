breadth = 4.6 mm
thickness = breadth + 2 g
slope = 30 deg
both = 5 mm - 3
same = breadth = 4
size = US 7 + 1 mm
sum = US 7 + US 8
rest = 3 - US 7
truth = "a" < 5 mm
chain = 1 mm < breadth < slope
range = 5 mm between 1 g and 2 g
measured weight(ring) = 3 mm
price = 3 EUR + 4 USD
