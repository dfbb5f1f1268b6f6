größe = 5 mm
幅 = 3 mm
café = 2 mm
