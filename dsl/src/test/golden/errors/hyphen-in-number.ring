finger-size = US 7-1/2
x = 7-½ mm
