# What the bench makes itself: platinum poured into silver, which must not be.
profile p = flat(width: 6 mm, height: 3 mm)
band shank { finger ISO 57
 profile p
 metal silver-925 }
cut trough from shank { width 2 mm
 depth 1.5 mm
 keep stripe in platinum-950-ru
 let-in cast }
show casting
show steps
