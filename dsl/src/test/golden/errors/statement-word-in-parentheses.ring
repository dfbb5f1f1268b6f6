a = max(1 mm,
band b { finger ISO 57 profile p metal m }
