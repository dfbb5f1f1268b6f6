weight shank
show weight shank
