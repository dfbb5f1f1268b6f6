# Emeralds as measured reach deeper, weigh more and want deeper seats than the reference diamond; what is not measured is said.
profile p = flat(width: 5 mm, height: 2.4 mm, edge: 0.2 mm)
band shank { finger ISO 57 allow 1/2 US  profile p  metal yellow-gold-750 }
stone-row greens on shank { stone round emerald 1.5 mm within 0.02 mm  depth 75 %  around 90 deg  spacing 0.2 mm  sink 0.1 mm }
stone-row blues on shank { stone oval sapphire 2 mm by 1.5 mm  depth 1.2 mm  around 90 deg centred 120 deg  spacing 0.2 mm  sink 0.1 mm }
stone-row reds on shank { stone round ruby 1.5 mm  around 90 deg centred 240 deg  spacing 0.2 mm  sink 0.1 mm }
cut one for greens from shank { hole 0.8 mm  clearance 0.02 mm  made at bench }
cut two for blues from shank { hole 0.8 mm  clearance 0.02 mm  made at bench }
cut three for reds from shank { hole 0.8 mm  clearance 0.02 mm  made at bench }
depth-left(greens)
depth-left(reds)
carats(greens)
carats(reds)
explain carats(greens)
explain depth-left(greens)
show steps
show checks
show stones
