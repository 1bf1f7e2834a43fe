"""How many fish groups, when and of which size, so that feed stays near what the beds need."""
