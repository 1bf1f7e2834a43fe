"""The pages of the middle pane: a table of them, what each is given, and the shelf that makes them late."""
