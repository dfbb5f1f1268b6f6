# A slip in a question leaves the ring and the other questions as they are.
profile slab = flat(width: 4 mm, height: 2 mm, edge: 0.2 mm)
band shank { finger ISO 57  profile slab  metal platinum-950-ru }
show casting { shrinkage 1.6 }
show weights
show casting { shrinkage 1.6 % }
