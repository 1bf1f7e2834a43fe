"""Late tasks in words: what was to be done, how late it is, and what is short if it is done today."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from typing import Final

from planner.farm.fields import Id
from planner.farm.log import Happening
from planner.farm.species import Crop, HarvestKind
from planner.forecast.values import Ruler
from planner.paper.plain_names import one_line
from planner.paper.words import count_words, day_words
from planner.planning.late import CarriedOver
from planner.planning.moved import WeekShift

_DO: Final = {Happening.SOWN: "sow", Happening.MOVED: "move to the bed", Happening.PICKED: "pick"}
_MOST_WEEKS: Final = 3


def late_lines(
    late: Iterable[CarriedOver], *, codes: Mapping[Id, str], crops: Mapping[str, Crop], ruler: Ruler
) -> Iterator[str]:
    """Yield a sentence for each late task, the longest late first; `codes` are those of the batches."""
    for one in late:
        days = count_words(one.late_days, "day", "days")
        head = f"{_DO[one.what]} {one_line(codes[one.batch])}: due {day_words(one.due_on)}, {days} late"
        short = "; ".join(short_words(shift, crops=crops, ruler=ruler) for shift in one.short[:_MOST_WEEKS])
        yield f"{head}; if done today, {short}" if short else f"{head}; no week falls short if done today"


def short_words(shift: WeekShift, *, crops: Mapping[str, Crop], ruler: Ruler) -> str:
    """Return by how much a week falls short, such as "W23 2027 will be 12 heads short"."""
    many = round(-shift.plants)
    single = crops[shift.crop].harvest is HarvestKind.SINGLE
    counted = count_words(many, "head", "heads") if single else count_words(many, "plant", "plants")
    return f"{ruler.week_name(shift.week)} will be {counted} of {crops[shift.crop].name} short"
