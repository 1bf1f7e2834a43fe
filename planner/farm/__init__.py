"""What a farm is: frozen values with units in their names, checked by declared limits.

Knows only the standard library; nothing of Qt, storage, figures or forecasts.
"""
