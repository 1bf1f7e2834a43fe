"""The page "Plan": what to change in flagged weeks, a season worked out, stocking, what if, orders."""
