# What each kind of stone fears stands with its order and with the bench's work.
profile slim = flat(width: 4 mm, height: 2.2 mm, edge: 0.2 mm)

band shank { finger ISO 53  profile slim  metal yellow-gold-750 }

stone-row greens on shank { stone round emerald 2 mm within 0.05 mm  around 60 deg centred 0 deg  spacing 0.2 mm  sink 0.1 mm }
stone-row blues on shank { stone round apatite 2 mm within 0.05 mm  around 60 deg centred 180 deg  spacing 0.2 mm  sink 0.1 mm }

show stones
show steps
