g = 5 mm
cut = 2 mm
band ring { finger ISO 57 }
forget US
