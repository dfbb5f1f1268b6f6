profile slab = flat(width: 5 mm, height: 2.4 mm)
band shank { finger ISO 57  profile slab  metal silver-925 }
stone-row boxes on shank { stone baguette diamond 1.6 mm by 2.2 mm  around full  count 20  sink 0.3 mm }
cut seats for boxes from shank { hole 1.7 mm  clearance 0.02 mm }
