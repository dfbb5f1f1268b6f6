band b {
  finger
  profile dome
  metal
}
cut c from b {
  width
  depth 1 mm
}
