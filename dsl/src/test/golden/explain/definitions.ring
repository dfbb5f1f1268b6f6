# Definitions that rest on each other.
finger    = US 7 1/4
thickness = 1.8 mm because "the customer's old ring"
breadth   = thickness * 2 + 0.4 mm
inner     = diameter(finger)
outer     = inner + 2 * thickness
tight     = -0.2 mm
alloy     = platinum-950-ru

explain outer
explain max(breadth, 4 mm) - tight
explain if breadth > 3 mm then breadth else 3 mm
explain breadth between 3 mm and 5 mm
explain circumference(UK N 1/2)
explain fineness(alloy)
explain 5 mm
explain outer in inch
