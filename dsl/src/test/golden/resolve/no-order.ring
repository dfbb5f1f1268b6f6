a = silver-925 < silver-900
b = "x" = "y" within 1 mm
