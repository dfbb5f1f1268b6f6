# Files of a ring that is not there yet.
export "ring.3mf"
sheet "ring.pdf"
