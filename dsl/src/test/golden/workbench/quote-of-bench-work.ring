# The collar is metal of the shank, cast with it; the stripe is a piece of its own; spares in per cent.
profile even = flat(width: 5 mm, height: 2.2 mm)
band shank { finger ISO 54  profile even  metal white-gold-585-pd }
cut trough from shank {
  width 1.9 mm  depth 1 mm  keep stripe in red-gold-585  let-in from fingertip leaving collar  made at bench
}
stone-row lights on stripe { stone round diamond 1.5 mm  around 90 deg  count 6  sink 0.25 mm }
weight(ring, pattern)
weight(stripe)
quote { metal 60 EUR/g  stones 3 EUR  spares 100 % }
