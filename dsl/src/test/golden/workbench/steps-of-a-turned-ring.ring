# Titanium is turned, takes no solder, no torch and no hallmark; gold let into it does.
profile p = flat(width: 6 mm, height: 2.5 mm)
band shank { finger ISO 57  profile p  metal titanium-grade-5 }
cut trough from shank { width 2 mm  depth 1 mm  keep stripe in red-gold-585  let-in in halves at 90 deg  joined by solder }
stone-row lights on shank { stone round diamond 1.3 mm within 0.02 mm  around 60 deg centred 0 deg  spacing at least 0.2 mm  sink 0.1 mm  across 2 mm }
cut seats for lights from shank { hole 0.7 mm  clearance 0.02 mm }
show steps
show checks
show casting
show size
