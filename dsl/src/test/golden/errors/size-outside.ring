size EU 54
size ISO 54
band a { size ISO 54  profile slab  metal silver-925 }
