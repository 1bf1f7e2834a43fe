"""A week in one short message, for a phone that takes no files: at most 160 plain letters.

Picks and moves come first, since they cannot wait; what finds no room is counted. Must not know layout or
toolkits.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator, Sequence
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import Farm
from planner.forecast.values import Forecast
from planner.forecast.week import DueKind, DueTask, DueUnit, due_in_week
from planner.paper.plain_names import one_line

MOST_LETTERS: Final = 160
"""What one message holds while every letter of it is plain."""
_NAME_LETTERS: Final = 16
_DAYS: Final = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_VERBS: Final = {
    DueKind.PICK: "pick",
    DueKind.MOVE: "move",
    DueKind.SOW: "sow",
    DueKind.SPACE: "space",
    DueKind.STOCK_FISH: "stock fish",
    DueKind.HARVEST_FISH: "harvest fish",
    DueKind.DOSE: "dose",
    DueKind.CLEAR: "clear",
}


def week_message(farm: Farm, forecast: Forecast, catalogue: Catalogue, *, week: int) -> str:
    """Return what is due in a week of the ruler, in at most 160 letters of ASCII."""
    tasks = due_in_week(farm, forecast, week)
    head = f"{plain(farm.settings.name)[:_NAME_LETTERS].strip()} {forecast.ruler.week_name(week)}: "
    parts = [*_feed(tasks), *_work(tasks, catalogue)]
    return _fitted(head, parts) if parts else f"{head}nothing is due"


def plain(text: str) -> str:
    """Return a text in plain letters, which a message counts once: marks are taken off, others become "?".

    >>> plain("Azúcar – 水")
    'Azucar - ?'
    """
    split = unicodedata.normalize("NFKD", one_line(text).replace("–", "-").replace("’", "'"))
    bare = "".join(letter for letter in split if not unicodedata.combining(letter))
    return bare.encode("ascii", "replace").decode("ascii")


def _feed(tasks: Sequence[DueTask]) -> Iterator[str]:
    grams = sum(task.many for task in tasks if task.kind is DueKind.FEED)
    if grams:
        yield f"feed {grams:.0f} g/day at most"


def _work(tasks: Sequence[DueTask], catalogue: Catalogue) -> Iterator[str]:
    """Yield each kind of work with its days, numbers and codes of crops, the most pressing kind first."""
    for kind, verb in _VERBS.items():
        done: dict[tuple[int, str], float] = {}
        for task in (task for task in tasks if task.kind is kind):
            key = (task.on.weekday(), _code(task, catalogue))
            done[key] = done.get(key, 0.0) + task.many
        unit = "g" if kind is DueKind.DOSE else ""
        for at, ((day, code), many) in enumerate(sorted(done.items())):
            yield f"{f'{verb} ' if at == 0 else ''}{many:.0f}{unit} {code} {_DAYS[day]}"


def _code(task: DueTask, catalogue: Catalogue) -> str:
    crop = catalogue.crops.get(task.crop)
    if crop is not None:
        return plain(crop.code)
    return plain(task.what)[:_NAME_LETTERS].strip() if task.unit is not DueUnit.G else task.what.split("-")[0]


def _fitted(head: str, parts: Sequence[str]) -> str:
    for kept in range(len(parts), -1, -1):
        left = len(parts) - kept
        more = [f"+{left} more"] if left else []
        text = head + ", ".join([*parts[:kept], *more])
        if len(text) <= MOST_LETTERS:
            return text
    return head[:MOST_LETTERS]
