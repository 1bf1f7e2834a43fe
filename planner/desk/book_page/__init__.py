"""The page of the catalogue: every figure with its source, and the grower's own laid over it."""
