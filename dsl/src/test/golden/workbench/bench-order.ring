# What the bench makes itself: a groove in metal that is poured in first.
profile p = flat(width: 6 mm, height: 2 mm)
band shank { finger ISO 57
 profile p
 metal silver-925 }
cut tr from shank { width 2 mm
 depth 1 mm
 keep stripe in red-gold-585
 let-in cast }
cut deep from stripe { width 1 mm
 depth 0.5 mm
 made at bench }
cut more from shank { width 1 mm
 depth 0.9 mm
 across 2 mm
 inside }
show steps
show casting
