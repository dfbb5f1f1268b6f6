stone-row lights on stripe {
  stone round diamond 1.7 mm within 0.05 mm
  around 180 deg centred 0 deg
  spacing at least 0.15 mm
  sink 0.25 mm
  across -1 mm, 0 mm, 1 mm
  staggered
  girdle 3 %
}
stone-row bars on shank { stone baguette sapphire 2.5 mm by 1.5 mm around full count 40 spacing 0.15 mm upright } because "a gift"
