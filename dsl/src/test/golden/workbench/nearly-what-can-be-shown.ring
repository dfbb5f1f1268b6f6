# Words that are nearly one of the things to show; a name of the design that is nearer wins.
steep = 5 mm
show check
show cast
show step
show stone
show sizes
show weight
show wall
show chekcs
show steeb
checks
undo
show undo
show nobody
