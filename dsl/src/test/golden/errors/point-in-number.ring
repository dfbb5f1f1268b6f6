a = .5 mm
b = 5. mm
c = 1/2.5
