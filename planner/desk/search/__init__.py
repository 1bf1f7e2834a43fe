"""Search over everything: what can be found, how well it fits, and the line to type in."""
