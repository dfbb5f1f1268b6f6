option "platinum" { shank-metal = platinum-950-ru }
option "narrow" {
  breadth = 3.5 mm between 3 mm and 4 mm because "a slim hand"
  thickness = 1.7 mm
} because "asked for"
