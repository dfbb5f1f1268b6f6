title "First light"
title "Second light"
