"""The commands that carry a plan out of the program: labels and tags, the trace of a batch, the phone."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import FARM_SUFFIX, TEXT_SUFFIX, Means
from planner.cli_shared import WrongUsageError, add_span, check_name, span_asked

if TYPE_CHECKING:
    from planner.farm.farm import Farm
    from planner.forecast.values import Forecast
    from planner.paper.labels import Label, LabelKind
    from planner.paper.labels_grid import LabelGrid
    from planner.paper.labels_sheet import SheetWish
    from planner.paper.style import Paper

GOOD: Final = 0
PDF_SUFFIX: Final = ".pdf"
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
        CUT_EDGE_MM,
        CUT_GAP_MM,
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
        return fitted_grid(paper, width_mm=width, height_mm=height, edge_mm=CUT_EDGE_MM, gap_mm=CUT_GAP_MM)
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
    from planner.farm.farm import DAYS_PER_WEEK
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
    return f'no batch has the code "{code[:60]}".{hint}'


def _counted(number: int, thing: str) -> str:
    return f"{number} {thing}{'' if number == 1 else 's'}"
