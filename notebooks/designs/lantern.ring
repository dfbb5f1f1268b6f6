# Lantern: three slots right through a wide silver band, seen against the skin.
# The bars between them carry the ring: keep them broad, and break every edge at the finger.

title "Lantern"

finger-size = ISO 56
slot        = 70 deg   between 40 deg and 90 deg

profile strip = concave(width: 7 mm, height: 1.9 mm, dip: 0.25 mm, edge: 0.3 mm)

band shank {
  finger   finger-size allow 1/2 US
  profile  strip
  metal    silver-925
}

cut window-1 from shank { width 2.2 mm  depth through  around slot centred 0 deg    ends round }
cut window-2 from shank { width 2.2 mm  depth through  around slot centred 120 deg  ends round }
cut window-3 from shank { width 2.2 mm  depth through  around slot centred 240 deg  ends round }

show ring
show section of ring
show weights
show checks
