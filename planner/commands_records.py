"""The command `records`: the log of a farm, planned against actual, what was learned, what is late.

Exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import dataclasses
import json
import sys
from collections.abc import Callable
from datetime import date
from enum import Enum
from pathlib import Path
from typing import Any, Final

from planner.bootstrap import Means, local_today
from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import Farm, label_of, things
from planner.farm.fields import NO_ID
from planner.farm.log import ABOUT, POINTS_AT
from planner.forecast.seed_lots import lot_shares
from planner.forecast.water.meters import meter_book
from planner.planning.dating import Dater
from planner.planning.late import carried_over, effect_data
from planner.planning.learning import learned, outcomes, reason_totals

FORMAT: Final = "raftweek.records/1"


def add_records(commands: Any, *, day: Callable[[str], date]) -> None:
    """Add the command to the parsers of the command line; `day` reads a date."""
    parser = commands.add_parser(
        "records",
        help="say what really happened",
        description="Lists the log with its corrections, planned against actual days by batch and stage, "
        "what was learned from them, tasks that are late with the weeks that fall short, seed lots with "
        "their tests, and meters with their calibrations.",
    )
    parser.add_argument("file", type=Path, metavar="FILE", help="a farm file or a farm text")
    parser.add_argument("--date", dest="on", type=day, metavar="DATE", help="the day (default: today)")
    parser.add_argument("--json", action="store_true", help="as JSON")
    parser.set_defaults(run=run_records)


def run_records(parsed: argparse.Namespace) -> int:
    """Print all that the log leads to."""
    data = _data(parsed.file, parsed.on or local_today())
    if parsed.json:
        json.dump(data, sys.stdout, ensure_ascii=False, indent=2)
        sys.stdout.write("\n")
    else:
        sys.stdout.writelines(f"{line}\n" for line in _lines(data))
    return 0


def _data(path: Path, today: date) -> dict[str, Any]:
    means = Means()
    farm = means.read(path).farm
    found = outcomes(farm, Dater(means.forecaster, farm).lengths, today)
    catalogue = means.forecaster.catalogue_for(farm)
    codes = {batch.id: batch.code for batch in farm.batches}
    late = carried_over(farm, means.forecaster, today)
    forecast = means.forecaster.preview(farm)
    return {
        "format": FORMAT,
        "date": today.isoformat(),
        "entries": _entries(farm),
        "outcomes": [_plain(one) | {"batch": codes[one.batch]} for one in found],
        "totals": [_plain(one) for one in reason_totals(found)],
        "learned": [_plain(one) for one in learned(farm, found, catalogue)],
        "late": [effect_data(one, forecast, code=codes[one.batch]) for one in late],
        "lots": _lots(farm, catalogue, today),
        "meters": _meters(farm, today),
    }


def _entries(farm: Farm) -> list[dict[str, Any]]:
    """Return every entry, also those that were corrected, with what it is about by name."""
    names = {thing.id: label_of(thing) for word in ABOUT.values() for thing in things(farm, word)}
    names |= {entry.id: entry.code for entry in farm.log_entries}
    by = {entry.corrects: entry.code for entry in farm.log_entries if entry.corrects != NO_ID}
    return [
        _plain(entry)
        | {field: names.get(getattr(entry, field), "") for field in POINTS_AT}
        | {"replaced_by": by.get(entry.id, "")}
        for entry in farm.log_entries
    ]


def _lots(farm: Farm, catalogue: Catalogue, today: date) -> list[dict[str, Any]]:
    shares = lot_shares(farm, catalogue)
    return [
        _plain(lot)
        | {
            "share": shares[lot.id].share(today),
            "mean": shares[lot.id].mean,
            "sd": shares[lot.id].sd,
            "seeds_counted": shares[lot.id].seeds,
            "came_up": shares[lot.id].came_up,
            "tests": shares[lot.id].tests,
            "batches": shares[lot.id].batches,
            "advice": [caution.value for caution in shares[lot.id].cautions(today)],
        }
        for lot in farm.seed_lots
    ]


def _meters(farm: Farm, today: date) -> list[dict[str, Any]]:
    book = meter_book(farm)
    doubtful = [one for one in farm.readings if book.is_doubtful(one)]
    return [
        {
            "name": state.meter.name,
            "kind": state.meter.kind.value,
            "last_on": _plain(state.last_on),
            "due_on": _plain(state.due_on),
            "days_late": state.days_late,
            "doubtful_readings": sum(one.meter == state.meter.id for one in doubtful),
        }
        for state in book.states(today)
    ]


def _plain(value: Any) -> Any:
    """Return a value as JSON can hold it."""
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, tuple):
        return [_plain(one) for one in value]
    if dataclasses.is_dataclass(value):
        return {field.name: _plain(getattr(value, field.name)) for field in dataclasses.fields(value)}
    return value


def _entry_line(one: dict[str, Any]) -> str:
    """Return an entry with its time, its value, who noted it when, and what it corrects or is replaced by."""
    amount = "" if one["amount"] is None else f"{one['amount']:g}"
    out_of = f" of {one['out_of']}" if one["out_of"] else ""
    parts = (
        f"{one['on']} {one['at']}".rstrip(),
        one["what"],
        f"{one['quantity'] or ''} {amount}{out_of} {one['unit']}".strip(),
        ", ".join(one[field] for field in ABOUT if one[field]),
        one["code"],
        f"reason {one['reason']}" if one["reason"] else "",
        f"by {one['who']}" if one["who"] else "",
        f"noted {one['noted_at']}" if one["noted_at"] else "",
        f"corrects {one['corrects']}" if one["corrects"] else "",
        f"replaced by {one['replaced_by']}" if one["replaced_by"] else "",
        " ".join(one["notes"].split()),
    )
    return "  ".join(part for part in parts if part)


def _lot_line(one: dict[str, Any]) -> str:
    share = one["mean"] if one["share"] is None else one["share"]
    counted = f"{one['came_up']} of {one['seeds_counted']} came up, {one['tests']} tests"
    told = (f"lot {one['code']}: {share:.0%} reckoned with", counted, *one["advice"])
    return "; ".join(told)


def _meter_line(one: dict[str, Any]) -> str:
    due = "not watched" if one["due_on"] is None else f"due {one['due_on']}"
    late = f", {one['days_late']} d late" if one["days_late"] > 0 else ""
    doubtful = f"; {one['doubtful_readings']} readings doubtful" if one["doubtful_readings"] else ""
    return f"meter {one['name']}: calibrated {one['last_on'] or 'never'}, {due}{late}{doubtful}"


def _lines(data: dict[str, Any]) -> list[str]:
    lines = [_entry_line(one) for one in data["entries"]]
    for one in data["outcomes"]:
        actual = f"{one['so_far_days']} d so far" if one["actual_days"] is None else f"{one['actual_days']} d"
        lines.append(f"{one['batch']}  {one['stage']}: planned {one['planned_days']} d, actual {actual}")
    lines.extend(
        f"by reason: {one['reason'] or 'none given'}: {one['stages']} stages, {one['days']:+d} d"
        for one in data["totals"]
    )
    for one in data["learned"]:
        found = one["estimate"]
        said = f"book {found['book']:.4g}, learned {found['value']:.4g} (n {found['n']})"
        lines.append(f"{one['crop']} {one['variety']} {one['field']}: {said}")
    lines.extend(f"{one['batch']}: {one['what']} was due {one['late_days']} days ago" for one in data["late"])
    lines.extend(_lot_line(one) for one in data["lots"])
    lines.extend(_meter_line(one) for one in data["meters"])
    return lines or ["Nothing has been logged."]
