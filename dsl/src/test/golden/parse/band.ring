band shank {
  finger   finger-size
  profile  dome at 0 deg, slim at 180 deg
  metal    white-gold-585-pd
} because "worn daily"

band wide { finger ISO 57 allow 1/4 US profile dome metal silver-925 }
band top { finger UK N 1/2 allow 0.2 mm
 profile top metal top }
