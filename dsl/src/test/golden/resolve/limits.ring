caster = 0.5 mm
limit casting-wal 0.5 mm because "a slip"
limit quite-another-thing 0.5 mm because "there is none"
limit casting-wall caster
limit stone-gap 5 because "a unit is missing"
limit pin-notch 0.3 mm because "a share is asked for"
limit bore-skin 0.4 g because "nothing here is weighed"
limit culet-to-finger 0 mm - 0.2 mm because "nothing is less than nothing"
limit wear-thickness 1 mm because "first said"
limit wear-thickness 1.1 mm because "said again, replaces it"
