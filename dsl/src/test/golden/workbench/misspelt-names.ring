# Each way to ask, with a name that is nearly one: each answer points at the name and tries the near one.
breadth = 4 mm between 3 mm and 5 mm
profile slim = flat(width: breadth, height: 2.2 mm, edge: 0.2 mm)
band shank { finger ISO 53  profile slim  metal yellow-gold-750 }
stone-row lights on shank { stone round diamond 1.5 mm within 0.02 mm  around 170 deg centred 0 deg  spacing 0.2 mm  sink 0.1 mm }

show shnak
show section of shnak
show layout of lihgts
show views of shnak
weight(shnak)
weight(shnak, pattern)
count(lihgts)
carats(lihgts) / 2
explain weight(shnak)
explain gap(lihgts)
require wall(shnak) > 1 mm
what-if bradth = 5 mm { weight(shank) }
what-if breadth = 5 mm { weight(shnak) }
vary bradth from 3 mm to 5 mm { weight(shank) }
vary breadth from 3 mm to 5 mm { weight(shnak) }
find smallest bradth with weight(shank) >= 3 g
find smallest breadth with weight(shnak) >= 3 g
forget shnak
export "a.3mf" { parts shnak }
export "a.svg" { section of shnak }
export "b.svg" { layout of lihgts }
export "c.svg" { views of shnak }
export "a.csv" { vary bradth from 3 mm to 5 mm { weight(shank) } }
