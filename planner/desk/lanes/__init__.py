"""The heart of the window: one ruler of weeks with three lanes that scroll and zoom together.

Shows plain values of `scene` and asks a `Mover` for every move; must know nothing of storage.
"""
