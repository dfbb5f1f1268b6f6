prongs pins for lights on stripe {
  diameter 0.55 mm rise 0.28 mm root 0.6 mm
  across 0.42 mm
  reach 0.1 mm
  per-gap 1
  set-height 0.2 mm
} because "as in the old one"
