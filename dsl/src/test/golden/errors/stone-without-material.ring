stone-row lights on shank {
  stone round 1.5 mm
  around full
}
stone-row tiles on shank {
  stone baguette 2 mm by 1.5 mm
}
