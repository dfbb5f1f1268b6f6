profile dome = d-shape(width: 4.6 mm, height: 1.9 mm)
band shank {
  finger   ISO 57
  profile  dome
  metal    silver-925
}
show casting { shrinkage 1.6 }
