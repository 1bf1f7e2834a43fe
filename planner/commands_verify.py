"""The command `verify`: works published cases again and shows how far the program is from print.

Exit codes: 0 all within tolerance, 1 something is outside or a file of cases is wrong, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import Means

if TYPE_CHECKING:
    from planner.forecast.verify.cases import Area, Input
    from planner.forecast.verify.run import CaseResult, Counts, LackingResult

_GOOD, _OUTSIDE = 0, 1
_PERCENT: Final = 100.0
_NO_UNIT: Final = "1"
_HEADS: Final = ("", "ours", "published", "difference", "tolerance", "source", "case")
_RIGHT: Final = (1, 2, 3, 4)
_MARKS: Final = {
    "within": "ok",
    "outside": "OUTSIDE",
    "shown from memory": "memory",
    "rests on an assumption": "assumed",
}
_STANDINGS: Final = {"independent": "", "formula only": " formula", "own source": " own"}
"""Added to the mark: what agreement would prove."""


def add_verify(commands: Any) -> None:
    """Add the command to the parsers of the command line."""
    parser = commands.add_parser(
        "verify",
        help="hold the arithmetic against published figures",
        description="Works published cases again with the shipped figures and shows of each the inputs, our "
        "figure, the published one, their difference, the tolerance and the source.",
    )
    form = parser.add_mutually_exclusive_group()
    form.add_argument("--json", action="store_true", help="as JSON (docs/verify.md)")
    form.add_argument("--csv", action="store_true", help="as a table for a spreadsheet")
    parser.add_argument("--area", metavar="A", help="one area only, such as water")
    parser.set_defaults(run=run_verify)


def run_verify(parsed: argparse.Namespace) -> int:
    """Print the results; 1 when one is outside its tolerance."""
    from planner.catalogue.errors import CatalogueError

    means = Means()
    try:
        areas = shipped_areas(means)
        wanted = [area for area in areas if parsed.area in (None, area.key)]
        if not wanted:
            raise _no_area(parsed.area, areas)
        results = results_of(means, wanted)
    except CatalogueError as error:
        print(error, file=sys.stderr)
        return _OUTSIDE
    from planner.forecast.verify.run import counts_of

    lacking = lacking_in(means, wanted)
    counts = counts_of(results, lacking)
    if parsed.json:
        _print_json(results, lacking)
    elif parsed.csv:
        _print_csv(results, lacking)
    else:
        print("\n".join(_lines(wanted, results, lacking, counts)))
    return _OUTSIDE if counts.outside else _GOOD


def _no_area(word: str, areas: Sequence[Area]) -> Exception:
    from planner.cli_shared import WrongUsageError

    known = ", ".join(area.key for area in areas)
    return WrongUsageError(f'--area "{word}" is no area of cases; there are {known}.')


def _print_json(results: Sequence[CaseResult], lacking: Sequence[LackingResult]) -> None:
    from planner.forecast.verify.plain import verify_data

    json.dump(verify_data(results, lacking), sys.stdout, indent=2, ensure_ascii=False)
    print()


def _print_csv(results: Sequence[CaseResult], lacking: Sequence[LackingResult]) -> None:
    from planner.forecast.verify.table import verify_csv

    print(verify_csv(results, lacking), end="")


def shipped_areas(means: Means) -> tuple[Area, ...]:
    """Return the areas of the cases that ship; raises `CatalogueError` for a wrong file."""
    from planner.catalogue.case_files import shipped_case_tables
    from planner.forecast.verify.cases import areas_taken

    return areas_taken(shipped_case_tables(), sources=means.catalogue.publications)


def results_of(means: Means, areas: Sequence[Area]) -> tuple[CaseResult, ...]:
    """Return the results of areas, with the farms of their whole-system cases read from text."""
    from planner.catalogue.case_files import shipped_system_path
    from planner.forecast.verify.run import farms_needed, verify_all

    farms = {name: means.read(shipped_system_path(name)).farm for name in farms_needed(areas)}
    return verify_all(means.catalogue, areas, farms=farms)


def lacking_in(means: Means, areas: Sequence[Area]) -> tuple[LackingResult, ...]:
    """Return what of areas the program cannot work out."""
    from planner.forecast.verify.run import lacking_of

    return lacking_of(means.catalogue, areas)


def _lines(
    areas: Sequence[Area], results: Sequence[CaseResult], lacking: Sequence[LackingResult], counts: Counts
) -> Iterator[str]:
    titles = {area.key: area.title for area in areas}
    for key, group in groupby(results, key=lambda result: result.area):
        yield f"{titles[key]} ({key})"
        yield from _table([_HEADS, *(_row(result) for result in group)])
        yield ""
    yield "Sources:"
    sources = {result.source: result.publication for result in results}
    sources |= {each.source: each.publication for each in lacking}
    yield from (f"  {key}: {sources[key]}" for key in sorted(sources))
    yield ""
    if lacking:
        yield "Not computed:"
        yield from (line for each in lacking for line in _about_lacking(each))
        yield ""
    outside = [result for result in results if result.within is False]
    if outside:
        yield "Outside:"
        yield from (line for result in outside for line in _about(result))
        yield ""
    if outside:
        yield range_line(counts)
    yield standing_line(counts)
    yield counts_line(counts)


def range_line(counts: Counts) -> str:
    """Say how many of those outside lie where the ranges of the figures behind them reach."""
    return (
        f"Of those outside, {counts.outside_in_range} lie within our range, that is the low and high of the "
        "figures behind them; they count as outside all the same."
    )


def standing_line(counts: Counts) -> str:
    """Say how much the judged cases prove, and what judges nothing."""
    return (
        f"Independent: {counts.independent}, {counts.independent_within} within; checking a formula only: "
        f"{counts.formula_only}; leaning on a figure of the same publication (own): {counts.own_source}. "
        f"Resting on an assumption: {counts.assumed}. Not computed: {counts.not_computed}."
    )


def counts_line(counts: Counts) -> str:
    """Say how many cases there are and how they came out."""
    return (
        f"{counts.cases} case{'' if counts.cases == 1 else 's'}: {counts.within} within tolerance, "
        f"{counts.outside} outside, {counts.from_memory} shown from memory"
    )


def _row(result: CaseResult) -> tuple[str, ...]:
    return (
        _MARKS[result.verdict.value] + _STANDINGS[result.standing.value],
        f"{_ours(result)}{_unit(result)}",
        _number(result.published),
        _difference(result),
        "order" if result.reason.value == "order only" else f"± {_number(result.tolerance)}",
        result.source,
        f"{result.title} [{_said(result.inputs)}]" if result.inputs else result.title,
    )


def _ours(result: CaseResult) -> str:
    """Return our figure, or its range over what is assumed."""
    if not result.ranges:
        return _number(result.ours)
    return f"{_number(result.ours_low)} to {_number(result.ours_high)}"


def _unit(result: CaseResult) -> str:
    return "" if result.unit == _NO_UNIT else f" {result.unit}"


def _number(value: float) -> str:
    return f"{value:.5g}"


def _difference(result: CaseResult) -> str:
    """Return the difference, of a range that of its nearest end."""
    gap = result.gap
    share = f" ({gap / abs(result.published) * _PERCENT:+.2f} %)" if result.published else ""
    return f"{gap:+.3g}{share}"


def _said(inputs: Sequence[tuple[str, Input]]) -> str:
    return ", ".join(f"{name} {_value(value)}" for name, value in inputs)


def _value(value: Input) -> str:
    if isinstance(value, tuple):
        return "/".join(f"{number:g}" for number in value)
    return value if isinstance(value, str) else f"{value:g}"


def _table(rows: Sequence[Sequence[str]]) -> Iterator[str]:
    """Yield rows with their columns in line; the last one runs free."""
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for row in rows:
        cells = [
            cell.rjust(width) if place in _RIGHT else cell.ljust(width)
            for place, (cell, width) in enumerate(zip(row, widths, strict=True))
        ]
        yield f"  {'  '.join(cells)}".rstrip()


def _about(result: CaseResult) -> Iterator[str]:
    figures = f"{_ours(result)} against {_number(result.published)}{_unit(result)}"
    tolerance = f"tolerance {_number(result.tolerance)} ({result.reason.value})"
    yield f"  {result.key}: {result.title}: {figures}, {_difference(result)}, {tolerance}"
    yield f"    {result.publication}"
    if result.span:
        where = "within" if result.in_span else "outside"
        reach = f"{result.span.low:.3g} to {result.span.high:.3g}{_unit(result)}"
        yield f"    By the low and high of the figures behind it ours is {reach}: print is {where} our range."
    if result.note:
        yield f"    {result.note}"
    if result.assumed:
        yield f"    {result.assumed.words}"


def _about_lacking(each: LackingResult) -> Iterator[str]:
    yield f"  {each.key}: {each.title}: {each.published}"
    yield f"    {each.lacks}"
    yield f"    {each.publication}"
    if each.note:
        yield f"    {each.note}"
