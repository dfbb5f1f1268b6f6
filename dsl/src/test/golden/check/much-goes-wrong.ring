# As much as possible in one ring.
profile slab = rectangle(width: 5.2 mm, height: 1.15 mm)
profile liner-slab = flat(width: 3 mm, height: 0.5 mm)
metal alloy { gold 75 %  nickel 12 %  copper 12.9 %  cadmium 0.1 % }
metal secret { density 14 g/cm^3 }
band shank { finger ISO 57  profile slab  metal alloy }
band liner { finger ISO 57  profile liner-slab  metal secret }

cut trough from shank { width 1.6 mm  depth 0.4 mm  keep stripe in secret  joined by solder }
cut scratch from shank { width 0.2 mm  depth 0.2 mm  across 2 mm }

stone-row lights on stripe { stone round diamond 1.5 mm within 0.05 mm  around full  count 41  sink 0.1 mm  across 0.06 mm }
stone-row edge on shank { stone round diamond 1 mm  around 90 deg  count 8  sink 0.1 mm  across -1.5 mm, -0.6 mm  staggered }
cut seats for lights from stripe, shank { hole 0.6 mm  bearing 0.2 mm  clearance 0.01 mm }
prongs pins for edge on shank { diameter 0.4 mm  rise 0.1 mm  across 0.1 mm  root 0.2 mm  set-height 0.3 mm }

show checks
show section of ring
