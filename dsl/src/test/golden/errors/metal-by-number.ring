band b { finger ISO 57  profile p  metal 14k }
band c { finger ISO 57  profile p  metal 585 }
band d { finger ISO 57  profile p  metal 18ct }
band e { finger ISO 57  profile p  metal 12 }
