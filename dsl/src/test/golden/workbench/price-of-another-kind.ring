profile flat-one = flat(width: 3 mm, height: 1.5 mm)
band shank { finger ISO 54  profile flat-one  metal silver-925 }
quote { labour 5 mm }
