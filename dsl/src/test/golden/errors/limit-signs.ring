limit casting-wall = 1 mm
limit casting-wall >= 1 mm
limit casting-wall: 1 mm because "our caster holds this"
limit casting-wall =
