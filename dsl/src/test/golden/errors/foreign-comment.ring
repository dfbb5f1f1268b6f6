// a comment
