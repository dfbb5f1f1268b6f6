top = 1 mm
seat = 2 mm
row = 3 mm
width = 4 mm
round = width
step = top
band band-1 { finger size profile profile-1 metal metals }
cut cut-1 from top { width width depth depth across across }
stone-row row on top { stone round stone size around around count count sink sink }
show width
show width + depth
