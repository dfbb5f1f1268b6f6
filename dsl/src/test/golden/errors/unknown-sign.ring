breadth = 4 mm;
thickness = 2 mm @@
a = ​1 mm
