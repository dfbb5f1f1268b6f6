profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)

band shank {
  finger   ISO 57
  profile  dome
  metal    silver-925
}

sheet "harbour-light.pdf"
explain weight(shank)
