breadth = 4.6 mm
more = breadth + 10 %
less = breadth + 1 mm - 5 %
