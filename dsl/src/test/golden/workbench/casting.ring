# Seats made at the bench, a kept stripe, stock and shrinkage; weights add up by stage.
profile bar = flat(width: 5.6 mm, height: 1.9 mm)
band shank { finger ISO 57  profile bar  metal white-gold-585-pd }
cut trough from shank {
  width 1.9 mm
  depth 1 mm
  keep stripe in red-gold-585
  let-in from fingertip leaving collar
  joined by solder
}
stone-row lights on stripe { stone round diamond 1.5 mm  around full  count 30  sink 0.25 mm }
cut seats for lights from stripe, shank { hole 0.8 mm  bearing 0.35 mm  clearance 0.01 mm  made at bench }
prongs pins for lights on stripe { diameter 0.55 mm  rise 0.28 mm  root 0.6 mm  across 0.42 mm  set-height 0.2 mm }

show casting
show casting { shrinkage 1.6 %  button 15 %  pattern 1.09 g/cm^3 }
show casting { shrinkage around 1.26 % across 1 % out 2 %  stock 0.1 mm outside, 0.05 mm inside }
weight(stripe)
weight(stripe, pattern)
show steps
