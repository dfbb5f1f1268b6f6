# A layout is of a row.
profile slab = flat(width: 4 mm, height: 2 mm, edge: 0.2 mm)
band shank { finger ISO 57  profile slab  metal platinum-950-ru }
show layout
stone-row frost on shank { stone round diamond 1.5 mm  around full  spacing at least 0.2 mm  sink 0.1 mm }
show layout
layout
show section at 90
show engraving
resize
show bezel
show section shank
