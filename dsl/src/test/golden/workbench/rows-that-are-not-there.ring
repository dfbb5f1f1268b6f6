profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)

band shank {
  finger   ISO 57
  profile  dome
  metal    silver-925
}

profile slope = knife-edge(width: 4.6 mm, height: 1.9 mm)
band other { finger ISO 57 profile slope metal silver-925 }
gap(ring)
