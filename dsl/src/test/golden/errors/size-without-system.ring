band shank { finger Q 1/2  profile dome  metal silver-925 }
finger-size = N 1/2
