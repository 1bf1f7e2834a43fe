"""Where a farm is kept: typed tables, one transaction per act, migrations, safe copies.

Knows farm values and SQLAlchemy; nothing of screens, forecasts or clocks. Nothing that is read
from a file is ever run.
"""
