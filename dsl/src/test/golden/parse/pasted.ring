a = 7½ × 2 mm − ¼ mm
b = a ≤ 30° and a ≥ 5 µm or a ≠ 2 mm²
c = 3 mm³
d = US 7¼
title “curly”
 e = a−1 mm
