show ring
show weights
weight(shank)
