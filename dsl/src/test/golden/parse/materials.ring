metal my-alloy { gold 58.5 %  silver 20 %  copper 21.5 % }
metal heavy { density 13.1 g/cm^3 } because "as weighed"
stone-material my-cz { density 5.8 g/cm³ }
forget my-alloy
