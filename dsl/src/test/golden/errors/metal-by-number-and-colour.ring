band shank {
  metal 18k-yellow
}
metal 18k-blue
metal 14kt-white
