profile p = flat(width: 4 mm, height: 2 mm)
band b { finger ISO57  profile p  metal silver-925 }
band c { finger N  profile p  metal Platinum }
lower = USD
