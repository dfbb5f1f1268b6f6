profile dome = d-shape(width: 6 mm, height: 2 mm)
band shank {
  finger   ISO 57
  profile  dome
  metal    silver-925
}
stone-row lights on shank {
  stone   round diamond 4 mm
  around  full
  spacing 0.1 mm
  sink    0.2 mm
}
cut slot for lights from shank {
  channel { width 90 % }
}
cut groove for lights from shank {
  channel { width 90 %  notch 0.3 mm  lip 0.3 mm }
}
