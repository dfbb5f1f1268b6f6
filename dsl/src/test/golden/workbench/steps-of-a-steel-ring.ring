# Steel alone: nothing is cast, nothing melted; cobalt dust has a line of its own.
profile p = flat(width: 4 mm, height: 1.8 mm)
profile q = flat(width: 2 mm, height: 1.6 mm)
metal hard { cobalt 60 %  chromium 30 %  molybdenum 10 % }
metal mystery { density 9 g/cm^3 }
band shank { finger US 7  profile p  metal stainless-steel-316l }
band guard { finger US 8  profile q  metal hard }
band last { finger US 9  profile q  metal mystery }
show steps
show blank
