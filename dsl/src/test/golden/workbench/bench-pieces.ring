# What the bench makes itself: two pieces parted from one.
profile p = flat(width: 6 mm, height: 2 mm)
band shank { finger ISO 57
 profile p
 metal silver-925 }
cut slot from shank { width 1 mm
 depth through
 made at bench
 leaving lower, upper }
show casting { shrinkage 1.6 %  stock 0.1 mm outside, 0.05 mm inside }
show steps
