breadth = 4.6 mm between 3 mm and 8 mm step 0.1 mm because "level with the ring worn beside it"
finger-size = ISO 57
width = breadth / 2
handle = 4 mm
  between 3 mm
  and 5 mm
  step 1/2 mm
  because "it may move"
is-wide = (breadth between 3 mm and 4 mm)
shank-metal = platinum-950-ru
