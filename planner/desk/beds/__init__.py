"""The page of the beds: a plan to scale of every hole on any day, and the same as a table."""
