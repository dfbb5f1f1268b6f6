profile dome = flat(width: 4 mm, height: 2 mm)
band empty { }
band shank { finger ISO 54 profile dome metal silver-925 }
cut trough from shank { }
stone-row none on shank { }
stone-row lights on shank { stone round diamond 1.5 mm count 20 }
cut seats for lights from shank { }
cut slot for lights from shank { channel { } }
prongs pins for lights on shank { }
metal mine { }
stone-material paste { }
