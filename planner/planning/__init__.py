"""What to do: where batches fit, and later successions, stocking and repairs.

Pure computation; knows no Qt, no storage, no clock and no files.
"""
