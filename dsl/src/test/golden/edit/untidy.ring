a=1mm+2 mm # a comment
longer   =   -3mm because "x"
shown=4.6 mm between 3 mm and 8 mm step 0.1 mm because "y"



band x{finger ISO 54
profile   p
# on its own line
metal gold}
vary a over 1 mm,2 mm {weight( ring )
count(l)}
price = 41 EUR/g*3 g
m = max(1,-2)^2
z = a +
 b
profile wave = outline { start (-2.5 mm,0 mm)   line to (2.5 mm,0 mm)   arc through (0 mm,2 mm) to (-2.5 mm,0 mm) }
cut c for r from x {
channel { width 90 %
notch 0.2 mm }
hole 1 mm }
