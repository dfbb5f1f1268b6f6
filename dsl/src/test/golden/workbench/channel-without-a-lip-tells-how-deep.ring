profile slab = flat(width: 4 mm, height: 2.6 mm)
band shank { finger ISO 57  profile slab  metal silver-925 }
stone-row lights on shank { stone round diamond 1.5 mm  around full  spacing at least 0.1 mm  sink 0.1 mm }
cut slot for lights from shank { channel { width 90 %  notch 0.12 mm  lip 0.15 mm  floor 1 mm }  hole 0.8 mm }
