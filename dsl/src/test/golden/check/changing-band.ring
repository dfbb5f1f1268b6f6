profile high = court(width: 5 mm, height: 2 mm, side: 1 mm, inside: 0.2 mm)
profile low = court(width: 3 mm, height: 1.5 mm, side: 0.8 mm, inside: 0.2 mm)
band shank { finger US 7 allow 1/2 US  profile high at 0 deg, low at 180 deg  metal platinum-950-ru }
cut window from shank { width 1.2 mm  depth 0.5 mm  around 200 deg  keep inlay in red-gold-585 }
stone-row crown on shank { stone princess diamond 1.8 mm  around 100 deg  spacing 0.2 mm  sink 0.2 mm }
show checks
