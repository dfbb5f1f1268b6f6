stone-row r on s {
  stone round diamond
  around whole round
  count = 40
  spacing 0,15 mm
}
show ring
