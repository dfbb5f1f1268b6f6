print weight(b)
delete x
claws c for r on b { }
