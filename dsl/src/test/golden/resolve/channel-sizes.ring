profile dome = flat(width: 4 mm, height: 2 mm)
band shank { finger ISO 54 profile dome metal silver-925 }
stone-row good on shank { stone round diamond 1.5 mm count 20 }
cut shallow for good from shank { clearance 0.01 mm channel { width 90 % notch 0.05 mm lip 0.3 mm floor 0.5 mm } }
cut drilled for good from shank { hole 1.4 mm channel { width 90 % notch 0.1 mm lip 0.3 mm floor 0.5 mm } }
cut twice for good from shank { bearing 0.3 mm channel { width 90 % notch 0.1 mm lip 0.3 mm floor 0.5 mm } }
