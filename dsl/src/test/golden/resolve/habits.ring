profile slab = flat(width: 4 mm, height: 2.6 mm)
band d { finger UK n  profile slab  metal silver-925 }
band e { finger UK m 1/2  profile slab  metal silver-925 }
band f { finger UK zz  profile slab  metal silver-925 }
band shank { finger ISO 57  profile slab  metal silver-925 }
stone-row r on shank { stone brilliant diamond 1.5 mm  around full  count 3 }
stone-row s on shank { stone square ruby 1.5 mm  around full  count 3 }
