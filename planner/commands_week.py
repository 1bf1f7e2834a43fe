"""The command that lists what is due in a week: for people, as JSON, or as one short message."""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path
from typing import Any, Final

from planner.bootstrap import FARM_SUFFIX, TEXT_SUFFIX, Means
from planner.cli_shared import day_asked, read_day

GOOD: Final = 0


def add_week(commands: Any) -> None:
    """Add the command that lists what is due in a week."""
    parser = commands.add_parser(
        "week",
        help="list what is due in a week",
        description="Lists what is due in the week that holds a day: to sow, move, pick, clear, stock, "
        "harvest, feed and dose; how many and where.",
    )
    parser.add_argument(
        "file", type=Path, metavar="FILE", help=f"a farm file ({FARM_SUFFIX}) or farm text ({TEXT_SUFFIX})"
    )
    parser.add_argument(
        "--date", dest="on", type=read_day, metavar="DATE", help="a day of the week (default: today)"
    )
    parser.add_argument("--json", action="store_true", help="as JSON (docs/forecast-json.md)")
    parser.add_argument(
        "--message", action="store_true", help="as one message of at most 160 letters, for any phone"
    )
    parser.set_defaults(run=_week)


def _week(parsed: argparse.Namespace) -> int:
    from planner.forecast.week import due_in_week, task_data
    from planner.paper.late_sentences import late_lines
    from planner.paper.sentences import week_lines
    from planner.planning.late import carried_over, effect_data

    means = Means()
    farm = means.read(parsed.file).farm
    forecast = means.forecaster.preview(farm)
    on, week = day_asked(parsed.on, forecast.ruler)
    if parsed.message:
        from planner.paper.week_message import week_message

        print(week_message(farm, forecast, means.forecaster.catalogue_for(farm), week=week))
        return GOOD
    tasks, late = due_in_week(farm, forecast, week), carried_over(farm, means.forecaster, on)
    codes = {batch.id: batch.code for batch in farm.batches}
    if parsed.json:
        data: dict[str, Any] = {"format": "raftweek.week/1", "week": forecast.ruler.week_name(week)}
        data |= {
            "start": forecast.ruler.week_start(week).isoformat(),
            "tasks": [task_data(task) for task in tasks],
            "late": [effect_data(one, forecast, code=codes[one.batch]) for one in late],
        }
        json.dump(data, sys.stdout, indent=2, ensure_ascii=False)
        print()
    else:
        crops = means.forecaster.catalogue.crops
        told = late_lines(late, codes=codes, crops=crops, ruler=forecast.ruler)
        sys.stdout.writelines(f"carried over: {line}\n" for line in told)
        names = {key: crop.name for key, crop in crops.items()}
        print("\n".join(week_lines(tasks, name=forecast.ruler.week_name(week), crop_names=names)))
    return GOOD
