cut c from shank {
  width = 1.9 mm
  depth: 1 mm
}
band b { finger = ISO 57 metal: m }
metal m { gold = 50 % }
