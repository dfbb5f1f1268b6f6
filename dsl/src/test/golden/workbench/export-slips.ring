# What cannot be exported: names that lead elsewhere, kinds nobody knows, properties that mean nothing there.
profile dome = d-shape(width: 4 mm, height: 1.8 mm)
band shank { finger ISO 54  profile dome  metal silver-925 }
export "../ring.stl"
export "ring.pdf"
export "ring"
export "ring.csv" { weights  laid out  shrinkage 1.6 % }
export "ring.svg" { stones }
export "ring.stl" { laid out spacing 2 g }
export "ring.3mf" { shrinkage 40 % }
export "ring.3mf" { parts shark }
