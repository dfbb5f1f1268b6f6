# States and sides of what has none.
profile bar = flat(width: 5 mm, height: 2.2 mm)
band shank { finger ISO 57  profile bar  metal yellow-gold-750 }
cut furrow from shank { width 1 mm  depth 0.8 mm  keep inlay in red-gold-585  let-in cast  made at bench }
show inlay as cast
show views of inlay as cast
show weights as cast
show section from top
show views from top
show views as set
weight(shank)
