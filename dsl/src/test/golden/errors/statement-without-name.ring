prongs for lights on shank {
  diameter 0.5 mm
}
cut for lights from shank {
  hole 0.8 mm
}
cut from shank {
  width 1 mm
}
stone-row on shank {
  count 3
}
band {
  finger ISO 57
}
