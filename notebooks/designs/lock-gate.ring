# Lock gate: princess-cut diamonds edge to edge between two walls, over the top of a platinum band.

title "Lock gate"

finger-size = ISO 54

profile block = flat(width: 4.4 mm, height: 2.9 mm, edge: 0.3 mm)

band shank {
  finger   finger-size
  profile  block
  metal    platinum-950-ru
}

stone-row gates on shank {
  stone    princess diamond 2 mm by 2 mm within 0.02 mm
  around   110 deg centred 0 deg
  spacing  0.08 mm
  sink     0.48 mm
}

cut slot for gates from shank {
  channel {
    width  90 %
    notch  0.15 mm
    lip    0.15 mm
    floor  1 mm
  }
  hole       1 mm
  deburr     0.1 mm
  clearance  0.02 mm
  made at bench
}

show ring
show section of ring
show weights
show stones
show checks
