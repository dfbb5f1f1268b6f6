show weights in platinum
show weights in wood
