# Rims with a ring between them, and an arc beside it; what is pressed holds no collar.
profile p = flat(width: 6 mm, height: 2 mm, edge: 0.2 mm)
profile q = flat(width: 5 mm, height: 2 mm, edge: 0.2 mm)
band shank { finger ISO 57 allow 1/2 US  profile p  metal silver-925 }
band guard { finger ISO 64  profile q  metal silver-925 }
cut a from shank { width 2 mm  depth through  leaving hand-rim, tip-rim  keep mid in red-gold-585  joined by solder }
cut moon from guard { width 1 mm  depth 0.6 mm  across -1.6 mm  around 130 deg  keep crescent in red-gold-585  joined by weld }
cut trough from guard { width 1.2 mm  depth 0.8 mm  across 0.8 mm  keep stripe in red-gold-585  fit 0.05 mm  let-in from fingertip leaving collar  joined by press }
show steps
show checks
