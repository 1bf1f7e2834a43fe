"""The page of the fish: groups and their growth, what they are fed, how densely they stand, harvests."""
