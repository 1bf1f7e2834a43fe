"""The page of records: what happened, planned against actual, what was learned."""
