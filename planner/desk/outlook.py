"""One look ahead for everything the desk shows: the farm, its forecast, its verdicts, looked up by id.

Made once after every act and then only read. Must know nothing of widgets.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import Batch
from planner.farm.farm import DAYS_PER_WEEK, KINDS, Farm, Thing, things
from planner.farm.fields import FieldKind, Id, specs_of
from planner.forecast.engine import Forecaster
from planner.forecast.figures import BandFigures
from planner.forecast.values import Flag, Forecast, GroupForecast, LoopForecast, WeekVerdict
from planner.forecast.verdicts import week_verdicts


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Outlook:
    """A farm and all that is foreseen for it; `verdicts` are by loop, then by week."""

    farm: Farm
    forecast: Forecast
    catalogue: Catalogue
    verdicts: dict[Id, tuple[WeekVerdict, ...]]
    found: dict[Id, Thing]
    flags: dict[Id, tuple[Flag, ...]]
    bands: BandFigures

    def week_of(self, day: date) -> int:
        """Return the number of the week a day lies in, kept within the plan."""
        ruler = self.forecast.ruler
        return min(max(ruler.day_of(day) // DAYS_PER_WEEK, 0), ruler.weeks - 1)

    def covers(self, day: date) -> bool:
        """Tell whether the plan covers a day."""
        return 0 <= self.forecast.ruler.day_of(day) < self.forecast.ruler.days

    def crop_name(self, key: str) -> str:
        """Return what a crop is called; its key when the catalogue has none."""
        crop = self.catalogue.crops.get(key)
        return crop.name if crop else key

    def group(self, group: Id) -> tuple[LoopForecast, GroupForecast] | None:
        """Return the forecast of a fish group and of its loop."""
        for loop in self.forecast.loops:
            for found in loop.groups:
                if found.group == group:
                    return loop, found
        return None

    def loop(self, loop: Id) -> LoopForecast | None:
        """Return the forecast of a loop."""
        return next((found for found in self.forecast.loops if found.loop == loop), None)

    def seeds(self, batch: Batch) -> int:
        """Return the seeds to sow for a batch."""
        table = self.forecast.batches
        return int(table.seeds[table.row_of[batch.id]])


def look_out(farm: Farm, forecaster: Forecaster) -> Outlook:
    """Return the outlook of a farm. Raises what the forecaster raises."""
    forecast = forecaster.forecast(farm)
    flags: dict[Id, list[Flag]] = {}
    for flag in forecast.flags:
        flags.setdefault(flag.about, []).append(flag)
    return Outlook(
        farm=farm,
        forecast=forecast,
        catalogue=forecaster.catalogue,
        verdicts={
            loop.loop: week_verdicts(loop, forecast.ruler, forecaster.bands) for loop in forecast.loops
        },
        found={thing.id: thing for kind in KINDS for thing in things(farm, kind.word)},
        flags={about: tuple(many) for about, many in flags.items()},
        bands=forecaster.bands,
    )


_SHELVES: Final = {
    "crop": "crops",
    "fish": "fish",
    "feed": "feeds",
    "supplement": "supplements",
    "feeding table": "feeding_tables",
}


def unknown_keys(farm: Farm, catalogue: Catalogue) -> tuple[str, ...]:
    """Return what a farm names that the catalogue does not have, such as 'crop "basil"'; each once."""
    missing: dict[str, None] = {}
    for kind in KINDS:
        fields = [
            (name, spec.catalogue)
            for name, spec in specs_of(kind.owner).items()
            if spec.kind is FieldKind.KEY and spec.catalogue in _SHELVES
        ]
        for thing in things(farm, kind.word) if fields else ():
            for name, shelf in fields:
                key = getattr(thing, name)
                if key and key not in getattr(catalogue, _SHELVES[shelf]):
                    missing[f'{shelf} "{key}"'] = None
    return tuple(missing)
