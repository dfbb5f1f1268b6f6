Band shank {
  finger ISO 57
}
bnad shank { finger ISO 57 }
shwo ring
shank stripe
