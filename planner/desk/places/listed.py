"""The pages of the middle pane as a table: what each is called, and its keys.

A page is read in when it is first seen. Imports nothing but typing, for the window is painted with these
titles before anything else is there.
"""

from __future__ import annotations

from typing import Final, NamedTuple


class Listed(NamedTuple):
    """One page; a `late` one is made when first seen, a `wide` one hides the panes on both sides."""

    key: str
    title: str
    keys: str
    tip: str
    late: bool = True
    wide: bool = False


LISTED: Final = (
    Listed("weeks", "Weeks", "Ctrl+1", "All lanes on one ruler of weeks", late=False),
    Listed("batches", "Batches", "Ctrl+2", "Every batch in a table", late=False),
    Listed("beds", "Bed map", "Ctrl+3", "Every hole of every bed on any day"),
    Listed("balance", "Balance", "Ctrl+4", "Supply and demand of each element, and what helps", wide=True),
    Listed("fish", "Fish", "Ctrl+5", "Groups, growth, feed by week and meal, density, harvest", wide=True),
    Listed("water", "Water", "Ctrl+6", "Readings and doses, and what the water asks for", wide=True),
    Listed("plan", "Plan", "Ctrl+7", "Repairs, a season worked out, stocking, what if, orders", wide=True),
    Listed(
        "records", "Records", "Ctrl+8", "What happened, planned against actual, what was learned", wide=True
    ),
    Listed("book", "Catalogue", "Ctrl+9", "Every figure with its source, and your own over it", wide=True),
)

BY_HAND: Final = frozenset({"weeks", "beds"})
"""The pages on which things are dragged."""
