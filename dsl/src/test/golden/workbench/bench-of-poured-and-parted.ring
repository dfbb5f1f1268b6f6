# Poured silver that is cut and parted afterwards, and a made part that is parted; a dot in a line in a stripe, all of the bench.
profile p = flat(width: 8 mm, height: 3 mm, edge: 0.2 mm)
band shank { finger ISO 57 allow 1/2 US  profile p  metal platinum-950-ru }
band guard { finger ISO 80  profile p  metal silver-925 }
cut trough from shank { width 3 mm  depth 1.2 mm  keep stripe in silver-925  let-in cast  joined by solder  fit 0.05 mm  made at bench }
cut dent from stripe { width 1 mm  depth 0.6 mm  made at bench }
cut a from guard { width 5 mm  depth 1.6 mm  keep wide in red-gold-750  let-in from fingertip leaving collar  joined by solder  made at bench }
cut b from wide { width 3 mm  depth 1 mm  keep line in yellow-gold-750  let-in in halves at 9 deg  joined by solder  made at bench }
cut c from line { width 1 mm  depth 0.5 mm  keep dot in red-gold-750  let-in in halves at 99 deg  joined by solder  made at bench }
show steps
show casting
weight(stripe)
