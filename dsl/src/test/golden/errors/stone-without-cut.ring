stone-row r on b { stone diamond 1.5 mm  around full  count 10  sink 0.2 mm }
