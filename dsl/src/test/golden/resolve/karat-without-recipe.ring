profile dome = flat(width: 4 mm, height: 2 mm)
band shank { finger ISO 54 profile dome metal gold-14k }
band second { finger ISO 54 profile dome metal white-gold-585 }
band third { finger ISO 54 profile dome metal palladium-950-pt }
