weight(ring)
explain weight(ring)
wall(ring)
quote { metal 5 EUR/g }
