difference = US 7 - ISO 54
