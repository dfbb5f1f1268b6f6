profile slab = flat(width: 5 mm, height: 2.6 mm)
band shank { finger ISO 57  profile slab  metal silver-925 }
stone-row lights on shank { stone round diamond 1.5 mm  around full  count 36  sink 0.5 mm }
cut slot for lights from shank { clearance 0.01 mm  channel { width 90 %  notch 0.1 mm  lip 0.3 mm  floor 1 mm } }
show checks
