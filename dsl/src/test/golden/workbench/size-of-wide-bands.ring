profile soft = court(width: 6 mm, height: 1.9 mm)
band shank { finger US 7 allow 1/2 US  profile soft  metal silver-925 }
show size
