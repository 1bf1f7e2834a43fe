"""Feed that is given, as it is weighed out: the window rounds it as the sheets do, and never otherwise.

Must know nothing of widgets.
"""

from __future__ import annotations

from planner.desk.words import number_words
from planner.paper.documents.amounts import ration_g


def feed_words(grams: float) -> str:
    """Return grams of feed in the numbers of the grower's own language."""
    weighed = ration_g(grams)
    return number_words(weighed, digits=0 if weighed == round(weighed) else 1)
