profile slab = flat(width: 5 mm, height: 2.4 mm)
band shank { finger ISO 57  profile slab  metal silver-925 }

stone-row boxes on shank { stone baguette diamond 1.6 mm by 2.2 mm  around full  spacing at least 0.2 mm  sink 0.3 mm }
cut box-seats for boxes from shank { hole 0.8 mm  clearance 0.02 mm  deburr }
prongs pins for boxes on shank { diameter 0.6 mm  rise 0.3 mm  root 0.4 mm  reach 0.1 mm }

show count(boxes)
show gap(boxes)
show depth-left(boxes)
show weight(shank)
show wall(shank)
