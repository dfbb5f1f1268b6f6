show ring show weights
band s { finger ISO 57 } show ring
