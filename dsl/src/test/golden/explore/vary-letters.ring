size = UK N between UK L and UK P step 1
profile dome = d-shape(width: 4 mm, height: 1.9 mm, side: 1.25 mm)
band shank { finger size  profile dome  metal silver-925 }

vary size { weight(shank), size in ISO }
vary size over UK N, US 7, ISO 54.4 { diameter(size) }
vary size from UK L to UK M { size > UK L 1/2 }
