"""The water-test log of each loop, with the band that each value should keep to in its heading.

Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date
from typing import Final

from planner.farm.site import Loop
from planner.farm.water import Quantity
from planner.forecast.water.targets import TargetBand, target_bands
from planner.paper.documents.ask import Ask
from planner.paper.documents.columns import WRITE, dated, says, written
from planner.paper.documents.quantities import band_words, unit_of
from planner.paper.report import Cell, Column, Paragraph, Report, RowGroup, Section, Table
from planner.paper.words import NO_BREAK, day_words

TITLE: Final = "Water-test log"
_CAUTIONS: Final = ("caustic-bases", "acids")
_ROWS_A_WEEK: Final = 3
_TESTS: Final = (
    ("ph", "pH", Quantity.PH),
    ("water_c", "Water", Quantity.WATER_C),
    ("ec", "EC", Quantity.EC_MS_PER_CM),
    ("tds", "Meter", None),
    ("tan", "TAN", Quantity.TAN_MG_PER_L),
    ("no2", "NO₂", Quantity.NITRITE_N_MG_PER_L),
    ("no3", "NO₃", Quantity.NITRATE_N_MG_PER_L),
    ("kh", "KH", Quantity.ALKALINITY_MG_PER_L),
    ("do", "Oxygen", Quantity.OXYGEN_MG_PER_L),
)
_MASSES: Final = (
    "coefficient/atomic_masses/atomic_mass_n",
    "coefficient/atomic_masses/atomic_mass_o",
)
_OXYGENS: Final = {"nitrite": 2, "nitrate": 3}
_HOW_TO: Final = (
    "Test before feeding and write the time. The figures in bold are where values should be. Repeat an odd "
    "value before acting on it. NO₂ and NO₃ are as nitrogen: divide a reading as the ion by "
    "{nitrite:.1f} and by {nitrate:.1f}. "
    "Base: write K for potassium or Ca for calcium beside the grams, and take them in turn."
)


def water_log(ask: Ask) -> Report:
    """Return a log for each loop, some lines a week, the first of them dated."""
    sections = tuple(
        section for number, loop in enumerate(ask.farm.loops) for section in _log_of(ask, loop, number)
    ) or (Section(parts=(Paragraph(text="There is no loop of water on this farm."),)),)
    return ask.report(TITLE, sections, subtitle=ask.span_words, landscape=True)


def _log_of(ask: Ask, loop: Loop, number: int) -> Iterator[Section]:
    groups = tuple(
        RowGroup(heading=name, detail=days, rows=_week(start, many=len(_TESTS)))
        for start in ask.week_starts()
        for name, days in (ask.week_head(start),)
    )
    table = Table(
        name=f"Water {loop.name}", columns=tuple(_columns(target_bands(ask.catalogue))), groups=groups
    )
    heading = f"{loop.name}, {loop.water_l:,.0f}{NO_BREAK}L"
    yield Section(heading=heading, parts=(Paragraph(text=_how_to(ask)),), new_page=number > 0)
    yield Section(parts=ask.cautions(*_CAUTIONS), columns=2)
    yield Section(parts=(table,))


def _how_to(ask: Ask) -> str:
    """Return what to do; an ion is heavier than its nitrogen by the oxygen it holds."""
    nitrogen, oxygen = (ask.catalogue.figure(path).value for path in _MASSES)
    return _HOW_TO.format(**{ion: 1 + many * oxygen / nitrogen for ion, many in _OXYGENS.items()})


def _week(start: date, *, many: int) -> tuple[tuple[Cell, ...], ...]:
    weekday, rest = day_words(start, beside=start).split(" ", 1)
    dated = says(f"{weekday} {rest.replace(' ', NO_BREAK)}", value=start.isoformat())
    rest_of = (WRITE,) * (many + 6)
    return ((dated, *rest_of), *((WRITE, *rest_of),) * (_ROWS_A_WEEK - 1))


def _columns(bands: Mapping[Quantity, TargetBand]) -> Iterator[Column]:
    yield dated(mm=15.4)
    yield written("time", "Time", share=0.1)
    for key, heading, quantity in _TESTS:
        if quantity is None:
            yield written(key, heading, unit="ppm", share=0.1)
        else:
            yield written(
                key, heading, unit=unit_of(quantity), band=band_words(bands.get(quantity)), share=0.1
            )
    yield written("top_up", "Top-up", unit="L", share=0.1)
    yield written("base", "Base", unit="g, K or Ca", share=0.2)
    yield written("iron", "Iron", unit="g", share=0.1)
    yield written("note", "Note", mm=20.0, share=2.0)
    yield written("initials", "Initials", share=0.1)
