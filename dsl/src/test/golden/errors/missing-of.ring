show section ring at 90 deg
show layout lights
