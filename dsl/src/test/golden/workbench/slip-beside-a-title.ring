# A title, a limit, an option and a forgotten name stand beside a slip in a question.
title "Harbour wall"
forget nobody
show 5 mm + 2 g
