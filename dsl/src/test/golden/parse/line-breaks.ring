a = 1 mm +
  2 mm
b = max(1 mm,
  2 mm
)
c = a
  + b
d = if a > b
  then a
  else b
band s
{
  finger ISO 57 profile p
  metal m
}
require a >= b and
  b >= c
step = 1 mm   # a line that begins "name =" is always a definition
because-of = 2 mm


# the end