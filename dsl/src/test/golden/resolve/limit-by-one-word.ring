limit wall 1 mm because "our caster holds this"
limit casting 1 mm because "our caster holds this"
