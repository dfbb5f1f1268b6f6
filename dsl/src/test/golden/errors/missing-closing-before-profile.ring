band shank {
  finger ISO 57
  profile dome
profile dome = flat(width: 1 mm)
metal m { gold 10 % 
