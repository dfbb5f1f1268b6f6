band b {
  finger ISO 57
  profile d-shape(width: 1 mm)
  metal m
}
