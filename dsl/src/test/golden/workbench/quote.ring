title "Harbour light"
profile dome = d-shape(width: 4.6 mm, height: 1.9 mm, side: 1.25 mm)
band shank { finger ISO 57  profile dome  metal white-gold-585-pd }
cut trough from shank { width 1.9 mm  depth 1 mm  keep stripe in red-gold-585  let-in from fingertip leaving collar }
stone-row lights on stripe { stone round diamond 1.5 mm  around full  spacing at least 0.15 mm  sink 0.25 mm }
cut seats for lights from stripe, shank { hole 0.8 mm  bearing 0.35 mm  clearance 0.01 mm  made at bench }
prongs pins for lights on stripe { diameter 0.55 mm  rise 0.28 mm  root 0.6 mm  across 0.42 mm }
gold-price = 1900 EUR/ozt

# One price for all metal, stones by the carat.
quote { metal gold-price  stones 400 EUR/ct  labour 180 EUR  loss 6 % }

# Everything said.
quote {
  metal                60 EUR/g
  metal   red-gold-585 41.5 EUR/g
  stones  lights       3 EUR
  setting              2.5 EUR
  spares               5 %
  labour               180 EUR
  labour  "polishing"  40 EUR
  loss                 6 %
  finishing            2 %
  tax     "VAT"        19 %
  valid   "31 March"
}

# Prices that are missing are told.
quote { metal red-gold-585 41.5 EUR/g  spares 2  labour 5 EUR }
