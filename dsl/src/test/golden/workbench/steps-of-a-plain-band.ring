profile bar = flat(width: 3 mm, height: 1.7 mm)
band shank { finger US 7  profile bar  metal white-gold-585-ni }
metal mystery { density 9 g/cm^3 }
show steps
