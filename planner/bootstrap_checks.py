"""Works the published cases out step by step for the window, so that it can paint between the steps."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import groupby
from typing import TYPE_CHECKING, Final

from planner.commands_verify import lacking_in, results_of, shipped_areas
from planner.desk.services import CheckStep

if TYPE_CHECKING:
    from planner.bootstrap import Means
    from planner.forecast.verify.cases import Area, Case

_MOST: Final = 12
"""Cases of one step, few enough to take no longer than a blink."""


def check_steps(means: Means) -> Iterator[CheckStep]:
    """Yield the results of all shipped cases in order, a few at a time.

    Raises `CatalogueError` for a wrong file of cases.
    """
    areas = shipped_areas(means)
    cases = sum(len(area.cases) for area in areas)
    for area in areas:
        lacking = lacking_in(means, (area,))
        for part in _parts(area):
            yield CheckStep(
                area=area.key,
                title=area.title,
                cases=cases,
                results=results_of(means, [replace(area, cases=tuple(part))]),
                lacking=lacking,
            )
            lacking = ()


def _parts(area: Area) -> Iterator[Sequence[Case]]:
    """Yield the cases of an area in runs of one farm each, as short as a step may be."""
    for _, group in groupby(area.cases, key=_farm):
        run = list(group)
        step = len(run) if run[0].farm else _MOST
        yield from (run[first : first + step] for first in range(0, len(run), step))


def _farm(case: Case) -> str:
    return case.farm
