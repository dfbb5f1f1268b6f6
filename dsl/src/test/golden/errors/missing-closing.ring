band shank {
  finger ISO 57
  metal m

breadth = 4 mm
a = max(1 mm, 2 mm
show ring
cut c from shank { width 1 mm
