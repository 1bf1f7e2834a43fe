"""How a plan is printed: neutral reports as values, measured and broken into pages, then drawn.

Only `qt_writer` knows the toolkit; nothing here knows storage or the clock.
"""
