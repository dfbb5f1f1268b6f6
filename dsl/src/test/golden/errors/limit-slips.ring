limit casting-wall = 0.5 mm because "no sign here"
limit 0.5 mm
limit casting-wall because "no value"
limit = 0.5 mm
