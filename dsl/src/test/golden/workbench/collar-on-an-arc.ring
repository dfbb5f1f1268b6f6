profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)

band shank { finger ISO 57  profile dome  metal silver-925 }

cut trough from shank {
  width   1.6 mm
  depth   1 mm
  around  120 deg centred 20 deg
  keep    stripe in red-gold-585
  let-in  from fingertip leaving collar
}

cut window from shank { width 1 mm  depth through  around 30 deg centred 180 deg  ends round }
cut line from shank { width 0.6 mm  depth 0.3 mm  inside  around 60 deg centred 270 deg }

show weights
show section of ring at 20 deg
show section of ring at 180 deg
