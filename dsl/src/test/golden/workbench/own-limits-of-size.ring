# An own rule for wide bands is the one that show size goes by; a condition that fails is off by more than nothing; solder explains a weight.
profile p = flat(width: 5.5 mm, height: 2.5 mm, edge: 0.2 mm)
band shank { finger ISO 57  profile p  metal silver-925 }
cut trough from shank { width 2 mm  depth 1 mm  keep stripe in red-gold-585  fit 0.05 mm  let-in from fingertip leaving collar  joined by solder }
limit wide-band 5.2 mm because "our fingers"
limit wide-band-allowance 0.3 because "our fingers"
require width(shank) + 0.00002 mm = width(shank) because "nearly"
show size
show weights
measured weight(ring) = weight(ring) + 0.35 g because "joined"
