# A band that changes, a groove on an arc with a kept part, ovals on it, a channel.
profile wide = d-shape(width: 7 mm, height: 2.6 mm)
profile slim = half-round(width: 4 mm, height: 1.6 mm)
profile even = flat(width: 5 mm, height: 2.2 mm)

band taper { finger ISO 54  profile wide at 0 deg, slim at 180 deg  metal white-gold-585-pd }
cut inlay from taper { width 0.8 mm  depth 0.4 mm  across 2.2 mm  around 60 deg  keep strip in red-gold-585  let-in cast }
stone-row ovals on taper { stone oval ruby 2.2 mm by 1.6 mm  around 80 deg  spacing at least 0.4 mm  sink 0.3 mm }
cut seats for ovals from taper { hole 0.8 mm  clearance 0.02 mm }

band second { finger ISO 54  profile even  metal silver-925 }
stone-row bars on second { stone baguette sapphire 1.5 mm by 2.5 mm  around full  spacing at least 0.1 mm  sink 0.55 mm }
cut slot for bars from second { channel { width 90 %  notch 0.2 mm  lip 0.25 mm  floor 0.7 mm } }

explain weight(taper)
explain volume(strip)
explain gap(ovals)
explain pitch(ovals)
explain depth-left(ovals)
explain count(ovals)
explain carats(ovals)
explain weight(second)
explain gap(bars)
explain depth-left(bars)
