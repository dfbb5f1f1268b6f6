# Ferryman: flat outside, curved inside, its outer corners rounded, one fine line cut beside the middle.
# A wide band sits tight, so the bore is a half size larger than the finger.

title "Ferryman"

finger-size = US 10
breadth     = 6 mm     between 5 mm and 8 mm   because "a large hand; narrower looks lost on it"
thickness   = 2 mm

profile plank = flat-court(width: breadth, height: thickness, inside: 0.2 mm, edge: 0.4 mm)

band shank {
  finger   finger-size allow 1/2 US
  profile  plank
  metal    palladium-950
} because "half a size up: it is wide, and has to pass the knuckle"

cut line from shank {
  width   0.5 mm
  depth   0.35 mm
  across  1.4 mm
  made at bench
}

show ring
show section of ring
show weights
show checks
