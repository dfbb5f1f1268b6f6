profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)

band shank {
  finger   ISO 57
  profile  dome
  metal    silver-925
}

stone-row solitaire on shank { stone round diamond 3 mm around full count 1 }
cut seat for solitaire from shank { hole 1 mm bearing 0.5 mm clearance 0.01 mm }
weight(shank)
count(solitaire)
gap(solitaire)
