profile slab = flat(width: 5 mm, height: 2.6 mm)
band shank { finger ISO 57  profile slab  metal silver-925 }
cut trough from shank { width 3 mm  depth 1.8 mm  keep stripe in red-gold-585  let-in cast }
stone-row lights on stripe { stone round diamond 1.5 mm  around full  count 36  sink 0.5 mm }
cut slot for lights from stripe, shank { channel { width 90 %  notch 0.1 mm  lip 0.3 mm  floor 1.2 mm } }
