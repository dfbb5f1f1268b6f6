find largest breadth with weight(shank) <= 6 g
find smallest thickness with wall(shank) >= 0.6 mm and gap(lights) > 0.1 mm
measured weight(shank) = 5.0 g because "first casting"
explain weight(shank)
require gap(lights) >= 0.12 mm
  because "the setter's tool needs the room"
