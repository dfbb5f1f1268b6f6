a = -2^2 * 3 + 4 / -5 - (1 - 2)
b = 2^3^2 + (2^3)^2 + x²
c = (5 mm)^2 + 5 mm^2
d = if a < b and not (b = c or c <> d) then 1 mm else 2 mm
e = 0.7 mm <= x <= 2 mm
f = x between 1 mm and 2 mm and y = z within 0.01 mm
g1 = max(abs(-1 mm), round(x, step: 0.5 mm)) in inch
h = finger-size in US
i = true or false
j = diameter(US 7) + US 7 1/4 - JP 14 * CH 14 / DE 17.25
k = UK Z + 1
l = 7 1/2 + 1/4 inch + 5mm + 30 deg
m = "a text"
n = weight(shank, pattern) in EUR/g
o = (if a then b else c) + 1
p = not not a
q = x in EUR
r = - -a
s = width / (ABC)
t = 5 mm / 2 mm
u = round(1)
v = cost / 41 EUR
w = g1 * 2 g/cm^3
