profile dome = flat(width: 4 mm, height: 2 mm)
profile round-floor = half-round(width: 2 mm, height: 1 mm)
band shank { finger ISO 54 profile dome metal silver-925 }
cut trough from shank, shank { width 1 mm profile round-floor depth 1 mm }
stone-row lights on shank { stone round diamond 1.5 mm count 20 spacing 0.1 mm }
stone-row good on shank { stone round diamond 1.5 mm count 20 }
prongs pins for good on shank { diameter 0.5 mm rise 0.3 mm across 0.4 mm reach 0.1 mm }
metal mine { density 12 g/cm^3 gold 50 % silver 50 % }
