profile a = outline { start (-2 mm, 0 mm) line to (2 mm, 2 mm) line to (2 mm, 0 mm) line to (-2 mm, 2 mm) }
profile b = outline { start (-2 mm, 0 mm) line to (2 mm, 0 mm) arc through (2 mm, 1 mm) to (2 mm, 2 mm) }
profile c = outline { start (-2 mm, 0 mm) line to (-2 mm, 0 mm) line to (2 mm, 2 mm) }
profile d = outline { start (-2 mm, 0 mm) line to (2 mm, 0 mm) }
