breadth = 4 mm
profile dome = flat(width: breadth, height: 2 mm)
band shank { finger ISO 54 profile breadth metal dome }
band wide { finger ISO 54 profile dome metal silver-925 }
cut trough from dome, breadth { width 1 mm depth 1 mm }
stone-row lights on wide { stone round diamond 1.5 mm count 20 }
prongs pins for wide on lights { diameter 0.5 mm rise 0.3 mm across 0.4 mm }
double = wide * 2
triple = ring * 3
