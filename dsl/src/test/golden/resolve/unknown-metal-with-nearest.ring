profile dome = flat(width: 4 mm, height: 2 mm)
band shank { finger ISO 54 profile dome metal white-gold-585-pt }
cut trough from shank { width 1 mm depth 1 mm keep stripe in silver-952 }
