# The same in what makes a ring.
profile slim = flat(width: 4 mm, height: 2.2 mm, edge: 0.2 mm)
band shank { finger ISO 53  profile slim  metal yellow-gold-750 }
stone-row lights on shank { stone round diamond 1.5 mm within 0.02 mm  around 170 deg centred 0 deg  spacing 0.2 mm  sink 0.1 mm }

band other { finger ISO 53  profile slmi  metal yellow-glod-750 }
profile second = flta(width: 3 mm)
stone-row more on shnak { stone round diamnod 1.5 mm  around full  count 12  sink 0.1 mm }
prongs pins for lihgts on shank { diameter 0.5 mm  rise 0.3 mm  root 0.4 mm  across 0.4 mm }
cut seats for lights from shnak { hole 0.8 mm }
cut trough from shakn { width 1 mm  depth 0.5 mm }
