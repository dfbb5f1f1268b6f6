nothing = 0 mm
profile none = flat(width: nothing, height: -2 mm)
profile hollow = flat(width: 4 mm, height: 2 mm, edge: -0.1 mm)
profile dome = flat(width: 4 mm, height: 2 mm)
band shank { finger ISO 54 profile dome metal silver-925 }
cut trough from shank { width 0 mm depth -1 mm }
stone-row lights on shank { stone round diamond 0 mm count 1.5 }
stone-row more on shank { stone round diamond 1.5 mm spacing -1 mm }
prongs pins for more on shank { diameter 0 mm rise -1 mm across 0.4 mm per-gap 3 }
