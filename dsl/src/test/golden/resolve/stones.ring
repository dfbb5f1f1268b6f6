profile dome = flat(width: 4 mm, height: 2 mm)
band shank { finger ISO 54 profile dome metal silver-925 }
stone-row a on shank { stone ruond diamond 1.5 mm count 20 }
stone-row b on shank { stone round diamod 1.5 mm count 20 }
stone-row c on shank { stone round diamond 1.5 mm by 2 mm count 20 }
stone-row d on shank { stone baguette sapphire 2.5 mm count 20 }
stone-row e on shank { stone round diamond 1.5 mm within 2 mm count 20 }
stone-row f on shank { stone round diamond 1.5 mm count 20 girdle 60 % }
stone-row good on shank { stone round diamond 1.5 mm count 20 }
cut seats for good from shank { hole 1.6 mm }
cut slot for good from shank { channel { width 110 % notch 0.1 mm lip 0.3 mm floor 0.5 mm } }
stone-row h on shank { stone marquise diamond 1.5 mm count 20 }
