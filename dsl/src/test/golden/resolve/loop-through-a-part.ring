breadth = weight(shank) / 1 g * 1 mm
profile dome = flat(width: breadth, height: 2 mm)
band shank { finger ISO 54 profile dome metal silver-925 }
cut trough from stripe { width 1 mm depth 1 mm keep stripe in silver-925 }
require wall(shank) > 0.6 mm
