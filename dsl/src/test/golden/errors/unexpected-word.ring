show section off ring
a = 1 mm 2 mm
a = * 2
find biggest breadth with a
