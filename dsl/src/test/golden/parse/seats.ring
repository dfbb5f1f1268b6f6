cut seats for lights from stripe, shank {
  hole 0.8 mm
  bearing 0.35 mm
  clearance 0.01 mm
  deburr 0.1 mm
  made at bench
}
cut rail for lights from shank {
  clearance 0.01 mm deburr
  channel { width 90 % notch 0.2 mm lip 0.3 mm floor 0.4 mm bars every 3 }
} because "no claws"
