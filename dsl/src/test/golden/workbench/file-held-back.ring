# A file beside a question that waits, and beside one that is wrong in itself, is kept back.
profile slab = flat(width: 4 mm, height: 2 mm, edge: 0.2 mm)
band shank { finger ISO 57  profile slab  metal platinum-950-ru }
export "ring.stl"
show weight(nobody)
show weight(shank) + 2 mm
sheet "ring.pdf"
