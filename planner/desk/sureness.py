"""Works out in the background how sure a forecast is: chances first, then ranges.

Takes seconds, so it runs beside the window, for the farm as it was when asked, and is given up when the
farm changes. Must know nothing of words.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import partial
from threading import Event

from PySide6.QtCore import QObject

from planner.catalogue.catalogue import Catalogue
from planner.desk.jobs import Job
from planner.farm.farm import Farm
from planner.forecast.chances.draw import chances_of
from planner.forecast.chances.values import Chances
from planner.forecast.engine import Forecaster
from planner.forecast.ranges.bands import ranges_from, swing_count, swings_of
from planner.forecast.ranges.values import Ranges


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Sureness:
    """How sure a forecast is; `ranges` come later than `chances`."""

    chances: Chances
    ranges: Ranges | None


@dataclass(frozen=True, slots=True)
class SureStep:
    """How far it is, as a share of the whole from 0 to 1."""

    share: float


def sureness_of(farm: Farm, catalogue: Catalogue, stopped: Event) -> Iterator[Sureness | SureStep]:
    """Yield chances, then how far it is, last chances and ranges; nothing more once `stopped` is set.

    `catalogue` has the farm's own entries in it already.
    """
    bare = replace(farm, own_entries=())
    forecaster = Forecaster(catalogue)
    forecast = forecaster.preview(bare)
    chances = chances_of(bare, forecast, forecaster)
    yield Sureness(chances=chances, ranges=None)
    total = swing_count(bare, forecast, forecaster)
    swings = []
    for swing in swings_of(bare, forecast, forecaster):
        if stopped.is_set():
            return
        swings.append(swing)
        yield SureStep(len(swings) / total)
    yield Sureness(chances=chances, ranges=ranges_from(swings, forecast))


def sure_job(farm: Farm, catalogue: Catalogue, parent: QObject) -> Job:
    """Return a job that tells how sure the forecast of a farm is, part by part."""
    return Job(partial(sureness_of, farm, catalogue), "sureness", parent)
