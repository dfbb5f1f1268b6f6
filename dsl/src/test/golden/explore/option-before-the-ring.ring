breadth = 4 mm

option "wide" { breadth = 6 mm }
