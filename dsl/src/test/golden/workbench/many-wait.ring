# One misspelt name, told once, with all that waits for it.
bredth = 4 mm
profile slim = flat(width: breadth, height: 2 mm, edge: 0.2 mm)
band shank { finger ISO 57  profile slim  metal silver-925 }
stone-row frost on shank { stone round diamond 1.5 mm  around full  spacing at least 0.2 mm  sink 0.1 mm }
cut seats for frost from shank { hole 0.8 mm  bearing 0.35 mm  clearance 0.02 mm }
prongs pins for frost on shank { diameter 0.6 mm  rise 0.3 mm  reach 0.1 mm }
require weight(shank) > 2 g
