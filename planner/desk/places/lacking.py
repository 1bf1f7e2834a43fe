"""What a page lacks before it can show anything: why it is empty, and the one thing to begin with.

Pure: a farm goes in, words come out. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

from planner.desk.say import tr
from planner.farm.farm import Farm


@dataclass(frozen=True, slots=True, kw_only=True)
class Lack:
    """Why a page is empty, and what to begin with: words of a button, and the key of what it does."""

    title: str
    words: str
    button: str
    run: str


_BUTTONS: Final = {
    "site": "Add a site…",
    "loop": "Add a loop of water…",
    "tank": "Add a tank…",
    "bed": "Add a bed…",
    "batch": "Sow a batch…",
    "fish group": "Stock fish…",
}
_NEEDS: Final = {
    "loop": "site",
    "tank": "loop",
    "bed": "loop",
    "fish group": "tank",
}
"""What has to be there before a thing of a kind can be."""
_THERE: Final[dict[str, Callable[[Farm], int]]] = {
    "site": lambda farm: len(farm.sites),
    "loop": lambda farm: len(farm.loops),
    "tank": lambda farm: len(farm.tanks),
    "bed": lambda farm: len(farm.beds),
    "batch": lambda farm: len(farm.batches),
    "fish group": lambda farm: len(farm.fish_groups),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class _Page:
    """A page is empty while nothing of `needs` is there; it is begun with `first`."""

    needs: tuple[str, ...]
    first: str
    title: str
    words: str


_PAGES: Final = {
    "weeks": _Page(
        needs=("bed", "batch", "fish group"),
        first="bed",
        title="Your weeks begin here",
        words="Beds, batches and fish stand here on one line of weeks. Begin with where plants grow; fish "
        "and sowings follow.",
    ),
    "batches": _Page(
        needs=("batch",),
        first="batch",
        title="No batch yet",
        words="Each sowing is a row here, from the seed to the cleared place.",
    ),
    "beds": _Page(
        needs=("bed",),
        first="bed",
        title="No bed yet",
        words="Every hole of every bed is drawn here on any day, with what stands in it and what comes next.",
    ),
    "balance": _Page(
        needs=("batch", "fish group"),
        first="fish group",
        title="Nothing to weigh yet",
        words="What the fish feed supplies is held here against what the plants want, week by week.",
    ),
    "fish": _Page(
        needs=("fish group",),
        first="fish group",
        title="No fish yet",
        words="Growth, feed by week and meal, density and harvest of each group stand here.",
    ),
    "water": _Page(
        needs=("loop",),
        first="loop",
        title="No water yet",
        words="Readings, doses and what the water asks for stand here, for each loop of water.",
    ),
    "plan": _Page(
        needs=("bed",),
        first="bed",
        title="Nothing to plan with yet",
        words="A season, successions, repairs and orders are worked out here, for the beds there are.",
    ),
    "records": _Page(
        needs=("bed", "batch", "fish group", "loop"),
        first="batch",
        title="Nothing to log yet",
        words="What is sown, picked, fed and measured is logged here, and held against the plan.",
    ),
}


def lack_of(key: str, farm: Farm) -> Lack | None:
    """Return why a page is empty and what to begin with; None when it has something to show."""
    page = _PAGES.get(key)
    if page is None or any(_THERE[kind](farm) for kind in page.needs):
        return None
    first = _first_missing(page.first, farm)
    words = tr(page.words)
    if first != page.first:
        words = f"{words} {tr('One thing has to be there before:')}"
    return Lack(title=tr(page.title), words=words, button=tr(_BUTTONS[first]), run=f"new.{first}")


def _first_missing(kind: str, farm: Farm) -> str:
    """Return what has to be made first on the way to a kind."""
    needed = _NEEDS.get(kind)
    if needed is not None and not _THERE[needed](farm):
        return _first_missing(needed, farm)
    return kind
