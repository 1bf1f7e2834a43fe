"""The documents of a farm: one module for each, which makes a neutral report of what it is asked.

None knows layout, toolkits, storage or the clock.
"""
