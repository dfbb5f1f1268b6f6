gold = 60 €/g
labour = 180€
stones = $400
setting = £4
all = 3 €
