price = 3 EUR * 2 USD
