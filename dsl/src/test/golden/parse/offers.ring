quote { metal 60 EUR/g  stones 400 EUR/ct  labour 180 EUR  loss 6 % }
export "a.3mf" { parts shank, stripe  shrinkage 1.6 %  stock 0.1 mm outside, 0.05 mm inside }
export "b.stl" { parts ring shrinkage around 1.5 % across 1.6 % out 1.7 % stock 0.1 mm inside }
export "c.glb"
sheet "a.pdf"
