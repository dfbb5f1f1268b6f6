# What a sheet cannot be.
profile dome = d-shape(width: 4 mm, height: 1.8 mm)
band shank { finger ISO 54  profile dome  metal silver-925 }
sheet "sheet.txt"
sheet "../sheet.pdf"
sheet "sheet.pdf" { paper a5 }
sheet "sheet.pdf" { metals silver-924 }
sheet "sheet.pdf" { spares 2 mm }
sheet "sheet.pdf" { spares -1 }
sheet "sheet.pdf" { metals dome }
sheet "sheet.pdf" { stock 3 mm outside }
