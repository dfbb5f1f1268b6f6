title "Harbour light
show ring
