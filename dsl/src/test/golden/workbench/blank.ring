# A strip is the ring only for a plain band: what else there is stands below the table.
profile dome = court(width: 6 mm, height: 2.2 mm, inside: 0.2 mm)

band shank {
  finger   ISO 57 allow 1/2 US
  profile  dome
  metal    silver-925
}

cut trough from shank {
  width   2 mm
  depth   1 mm
  keep    stripe in red-gold-585
  fit     0.05 mm
  let-in  from fingertip leaving collar
  joined by solder
}

cut window from stripe {
  width   0.8 mm
  depth   0.4 mm
  around  60 deg centred 180 deg
  keep    pane in yellow-gold-585
}

stone-row lights on stripe {
  stone   round diamond 1.1 mm
  around  120 deg
  spacing 0.2 mm
  sink    0.05 mm
}

cut seats for lights from stripe { hole 0.5 mm  clearance 0.02 mm  made at bench }

show blank
