profile bar = flat(width: 5.6 mm, height: 1.9 mm)
band shank { finger ISO 57  profile bar  metal silver-925 }
show casting { shrinkage 30 % }
show casting { shrinkage 1.6 mm }
show casting { stock 5 mm outside }
show casting { button 5 g }
show casting { pattern 11 g/cm^3 }
show casting { shrinkage around 1 % across 2 % out 90 % }
