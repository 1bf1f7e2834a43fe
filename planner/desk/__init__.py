"""How the farm is seen: the window, its lanes, lists, forms and words.

Knows values, forecasts and acts, but never how a farm is kept: nothing here imports the store.
"""
