profile p = flat(width: 8 mm, height: 2 mm)
band b { finger ISO 57  profile p  metal silver-925 }
cut g0 from b { width 0.1 mm  depth 0.2 mm  across -3.10 mm  around 20 deg }
cut g1 from b { width 0.1 mm  depth 0.2 mm  across -2.85 mm  around 20 deg }
cut g2 from b { width 0.1 mm  depth 0.2 mm  across -2.60 mm  around 20 deg }
cut g3 from b { width 0.1 mm  depth 0.2 mm  across -2.35 mm  around 20 deg }
cut g4 from b { width 0.1 mm  depth 0.2 mm  across -2.10 mm  around 20 deg }
cut g5 from b { width 0.1 mm  depth 0.2 mm  across -1.85 mm  around 20 deg }
cut g6 from b { width 0.1 mm  depth 0.2 mm  across -1.60 mm  around 20 deg }
cut g7 from b { width 0.1 mm  depth 0.2 mm  across -1.35 mm  around 20 deg }
cut g8 from b { width 0.1 mm  depth 0.2 mm  across -1.10 mm  around 20 deg }
cut g9 from b { width 0.1 mm  depth 0.2 mm  across -0.85 mm  around 20 deg }
cut g10 from b { width 0.1 mm  depth 0.2 mm  across -0.60 mm  around 20 deg }
cut g11 from b { width 0.1 mm  depth 0.2 mm  across -0.35 mm  around 20 deg }
cut g12 from b { width 0.1 mm  depth 0.2 mm  across -0.10 mm  around 20 deg }
cut g13 from b { width 0.1 mm  depth 0.2 mm  across 0.15 mm  around 20 deg }
cut g14 from b { width 0.1 mm  depth 0.2 mm  across 0.40 mm  around 20 deg }
cut g15 from b { width 0.1 mm  depth 0.2 mm  across 0.65 mm  around 20 deg }
cut g16 from b { width 0.1 mm  depth 0.2 mm  across 0.90 mm  around 20 deg }
cut g17 from b { width 0.1 mm  depth 0.2 mm  across 1.15 mm  around 20 deg }
cut g18 from b { width 0.1 mm  depth 0.2 mm  across 1.40 mm  around 20 deg }
cut g19 from b { width 0.1 mm  depth 0.2 mm  across 1.65 mm  around 20 deg }
cut g20 from b { width 0.1 mm  depth 0.2 mm  across 1.90 mm  around 20 deg }
cut g21 from b { width 0.1 mm  depth 0.2 mm  across 2.15 mm  around 20 deg }
cut g22 from b { width 0.1 mm  depth 0.2 mm  across 2.40 mm  around 20 deg }
cut g23 from b { width 0.1 mm  depth 0.2 mm  across 2.65 mm  around 20 deg }
cut g24 from b { width 0.1 mm  depth 0.2 mm  across 2.90 mm  around 20 deg }
