# A lining that slides in where its bed is open, halves that would lift out, gold poured where nothing bonds, and a wide ring soldered over a narrow one.
profile p = flat(width: 6 mm, height: 3 mm, edge: 0.2 mm)
band body  { finger ISO 57 allow 1/2 US  profile p  metal titanium-grade-5 }
band other { finger ISO 80  profile p  metal platinum-950-ru }
cut bed from body { width 6 mm  depth 0.7 mm  inside  keep lining in yellow-gold-750  joined by press }
cut a from body { width 1 mm  depth 0.8 mm  across 1.2 mm  keep stripe in red-gold-750  let-in in halves at 90 deg  joined by press }
cut b from body { width 1 mm  depth 0.8 mm  across -1.2 mm  keep thread in silver-925  let-in cast }
cut c from other { width 3 mm  depth 1.2 mm  keep wide in yellow-gold-750  fit 0.05 mm  let-in from fingertip leaving collar  joined by solder }
cut d from wide { width 1 mm  depth 0.5 mm  keep thin in red-gold-750  fit 0.05 mm  let-in in halves at 9 deg  joined by solder }
show steps
show checks
show blank
