# What the bench makes itself: halves welded in.
profile p = flat(width: 6 mm, height: 2.5 mm)
band shank { finger ISO 57
 profile p
 metal platinum-950-ru }
cut tr from shank { width 2 mm
 depth 1 mm
 keep stripe in red-gold-585
 let-in in halves at 0 deg
 joined by weld }
show steps

show casting
