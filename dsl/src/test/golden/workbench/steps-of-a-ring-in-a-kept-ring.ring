# Line goes into stripe while stripe is in the hand; then both go in, and a furrow is cut across when all is one.
profile p = flat(width: 6 mm, height: 3 mm, edge: 0.2 mm)
band shank { finger ISO 57 allow 1/2 US  profile p  metal silver-925 }
cut a from shank { width 3 mm  depth 1.2 mm  keep stripe in red-gold-585  fit 0.05 mm  let-in from fingertip leaving collar  joined by solder }
cut b from stripe { width 1 mm  depth 0.5 mm  keep line in yellow-gold-585  fit 0.05 mm  let-in in halves at 9 deg  joined by solder  made at bench }
cut c from shank, stripe { width 0.5 mm  depth 0.3 mm  across -1.5 mm  made at bench }
show steps
show casting
