cut trough from shank {
  width  2 mm because "the stones are wide"
  depth  1 mm
}
