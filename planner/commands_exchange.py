"""The commands that carry a plan out of the program: labels and tags, the trace of a batch, the phone."""

from __future__ import annotations

import argparse
import json
from collections.abc import Sequence
from datetime import datetime, time
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import FARM_SUFFIX, TEXT_SUFFIX, Means, local_now, local_today
from planner.cli_shared import WrongUsageError, add_span, check_name, span_asked
from planner.commands_files import write_whole
from planner.farm.farm import DAYS_PER_WEEK

if TYPE_CHECKING:
    from planner.farm.farm import Farm
    from planner.forecast.values import Forecast
    from planner.paper.labels import Label, LabelKind
    from planner.paper.labels_grid import LabelGrid
    from planner.paper.labels_sheet import SheetWish
    from planner.paper.style import Paper

GOOD: Final = 0
PDF_SUFFIX: Final = ".pdf"
ICS_SUFFIX: Final = ".ics"
_MOST_DAYS_BEFORE: Final = 30
_PAPERS: Final = ("A4", "Letter", "A3", "Tabloid")
_MOST_COPIES: Final = 500


def _add_file(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "file", type=Path, metavar="FILE", help=f"a farm file ({FARM_SUFFIX}) or farm text ({TEXT_SUFFIX})"
    )


# --- labels ------------------------------------------------------------------------------------------


def add_labels(commands: Any) -> None:
    """Add the command that prints tray labels and raft tags."""
    parser = commands.add_parser(
        "labels",
        help="print tray labels or raft tags",
        description="Writes labels as a PDF: one for each tray of the batches sown, or one for each raft of "
        "the batches moved to their bed, in the weeks asked for. Lengths are millimetres. Without --grid the "
        "sheet is plain paper to be cut: as many labels as it holds, with their edges drawn.",
    )
    _add_file(parser)
    parser.add_argument("--kind", choices=("tray", "raft"), default="tray", help="default: tray")
    parser.add_argument("--out", type=Path, required=True, metavar="OUT", help="the PDF to write")
    add_span(parser)
    parser.add_argument(
        "--batch", action="append", default=[], metavar="CODE", help="only this batch (may come again)"
    )
    parser.add_argument(
        "--copies", type=int, metavar="N", help="so many of each batch, not one for each tray or raft"
    )
    parser.add_argument("--paper", default="A4", choices=_PAPERS, help="default: A4")
    parser.add_argument("--grid", metavar="COLSxROWS", help="labels across and down, such as 3x8")
    parser.add_argument("--size", metavar="WxH", help="one label (default: 60x30 for trays, 85x55 for rafts)")
    parser.add_argument("--margin", metavar="LEFTxTOP", help="paper's edge to first label (default: centred)")
    parser.add_argument("--gap", metavar="XxY", help="between labels (default: 0x0 with --grid)")
    parser.add_argument(
        "--shift", default="0x0", metavar="RIGHTxDOWN", help="to set a printer right, such as 1x-0.5"
    )
    parser.add_argument(
        "--start", type=int, default=1, metavar="N", help="first label that is still there (default: 1)"
    )
    parser.add_argument("--no-code", action="store_true", help="without the square code")
    parser.add_argument("--outline", action="store_true", help="draw the edges of the labels")
    parser.add_argument(
        "--backs", action="store_true", help="after each sheet, its backs: the caution on water and food"
    )
    parser.add_argument(
        "--calibration", action="store_true", help="not labels, but the page to set the printer right with"
    )
    parser.set_defaults(run=_labels)


def _labels(parsed: argparse.Namespace) -> int:
    from planner.paper.labels_grid import GridError
    from planner.paper.labels_setting import NoRoomOnLabelError

    check_name(parsed.out, PDF_SUFFIX)
    if parsed.copies is not None and not 1 <= parsed.copies <= _MOST_COPIES:
        raise WrongUsageError(f"--copies: {parsed.copies} must lie within 1 to {_MOST_COPIES}.")
    try:
        return _write_labels(parsed)
    except (GridError, NoRoomOnLabelError) as error:
        raise WrongUsageError(str(error)) from None


def _write_labels(parsed: argparse.Namespace) -> int:
    from planner.bootstrap_paper import page_metrics, write_page_file
    from planner.paper.labels import LabelKind, label_caution
    from planner.paper.labels_sheet import calibration_pages, label_sheets
    from planner.paper.style import paper_named

    kind, paper = LabelKind(parsed.kind), paper_named(parsed.paper, landscape=False)
    means = Means()
    farm = means.read(parsed.file).farm
    caution = label_caution(means.forecaster.catalogue) if parsed.backs else None
    wish = _sheet_wish(parsed, kind, paper, caution)
    if parsed.calibration:
        pages = calibration_pages(wish, page_metrics())
        count = write_page_file(pages, parsed.out, paper, title="Calibration", author=farm.settings.name)
        print(f"{parsed.out}: calibration, {count} pages")
        return GOOD
    labels = _labels_asked(parsed, kind, farm, means.forecaster.preview(farm))
    sheets = label_sheets(labels, wish, page_metrics())
    title = "Tray labels" if kind is LabelKind.TRAY else "Raft tags"
    count = write_page_file(sheets.pages, parsed.out, paper, title=title, author=farm.settings.name)
    print(f"{parsed.out}: {_counted(sheets.labels, 'label')}, {_counted(count, 'page')}")
    if sheets.shortened:
        print(f"note: {_counted(sheets.shortened, 'label')} with names shortened; codes and dates are whole")
    if sheets.uncoded:
        print(f"note: {_counted(sheets.uncoded, 'label')} without the square code, for want of room")
    return GOOD


def _sheet_wish(parsed: argparse.Namespace, kind: LabelKind, paper: Paper, caution: Any) -> SheetWish:
    from planner.paper.labels_grid import checked_on, pair_of
    from planner.paper.labels_sheet import SheetWish

    return SheetWish(
        grid=checked_on(_grid(parsed, kind, paper), paper),
        paper=paper,
        start=parsed.start,
        shift_mm=pair_of(parsed.shift, field="shift"),
        outlined=parsed.outline or parsed.grid is None,
        coded=not parsed.no_code,
        caution=caution,
    )


def _grid(parsed: argparse.Namespace, kind: LabelKind, paper: Paper) -> LabelGrid:
    from planner.paper.labels_grid import (
        LabelGrid,
        centred_grid,
        fitted_grid,
        pair_of,
        whole_pair_of,
    )
    from planner.paper.labels_sheet import USUAL_SIZE_MM

    width, height = pair_of(parsed.size, field="size") if parsed.size else USUAL_SIZE_MM[kind]
    if parsed.grid is None:
        if parsed.margin or parsed.gap:
            raise WrongUsageError("--margin and --gap belong to a grid: say --grid too, such as --grid 3x8.")
        return fitted_grid(paper, width_mm=width, height_mm=height)
    columns, rows = whole_pair_of(parsed.grid, field="grid")
    gap = pair_of(parsed.gap, field="gap") if parsed.gap else (0.0, 0.0)
    if not parsed.margin:
        return centred_grid(paper, columns=columns, rows=rows, size_mm=(width, height), gap_mm=gap)
    left, top = pair_of(parsed.margin, field="margin")
    return LabelGrid(
        columns=columns, rows=rows, width_mm=width, height_mm=height, left_mm=left, top_mm=top,
        gap_x_mm=gap[0], gap_y_mm=gap[1],
    )  # fmt: skip


def _labels_asked(
    parsed: argparse.Namespace, kind: LabelKind, farm: Farm, forecast: Forecast
) -> tuple[Label, ...]:
    from planner.paper.labels import labels_of, rows_asked

    if parsed.batch:
        row_of = {batch.code: row for row, batch in enumerate(farm.batches)}
        unknown = [code for code in parsed.batch if code not in row_of]
        if unknown:
            raise WrongUsageError(_no_batch(unknown[0], row_of))
        rows: Sequence[int] = [row_of[code] for code in parsed.batch]
    else:
        span = span_asked(parsed, forecast)
        first, last = (week * DAYS_PER_WEEK for week in (span.first, span.last))
        rows = rows_asked(kind, farm, forecast, first_day=first, last_day=last)
    labels = labels_of(kind, farm, forecast, rows=rows, copies=parsed.copies)
    if not labels:
        what = "sown" if parsed.kind == "tray" else "moved to a bed"
        raise WrongUsageError(f"nothing is {what} in these weeks, so there is no label to print.")
    return labels


def _no_batch(code: str, known: Any) -> str:
    from difflib import get_close_matches

    near = get_close_matches(code, list(known), n=1)
    hint = f' Did you mean "{near[0]}"?' if near else ""
    return f'no batch or seed lot has the code "{code[:60]}".{hint}'


def _counted(number: int, thing: str) -> str:
    return f"{number} {thing}{'' if number == 1 else 's'}"


# --- the phone's calendar ----------------------------------------------------------------------------


def add_phone_options(parser: argparse.ArgumentParser) -> None:
    """Add what the calendar command takes to write the calendar of a phone."""
    parser.add_argument("--ics", type=Path, metavar="OUT", help="the phone's calendar (iCalendar) to write")
    parser.add_argument(
        "--role",
        default="all",
        choices=("all", "grower", "caretaker", "owner"),
        help="whose tasks go into the phone's calendar (default: all)",
    )
    parser.add_argument(
        "--earlier",
        type=Path,
        metavar="ICS",
        help="the calendar written before, to go on from (default: OUT)",
    )
    parser.add_argument(
        "--remind",
        type=_read_clock,
        default="07:00",
        metavar="HH:MM",
        help="time to ring at, or none (default: 07:00)",
    )
    parser.add_argument(
        "--remind-before", type=int, default=0, metavar="DAYS", help="so many days before (default: 0)"
    )


def _read_clock(word: str) -> time | None:
    if word == "none":
        return None
    try:
        return datetime.strptime(word, "%H:%M").time()  # noqa: DTZ007 - a time of day, wherever the phone is
    except ValueError:
        raise argparse.ArgumentTypeError(f'"{word}" is neither a time such as 07:00 nor none') from None


def write_phone_calendar(parsed: argparse.Namespace, means: Means, farm: Farm, forecast: Forecast) -> None:
    """Write the calendar of a phone, going on from the one that is there."""
    from planner.paper.ical import CalendarError, CalendarHead, Reminder, calendar_text
    from planner.paper.ical_events import Role, calendar_events

    check_name(parsed.ics, ICS_SUFFIX)
    if not 0 <= parsed.remind_before <= _MOST_DAYS_BEFORE:
        raise WrongUsageError(
            f"--remind-before: {parsed.remind_before} must lie within 0 to {_MOST_DAYS_BEFORE}."
        )
    role, ruler = Role(parsed.role), forecast.ruler
    if parsed.from_on is None and 0 <= ruler.week_of(local_today()) < ruler.weeks:
        parsed.from_on = local_today()
    span = span_asked(parsed, forecast)
    first, last = (week * DAYS_PER_WEEK for week in (span.first, span.last))
    events = calendar_events(
        farm, forecast, means.forecaster.catalogue_for(farm), first_day=first, last_day=last, role=role
    )
    head = CalendarHead(
        farm=farm.settings.name,
        farm_id=str(farm.settings.id),
        role=role,
        first_on=ruler.date_of(first),
        behind_on=ruler.date_of(last),
        made_at=local_now(),
        reminder=None
        if parsed.remind is None
        else Reminder(at=parsed.remind, days_before=parsed.remind_before),
    )
    before = parsed.earlier or parsed.ics
    try:
        made = calendar_text(
            events, head, earlier=before.read_bytes() if before.exists() or parsed.earlier else None
        )
    except CalendarError as error:
        raise WrongUsageError(f"{before}: {error} Choose another name.") from None
    write_whole(parsed.ics, made.text)
    print(
        f"{parsed.ics}: {_counted(made.events, 'event')}, {made.new} new, {made.changed} changed, "
        f"{made.cancelled} cancelled"
    )


# --- trace -------------------------------------------------------------------------------------------


def add_trace(commands: Any) -> None:
    """Add the command that follows a batch or lot back and forward."""
    parser = commands.add_parser(
        "trace",
        help="follow a batch or seed lot",
        description="Follows a batch back to its seed lot and forward to its places, its harvest and the "
        "readings of its water; or a seed lot to every batch sown of it.",
    )
    _add_file(parser)
    parser.add_argument("code", metavar="CODE", help="code of a batch or a seed lot")
    parser.add_argument("--json", action="store_true", help="as JSON, with every reading")
    parser.add_argument("--pdf", type=Path, metavar="OUT", help="write it as a page")
    parser.add_argument("--paper", default="A4", choices=_PAPERS, help="default: A4")
    parser.set_defaults(run=_trace)


def _trace(parsed: argparse.Namespace) -> int:
    from planner.paper.trace import NothingTracedError, trace_data, trace_lines, trace_of, trace_report

    means = Means()
    farm = means.read(parsed.file).farm
    try:
        trace = trace_of(farm, means.forecaster.preview(farm), parsed.code)
    except NothingTracedError as error:
        raise WrongUsageError(_no_batch(error.code, error.codes)) from None
    if parsed.json:
        print(json.dumps(trace_data(trace), indent=2, ensure_ascii=False))
    elif parsed.pdf is None:
        print("\n".join(trace_lines(trace)))
    if parsed.pdf is not None:
        from planner.bootstrap_paper import write_report
        from planner.paper.style import paper_named

        check_name(parsed.pdf, PDF_SUFFIX)
        report = trace_report(trace, farm, means.forecaster.catalogue, printed_on=local_now())
        count = write_report(report, parsed.pdf, paper_named(parsed.paper, landscape=False))
        print(f"{parsed.pdf}: {_counted(count, 'page')}")
    return GOOD
