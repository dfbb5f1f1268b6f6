# Files of every kind, told in words.
title "Plain"
profile dome = d-shape(width: 4 mm, height: 1.8 mm)
band shank { finger ISO 54  profile dome  metal silver-925 }
export "ring.3mf" { shrinkage 1.6 %  stock 0.1 mm outside, 0.05 mm inside  laid out spacing 3 mm  replace }
export "ring.stl" { as finished  shrinkage around 1 % across 1.2 % out 1.5 % }
export "cut.dxf"
export "cut.svg" { section of shank at 90 deg }
export "sizes.csv" {
  vary finger-size from US 6 to US 8 step 1 {
    finger-size
  }
  replace
}
finger-size = US 7
