title "First frost"

finger-size = US 7
breadth     = 3.2 mm   between 2.8 mm and 5 mm

profile slim = flat(width: breadth, height: 2 mm, edge: 0.2 mm)

band shank {
  finger   finger-size
  profile  slim
  metal    platinum-950-ru
}

stone-row frost on shank {
  stone    round diamond 1.52 mm within 0.02 mm
  around   full
  spacing  at least 0.2 mm
  sink     0.1 mm
}

cut seats for frost from shank {
  hole       0.8 mm
  bearing    0.35 mm
  clearance  0.02 mm
  deburr     0.1 mm
  made at bench
}

prongs pins for frost on shank {
  diameter    0.6 mm
  rise        0.3 mm
  root        0.6 mm
  reach       0.1 mm
  set-height  0.2 mm
}

show stones
