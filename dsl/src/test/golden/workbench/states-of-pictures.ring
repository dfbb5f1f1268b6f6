# In which state a picture shows the ring, and what has none.
profile bar = flat(width: 5 mm, height: 2.2 mm)
band shank { finger ISO 57  profile bar  metal yellow-gold-750 }
cut furrow from shank { width 1 mm  depth 0.8 mm  across 1.6 mm  keep inlay in red-gold-585  let-in cast  made at bench }
stone-row lights on shank { stone round diamond 1.5 mm  around 80 deg  spacing at least 0.2 mm  sink 0.2 mm  across -0.8 mm }
cut seats for lights from shank { hole 0.8 mm  bearing 0.35 mm  clearance 0.01 mm  made at bench }
prongs pins for lights on shank { diameter 0.5 mm  rise 0.3 mm  across 0.55 mm  set-height 0.25 mm }
show ring
show ring as set
show ring as cast from top
show shank as cast
show views
show views of shank as cast
