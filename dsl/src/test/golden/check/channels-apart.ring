# Two channels on opposite sides of the ring do not thin each other's walls; the pins of a row of one do not stand.
profile p = flat(width: 6 mm, height: 3 mm, edge: 0.2 mm)
band shank { finger ISO 57 allow 1/2 US  profile p  metal yellow-gold-750 }
stone-row top on shank { stone round diamond 2 mm within 0.02 mm  around 60 deg  spacing 0.1 mm  sink 0.5 mm  across -0.5 mm }
stone-row palm on shank { stone round diamond 2 mm within 0.02 mm  around 60 deg centred 180 deg  spacing 0.1 mm  sink 0.5 mm  across 0.5 mm }
stone-row one on shank { stone round diamond 1.5 mm  count 1  around 20 deg centred 90 deg  sink 0.1 mm }
cut slot for top from shank { channel { width 90 %  notch 0.15 mm  lip 0.15 mm  floor 1 mm }  made at bench }
cut groove for palm from shank { channel { width 90 %  notch 0.15 mm  lip 0.15 mm  floor 1 mm }  made at bench }
cut seat for one from shank { hole 0.8 mm  clearance 0.02 mm  made at bench }
prongs pins for one on shank { diameter 0.5 mm  rise 0.3 mm  across 0.4 mm }
show checks
