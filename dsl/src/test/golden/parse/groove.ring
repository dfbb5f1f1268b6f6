cut trough from shank, rim {
  width 1.9 mm
  depth 1 mm
  across -0.4 mm
  around 120 deg centred -30 deg
  ends round
  keep stripe in red-gold-585
  fit 0.05 mm
  let-in from fingertip leaving collar
  joined by solder
  leaving inner-rim, outer-rim
  made at bench
}
cut line from shank { profile vee depth 0.3 mm inside around full ends square made in pattern }
cut through-cut from shank { width 1 mm depth through leaving a, b let-in in halves at 9 deg }
cut c from shank { depth 1 mm width 2 mm let-in cast joined by press }
cut d from shank { let-in from hand leaving rim joined by weld } because "it shows less"
