# A sheet with all that can be asked of it; another as it comes.
profile dome = d-shape(width: 4 mm, height: 1.8 mm)
band shank { finger ISO 54  profile dome  metal silver-925 }
sheet "sheet.pdf" {
  paper letter
  metals silver-925, yellow-gold-750
  spares 2
  shrinkage 1.6 %
  stock 0.1 mm outside, 0.05 mm inside
  replace
}
sheet "folder/plain.pdf"
