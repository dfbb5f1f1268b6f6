a = 4 mm / (2 - 2)
b = 10 ^ 400
c = tan(90 deg)
d = sqrt(-4)
e = sqrt(4 mm)
f = (4 mm) ^ 0.3
