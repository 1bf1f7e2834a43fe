"""Seeded draws of what may happen: how many heads, how much feed, and how likely an amount is reached."""
