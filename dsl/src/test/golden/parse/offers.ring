quote { metal 60 EUR/g  stones 400 EUR/ct  labour 180 EUR  loss 6 % }
export "a.3mf" { parts shank, stripe  shrinkage 1.6 %  stock 0.1 mm outside, 0.05 mm inside }
export "b.stl" { parts ring shrinkage around 1.5 % across 1.6 % out 1.7 % stock 0.1 mm inside }
export "c.glb"
sheet "a.pdf"
quote {
  metal              60 EUR/g
  metal   red-gold-585 41.5 EUR/g
  stones  lights     3 EUR
  stones             400 EUR/ct
  setting            2.5 EUR
  spares             2
  labour             180 EUR
  labour  "polishing" 40 EUR
  loss               6 %
  finishing          2 %
  tax     "VAT"      19 %
  valid   "31 March"
}
quote { metal price stones stone-price labour work tax rate }
quote { metal max(a, b) }
export "d.3mf" { as cast  laid out spacing 3 mm  replace }
export "e.stl" { as finished  assembled }
export "f.dxf" { layout of lights }
export "g.svg" { section of shank, stripe at 30 deg  replace }
export "v.svg" { views of shank, stripe }
export "v.dxf" { views }
export "h.csv" { weights in all metals }
export "i.csv" { casting  shrinkage 1.6 % }
export "j.csv" { quote { metal 60 EUR/g } }
export "k.csv" {
  replace
  vary breadth over 4 mm, 5 mm, finger-size from US 4 to US 6 {
    weight(shank)
    count(lights)
  }
}
export "l.csv" { what-if breadth = 5 mm { weight(shank) }  replace }
as = 1 mm
