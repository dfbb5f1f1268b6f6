profile slab = flat(width: 4 mm, height: 2 mm)
band d { finger ISO 57  profile slab  metal silver-925 }
stone-row r on d { stone round diamond 0.015 ct  around full  count 3 }
stone-row s on d { stone round cz 1.5 mm  around full  count 3 }
stone-row t on d { stone baguette diamond 0.015 ct  around full  count 3 }
x = 2 * pi * 3 mm
