breadth =
show section of
require a >=
