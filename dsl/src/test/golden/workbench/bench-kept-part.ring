# What the bench makes itself: a kept part with its seats, and the collar parted off.
profile p = flat(width: 6 mm, height: 3 mm)
band shank { finger ISO 57
 profile p
 metal silver-925 }
cut trough from shank { width 2 mm
 depth 1.5 mm
 keep stripe in red-gold-585
 made at bench
 let-in from fingertip leaving collar
 joined by solder }
stone-row lights on stripe { stone round diamond 1.5 mm within 0.05 mm
 around full
 spacing at least 0.15 mm
 sink 0.25 mm }
cut seats for lights from stripe, shank { hole 0.8 mm
 clearance 0.01 mm }
prongs pins for lights on stripe { diameter 0.55 mm
 rise 0.28 mm
 root 0.6 mm
 across 0.42 mm }
show casting { shrinkage 1.6 %  stock 0.1 mm outside, 0.05 mm inside }
show steps
