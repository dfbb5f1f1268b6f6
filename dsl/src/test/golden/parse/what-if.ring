what-if finger-size = US 8, breadth = 5.5 mm
what-if finger-size = US 8 {
  weight(shank)

  gap(lights), count(lights)
}
