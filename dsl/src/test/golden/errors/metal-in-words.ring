band a { finger ISO 54  profile slab  metal platinum 950 }
band b { finger ISO 54  profile slab  metal white gold 585 }
shank-metal = platinum 950
show weights in platinum
