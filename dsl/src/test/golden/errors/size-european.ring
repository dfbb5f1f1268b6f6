band a { finger EU 54  profile slab  metal silver-925 }
finger-size = EU 54
