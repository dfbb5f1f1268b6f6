ring b { finger ISO 57  profile p  metal silver-925 }
