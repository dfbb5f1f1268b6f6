profile p = flat(width: 5 mm, height: 2.4 mm)
band shank { finger ISO 57  profile p  metal yellow-gold-750 }
stone-row greens on shank { stone round emerald 1.5 mm  depth 7 mm  around 90 deg  spacing 0.2 mm }
stone-row reds on shank { stone round ruby 1.5 mm  depth 25 %  around 90 deg centred 180 deg  spacing 0.2 mm }
stone-row blues on shank { stone round sapphire 1.5 mm  depth 70 deg  around 60 deg centred 90 deg  spacing 0.2 mm }
stone-row whites on shank { stone round diamond 1.5 mm  depth 70  around 60 deg centred 90 deg  spacing 0.2 mm }
limit pin-notch 60 because "our setter does"
