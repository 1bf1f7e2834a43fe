"""Brings a table of readings or batches in: what each column is, what cannot be taken, then one step."""
