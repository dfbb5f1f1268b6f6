breadth = 4 mm
wall-height = bredth / 2
groove-depth = wall-height / 2
profile dome = flat(width: breadth, height: hight)
profile slim = flat(width: breadth, height: 2 mm)
band shank { finger size profile slimm metal silver-925 }
option "wide" { braedth = 6 mm }
