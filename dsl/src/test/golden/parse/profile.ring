profile dome = d-shape(width: breadth, height: thickness, side: 1.25 mm)
profile wave = outline { start (-2.5 mm, 0 mm)  line to (2.5 mm, 0 mm)  arc through (0 mm, 2 mm) to (-2.5 mm, 0 mm) } because "drawn by hand"
profile plain = flat(
  width: 4 mm,
  height: 2 mm
)
