proffile fat = flat(width: 4 mm, height: 2 mm)
cut trough shank { width 1 mm  depth 0.5 mm }
vary breadth 3 mm to 5 mm
show casting of shank
export stl
export ring.stl
weight of ring
require weight ring < 5 g
finger-size = ISO 53 between ISO 48 – ISO 60
band one { finger ISO 53  profile slim  material silver-925 }
band two { finger ISO 53  profile slim  metal 18k gold }
band three { finger ISO 53  profile slim  metal 18 ct white gold }
metal = gold
bnad oops {
  finger ISO 53
}
stone-rwo lights on shank { stone round diamond 1.5 mm  around full }
cutt trough from shank { width 1 mm  depth 0.5 mm }
x = (1 mm 2 mm)
