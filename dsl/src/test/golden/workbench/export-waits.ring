# A file of a kind that comes later, and one of a ring that is not there yet.
export "ring.glb"
export "ring.3mf"
