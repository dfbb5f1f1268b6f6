ring harbour
