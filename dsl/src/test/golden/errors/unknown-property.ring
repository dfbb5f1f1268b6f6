cut c from shank {
  wdith 1.9 mm
  depth 1 mm
  colour red
  Ends round
}
