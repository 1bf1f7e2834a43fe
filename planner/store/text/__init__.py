"""A whole farm as one text file that a person writes by hand, mails and diffs.

The form is TOML and is described in docs/farm-text.md. Reading is all or nothing: a text with a
fault gives every fault found and no farm. Knows nothing of Qt, databases or forecasts.
"""

from planner.store.text.own_entries import read_own_entries, read_own_entries_file
from planner.store.text.reader import read_farm_file, read_farm_text
from planner.store.text.writer import write_farm_text, write_own_entries

__all__ = [
    "read_farm_file",
    "read_farm_text",
    "read_own_entries",
    "read_own_entries_file",
    "write_farm_text",
    "write_own_entries",
]
