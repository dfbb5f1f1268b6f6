show casting { stock 0.1 }
show casting { stock 0.1 mm }
show casting { stock 2 % }
export "a.stl" {
  stock 0.1 mm outside, 0.05 mm
  shrinkage 1.6 %
}
show casting { stock filing }
show casting { stock 0.1 mm shrinkage 2 % }
