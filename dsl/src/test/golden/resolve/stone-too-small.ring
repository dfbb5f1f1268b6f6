profile p = flat(width: 4 mm, height: 2 mm)
band b { finger ISO 57  profile p  metal silver-925 }
stone-row specks on b { stone round diamond 0.1 mm  around full  count 10  sink 0.02 mm }
