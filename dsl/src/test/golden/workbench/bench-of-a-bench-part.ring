# What is cut from a part that the bench makes is the bench's too, whatever is said of it; what is poured is not made.
profile p = flat(width: 6 mm, height: 3 mm, edge: 0.2 mm)
band shank { finger ISO 57 allow 1/2 US  profile p  metal yellow-gold-750 }
cut b from stripe { width 1 mm  depth 0.5 mm  keep line in red-gold-750  let-in in halves at 9 deg  joined by solder }
cut a from shank { width 3 mm  depth 1.2 mm  across -1 mm  keep stripe in white-gold-750-pd  let-in from fingertip leaving collar  joined by solder  made at bench }
cut d from shank { width 0.6 mm  depth 1 mm  across 2.4 mm  keep thread in silver-925  let-in cast  made at bench }
weight(line, pattern)
show steps
show casting
show blank
