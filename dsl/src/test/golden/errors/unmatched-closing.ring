a = 1 mm)
band s { finger ISO 57 } }
