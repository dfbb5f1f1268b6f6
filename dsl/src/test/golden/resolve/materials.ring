metal a { gold 58.5 %  silver 20 %  copper 20 % }
metal b { gold 58.5 %  silvr 41.5 % }
metal c { density 131 g/cm^3 }
metal e { unobtainium 100 % }
stone-material d { density 58 g/cm^3 }
