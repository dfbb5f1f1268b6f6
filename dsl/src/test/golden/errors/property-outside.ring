stone round 1.5 mm
around full
finger finger-size
keep stripe in red-gold-585
spacing = 1 mm
spacing 1 mm
