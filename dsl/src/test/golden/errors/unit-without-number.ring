a = x * mm
