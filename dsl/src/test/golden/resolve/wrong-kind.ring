breadth = 4 mm
a = not breadth
b = - "text"
c = diameter(breadth)
d = if breadth then 1 else 2
e = fineness(breadth)
f = breadth in US
require breadth
h = 2 ^ breadth
i = breadth = 4 mm within 1 deg
profile dome = flat(width: 4 mm, height: 2 mm)
band shank { finger ISO 54 profile dome metal breadth }
stone-row lights on shank { stone round breadth 1.5 mm count 5 }
