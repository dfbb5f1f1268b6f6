profile p = flat(width: 40 mm, height: 2 mm)
band b { finger ISO 57  profile p  metal silver-925 }
stone-row many on b {
  stone    round diamond 0.2 mm
  around   full
  spacing  at least 0.05 mm
  sink     0.05 mm
  across   -9.00 mm, -8.70 mm, -8.40 mm, -8.10 mm, -7.80 mm, -7.50 mm, -7.20 mm, -6.90 mm, -6.60 mm, -6.30 mm, -6.00 mm, -5.70 mm, -5.40 mm, -5.10 mm, -4.80 mm, -4.50 mm, -4.20 mm, -3.90 mm, -3.60 mm, -3.30 mm, -3.00 mm, -2.70 mm, -2.40 mm, -2.10 mm, -1.80 mm, -1.50 mm, -1.20 mm, -0.90 mm, -0.60 mm, -0.30 mm, 0.00 mm, 0.30 mm, 0.60 mm, 0.90 mm, 1.20 mm, 1.50 mm, 1.80 mm, 2.10 mm, 2.40 mm, 2.70 mm, 3.00 mm, 3.30 mm, 3.60 mm, 3.90 mm, 4.20 mm, 4.50 mm, 4.80 mm, 5.10 mm, 5.40 mm, 5.70 mm, 6.00 mm, 6.30 mm, 6.60 mm, 6.90 mm, 7.20 mm, 7.50 mm, 7.80 mm, 8.10 mm, 8.40 mm, 8.70 mm
}
