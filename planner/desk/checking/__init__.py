"""The page of published cases: what the program makes of each, beside what was printed."""
