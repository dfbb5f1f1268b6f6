title "Harbour light"
title “Evening” because "the customer chose it"
