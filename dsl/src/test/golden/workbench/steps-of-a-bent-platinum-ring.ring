# Bent of platinum: no flux, no pickle, its own solder or a weld.
profile p = flat(width: 3 mm, height: 1.7 mm)
band shank { finger US 7  profile p  metal platinum-950-ru }
show steps
