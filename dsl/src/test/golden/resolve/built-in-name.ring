silver-925 = 5 mm
stone-material ruby { density 4 g/cm^3 }
