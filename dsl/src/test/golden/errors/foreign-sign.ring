require a == b && c != d
