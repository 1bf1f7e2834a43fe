"""What is dissolved in the water of a loop, element by element, day by day.

A pool begins with the last test before the plan, else with an assumed level, and goes on from every test
within the plan. Plants cannot take what is not there; what they lack is counted. Nitrogen lost as gas is
reckoned once, as a share of the feed, before it comes here. Iron does not stay dissolved for long, and
phosphorus falls out slowly.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import Farm
from planner.farm.site import Loop
from planner.farm.species import ELEMENTS
from planner.farm.water import Quantity, Reading
from planner.forecast.values import MG_PER_G, Bools, Floats, PoolMiss, Ruler
from planner.forecast.warmth import by_day
from planner.science.pools import run_steady_pools

_ELEMENT_OF: Final = {
    Quantity.NITRATE_N_MG_PER_L: ELEMENTS.index("n"),
    Quantity.P_MG_PER_L: ELEMENTS.index("p"),
    Quantity.K_MG_PER_L: ELEMENTS.index("k"),
    Quantity.CA_MG_PER_L: ELEMENTS.index("ca"),
    Quantity.MG_MG_PER_L: ELEMENTS.index("mg"),
    Quantity.FE_MG_PER_L: ELEMENTS.index("fe"),
}
"""What each test says of: nitrogen waits in the water as nitrate, next to which ammonia is little."""

FALLING_OUT: Final = {"fe": "iron", "p": "phosphorus"}
"""What does not stay dissolved, and the name of its half-life."""
_HALF: Final = 0.5
"""What is left after a half-life, by its meaning."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PoolFigures:
    """Coefficients of pools; those with one entry per element are arrays."""

    assumed_mg_per_l: Floats
    falling_out_share_per_day: Floats
    make_up_leaving_share: float
    reading_holds_days: float
    top_up_share_per_day: float


def pool_figures(catalogue: Catalogue) -> PoolFigures:
    """Return the coefficients as the catalogue has them.

    The assumed level is the working floor of leafy crops, the lower of the two there are.
    """
    falling_out = np.zeros(len(ELEMENTS))
    for element, name in FALLING_OUT.items():
        half_life_days = catalogue.figure(f"coefficient/pools/{name}_half_life_days").value
        falling_out[ELEMENTS.index(element)] = 1.0 - _HALF ** (1.0 / half_life_days)
    floors = [catalogue.figure(f"solution/leafy/{element}").value for element in ELEMENTS]
    return PoolFigures(
        assumed_mg_per_l=np.asarray(floors),
        falling_out_share_per_day=falling_out,
        make_up_leaving_share=catalogue.figure("coefficient/pools/make_up_leaving_share").value,
        reading_holds_days=catalogue.figure("coefficient/pools/reading_holds_days").value,
        top_up_share_per_day=catalogue.figure("loop/top_up_share_per_day").value,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class PoolSetup:
    """Where the pools of a loop begin, by element, what was tested since, and what leaves in a day.

    `tested_mg_per_l` has an entry per element for each day of a test, not a number where none was made.
    `leaving_share` [1/d], one for all or by element, is what leaves with water or falls out of it.
    """

    water_l: float
    start_mg_per_l: Floats
    start_assumed: Bools
    tested_mg_per_l: Mapping[int, Floats]
    leaving_share: float | Floats


def readings_of_pools(farm: Farm) -> tuple[Reading, ...]:
    """Return the readings that pools go by."""
    return tuple(reading for reading in farm.readings if reading.quantity in _ELEMENT_OF)


def pool_setup(loop: Loop, tests: Iterable[Reading], figures: PoolFigures, ruler: Ruler) -> PoolSetup:
    """Return where the pools of a loop begin and what was tested since.

    `tests` are readings of any loop. Make-up water replaces what is lost; the part that left as water
    took along what was dissolved in it, the rest went into the air. Iron falls out besides, for light and
    air take the chelate from it; so does phosphorus, with calcium and iron.
    """
    start = figures.assumed_mg_per_l.copy()
    assumed = np.ones(len(ELEMENTS), dtype=np.bool_)
    tested: dict[int, Floats] = {}
    for element, values in _values_by_element(loop, tests).items():
        for on, mg_per_l in values:
            day = ruler.day_of(on)
            if 0 <= day < ruler.days:
                tested.setdefault(day, np.full(len(ELEMENTS), np.nan))[element] = mg_per_l
            elif -figures.reading_holds_days <= day < 0:
                start[element], assumed[element] = mg_per_l, False
    usual = loop.water_l * figures.top_up_share_per_day
    litres = usual if loop.top_up_l_per_day is None else loop.top_up_l_per_day
    with_water = min(litres * figures.make_up_leaving_share / loop.water_l, 1.0)
    return PoolSetup(
        water_l=loop.water_l,
        start_mg_per_l=start,
        start_assumed=assumed,
        tested_mg_per_l=tested,
        leaving_share=1.0 - (1.0 - with_water) * (1.0 - figures.falling_out_share_per_day),
    )


def _values_by_element(loop: Loop, tests: Iterable[Reading]) -> dict[int, tuple[tuple[date, float], ...]]:
    found: dict[int, list[Reading]] = {}
    for test in tests:
        if test.loop == loop.id:
            found.setdefault(_ELEMENT_OF[test.quantity], []).append(test)
    return {element: by_day(many) for element, many in found.items()}


@dataclass(frozen=True, slots=True, kw_only=True)
class LoopPools:
    """The pools of a loop [g], each of shape (element, day); `pool_g` at the start of the day."""

    pool_g: Floats
    unmet_g: Floats
    leaving_g: Floats
    assumed: Bools
    misses: tuple[PoolMiss, ...]


def loop_pools(setup: PoolSetup, *, supply_g: Floats, demand_g: Floats) -> LoopPools:
    """Return the pools of a loop under a supply and a demand of shape (element, day) [g/d].

    Worked with arrays from test to test: exact, and quick enough for a drag.
    """
    grams = setup.water_l / MG_PER_G
    run = run_steady_pools(
        setup.start_mg_per_l * grams,
        supply_g=supply_g,
        demand_g=demand_g,
        leaving_share=setup.leaving_share,
        set_g={day: tested * grams for day, tested in setup.tested_mg_per_l.items()},
    )
    assumed = np.empty(supply_g.shape, dtype=np.bool_)
    assumed[:] = setup.start_assumed[:, np.newaxis]
    for day, tested in setup.tested_mg_per_l.items():
        assumed[~np.isnan(tested), day:] = False
    return LoopPools(
        pool_g=run.start_g,
        unmet_g=run.unmet_g,
        leaving_g=run.leaving_g,
        assumed=assumed,
        misses=tuple(_misses(setup, run.end_g / grams, assumed)),
    )


def _misses(setup: PoolSetup, end_mg_per_l: Floats, assumed: Bools) -> Iterator[PoolMiss]:
    """Yield how far off each test was, in order of days."""
    for day, tested in sorted(setup.tested_mg_per_l.items()):
        expected = end_mg_per_l[:, day - 1] if day else setup.start_mg_per_l
        was_assumed = assumed[:, day - 1] if day else setup.start_assumed
        for element in np.flatnonzero(~np.isnan(tested)).tolist():
            yield PoolMiss(
                element=element,
                day=day,
                expected_mg_per_l=float(expected[element]),
                read_mg_per_l=float(tested[element]),
                assumed=bool(was_assumed[element]),
            )
