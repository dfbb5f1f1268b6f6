breadth = 4 mm
thickness = 2 mm
breadth = 5 mm
cut trough from shank { width 1 mm depth 1 mm keep thickness in silver-925 }
