# All that a bench may have to do: grooves turned by hand, one poured in, halves, a milled channel, a row without a hold.
profile bar = flat(width: 7 mm, height: 2.2 mm)
band shank { finger ISO 54  profile bar  metal yellow-gold-750 }
cut trough from shank { width 1.2 mm  depth 0.8 mm  across 2 mm  keep stripe in silver-925  let-in cast }
cut furrow from shank { width 1 mm  depth 0.7 mm  across -2.2 mm  keep line in red-gold-750  let-in in halves at 9 deg  made at bench }
stone-row lights on shank { stone round diamond 1.5 mm  around 120 deg  spacing at least 0.12 mm  sink 0.4 mm }
cut slot for lights from shank { channel { width 90 %  notch 0.12 mm  lip 0.2 mm  floor 1 mm }  hole 0.6 mm  clearance 0.01 mm  made at bench }
stone-row dots on shank { stone princess sapphire 1.2 mm  around 60 deg centred 180 deg  count 3  sink 0.1 mm }
show steps
