"""The figures: crops, fish, feeds, supplements, cautions and publications, read from `resources/`.

Every figure keeps its unit, conditions, source and confidence. Knows the farm's values; must know
nothing of Qt, of storage, or of what is computed with the figures.
"""
