show casting { shrinkage 1 %  shrinkage 2 % }
show casting { parts shank }
show casting
