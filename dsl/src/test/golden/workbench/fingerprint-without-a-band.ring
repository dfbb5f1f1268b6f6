# No band, no fingerprint.
breadth = 4 mm
show fingerprint
show layout
