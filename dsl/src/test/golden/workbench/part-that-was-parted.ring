profile s = flat(width: 5 mm, height: 2 mm)
band b { finger ISO 54  profile s  metal silver-925 }
cut c from b { width 1 mm  depth through  leaving left, right }
weight(left)
quote { metal 5 EUR/g }
weight(b)
