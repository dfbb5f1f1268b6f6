profile slim = flat(width: 4 mm, height: 2 mm, edge: 0.2 mm)
band shank { finger ISO 57  profile slim  metal silver-925 }
sheet "a.pdf" { spares 0.5 }
sheet "b.pdf" { spares 2.5 }
sheet "c.pdf" { metals slim }
sheet "d.pdf" { shrinkage 1.6 }
