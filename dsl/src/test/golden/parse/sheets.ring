sheet "a.pdf"
sheet "b.pdf" { paper letter metals silver-925, fine-gold spares 5 % replace }
sheet "c.pdf" { shrinkage around 1.2 % across 1 % out 1.4 % stock 0.1 mm inside }
paper = 2 mm
