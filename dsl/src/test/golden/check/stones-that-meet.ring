profile ridge = knife-edge(width: 4 mm, height: 4 mm, side: 1 mm)
band shank { finger ISO 57  profile ridge  metal silver-925 }
stone-row pair on shank { stone round diamond 1.5 mm  around full  count 24  across -0.5 mm, 0.5 mm }
stone-row top on shank { stone round sapphire 1 mm  around 40 deg  count 3  upright  sink 0.4 mm }
prongs few for pair on shank { diameter 0.5 mm  rise 0.2 mm  root 0.3 mm  across 0.9 mm }
limit row-held 0 because "the top stones are set flush"
show checks
