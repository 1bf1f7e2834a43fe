"""How much a farm text may hold, so that a hostile or broken file ends in a sentence, not a hang."""

from typing import Final

FORMAT: Final = "raftweek.farm/1"
"""What the `format` key says in a text of this form."""

ENTRIES_FORMAT: Final = "raftweek.entries/1"
"""What the `format` key says in a text of own entries alone."""

MOST_BYTES: Final = 10_000_000
"""Largest file read; a farm with ten thousand batches takes about two million bytes."""

MOST_LINE_CHARACTERS: Final = 100_000
"""Longest line read; the longest note, every character escaped, stays below half of it."""

MOST_NESTING: Final = 20
"""Deepest nesting of brackets; the form itself needs two."""

MOST_KEY_PARTS: Final = 20
"""Most parts of a dotted key; the form itself needs two."""

MOST_THINGS: Final = 100_000
"""Most things in a farm, after repeats are written out."""

MOST_REPEATS: Final = 520
"""Most sowings or stockings that one table may stand for: ten years of weeks."""

MOST_FAULTS: Final = 1_000
"""Faults told of at once; a text with more is not a slip of the pen."""

MOST_DIGITS_OF_WHOLE: Final = 15
"""Longest whole number that a computer's number keeps exactly."""

SHOWN_CHARACTERS: Final = 60
"""So much of a wrong value is shown in a message."""

MOST_DIGITS: Final = 1_000
"""Longest run of digits read at all."""
