"""How a farm changes: one small function per intention of the user, and the session that carries them out.

Functions return change sets; only the session keeps them. Knows nothing of windows and widgets.
"""
