cut c from shank {
  width 1.9 mm,
  depth 1 mm
}
stone-row r on s { across 0.4 mm, sink 0.2 mm }
