# One of each, all sound.
title "Everything"
finger-size = US 7
alloy = yellow-gold-750
share = 10 %
sum = 40 mm + 2 mm
taller = if finger-size > US 6 then 2.2 mm else nothing-at-all
rounded = round(2.675 mm, 0.01 mm)
bigger = finger-size + 1/4
steps = US 8 - US 7
inner = diameter(finger-size)
melts = melting-range(red-gold-585)
heavy = density(silver-925)
weights = weight(shank) in dwt
near = 1 mm = 1.005 mm within 0.01 mm
same = ISO 54 = CH 14
metal my-alloy { gold 58.5 %  silver 20 %  copper 21.5 % }
metal my-other { density 13.1 g/cm^3 }
stone-material my-cz { density 5.8 g/cm^3 }
profile dome = court(width: 6 mm, height: taller, side: 1.4 mm, inside: 0.2 mm, edge: 0.2 mm)
profile slim = knife-edge(width: 4 mm, height: 1.8 mm)
profile wave = outline { start (-2.5 mm, 0 mm)  line to (2.5 mm, 0 mm)  arc through (0 mm, 2 mm) to (-2.5 mm, 0 mm) }
profile hollow = half-round(width: 1.2 mm, height: 0.5 mm)
band shank { finger finger-size allow 1/4 US  profile slim at 180 deg, dome at 360 deg  metal alloy }
band guard { finger CH 14  profile wave  metal my-alloy }
cut furrow from shank { profile hollow depth 0.6 mm across 1 mm around 120 deg centred -30 deg ends round made at bench }
cut apart from guard { width 1 mm depth through leaving left-rim, right-rim keep heart in my-other fit 0.05 mm let-in in halves at 369 deg joined by solder }
cut under from shank { width 2 mm depth 0.3 mm inside }
stone-row lights on shank { stone princess my-cz 1.5 mm within 0.05 mm count 9 around 90 deg centred 10 deg across -1 mm, 1 mm staggered upright girdle 4 % sink 0.2 mm }
stone-row steps-row on guard { stone baguette sapphire 2.5 mm by 1.5 mm spacing 0.15 mm around 120 deg }
cut slots for lights from shank { channel { width 90 % notch 0.1 mm lip 0.3 mm floor 0.6 mm bars every 3 } deburr }
prongs pins for steps-row on guard { diameter 0.5 mm rise 0.3 mm per-gap 1 set-height 0.2 mm }
require count(lights) > 1 and wall(shank) >= 0.6 mm
measured weight(shank) = 5.1 g because "first casting"
option "platinum" { alloy = platinum-950-ru }
