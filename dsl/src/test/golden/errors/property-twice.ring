cut c from shank {
  width 1.9 mm
  depth 1 mm
  depth through
}
metal m { gold 10 % gold 20 % }
