limit casting-wall 0.5 mm because "our caster holds this"
limit pin-notch 45 % because "heavy pins"   # per cent
limit culet-to-finger thickness / 4
  because "drilled through"
