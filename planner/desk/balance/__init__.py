"""The page of the balance: what is supplied and wanted of each element in each week, and what would help."""
