finger-size = ISO 57
breadth     = 4.6 mm   between 3 mm and 8 mm
thickness   = 1.9 mm   between 1.4 mm and 2.6 mm step 0.2 mm
shank-metal = silver-925

profile dome = d-shape(width: breadth, height: thickness, side: 1.25 mm)

band shank {
  finger   finger-size
  profile  dome
  metal    shank-metal
}
stone-row lights on shank {
  stone    round diamond 1.5 mm
  around   full
  spacing  at least 0.15 mm
  sink     0.25 mm
}

require weight(shank) <= 6 g

option "platinum" { shank-metal = platinum-950-ru } because "the customer asked"
option "too wide" { breadth = 9 mm }
option "slim" {
  breadth   = thickness * 2.5
  thickness = 1.6 mm
} because "for a small hand"

show options
