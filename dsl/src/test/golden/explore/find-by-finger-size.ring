size = US 7 between US 4 and US 10
profile dome = d-shape(width: 4 mm, height: 1.9 mm, side: 1.25 mm)
band shank { finger size  profile dome  metal silver-925 }
stone-row lights on shank { stone round diamond 1.5 mm  around full  spacing at least 0.15 mm  sink 0.25 mm }

find largest size with count(lights) <= 40
find smallest size with count(lights) = 41
find largest size with gap(lights) >= 0.18 mm
