finger-size = 7
other-size = 54
profile slab = flat(width: 4 mm, height: 2 mm)
band a { finger finger-size  profile slab  metal silver-925 }
band b { finger other-size  profile slab  metal silver-925 }
band c { finger 16  profile slab  metal silver-925 }
band d { finger ISO 57  profile slab  metal silver-925 }
stone-row r on d { stone round diamond 1.5 mm  around 180  count 3 }
stone-row s on d { stone round diamond 1.5 mm  around half  count 3 }
