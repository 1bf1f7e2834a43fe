"""The command `print`: any document of a farm as PDF, and the list of those there are.

Exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import Means, local_today

if TYPE_CHECKING:
    from planner.forecast.plain import WeekSpan
    from planner.forecast.values import Forecast
    from planner.paper.registry import Document
    from planner.paper.style import Paper

_GOOD: Final = 0
_PDF: Final = ".pdf"
_EPILOG: Final = """\
examples:
  raftweek print --list                                        what there is to print
  raftweek print week-tasks school.raftweek --out week.pdf     this week's tasks
  raftweek print season-plan school.toml --paper Tabloid --weeks 52
  raftweek print water-log school.toml --second spanish --ink-saving
"""


def add_print(commands: Any) -> None:
    """Add the command to the parsers of the command line."""
    from planner.cli_shared import read_day, read_weeks

    parser = commands.add_parser(
        "print",
        help="print any document as PDF",
        description="Writes one of the documents of a farm as PDF: task sheets, maps, logs, cards, reports. "
        "--list names them all.",
        epilog=_EPILOG,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("document", nargs="?", metavar="DOC", help="which document, as --list names it")
    parser.add_argument("file", nargs="?", type=Path, metavar="FILE", help="a farm file or farm text")
    parser.add_argument("--list", action="store_true", help="list the documents there are")
    parser.add_argument("--json", action="store_true", help="the list, or what was written, as JSON")
    parser.add_argument(
        "--from",
        dest="from_on",
        type=read_day,
        metavar="DATE",
        help="a day of the first week (default: this week where the plan covers it, else the plan's first)",
    )
    parser.add_argument("--weeks", type=read_weeks, metavar="N", help="number of weeks (default: see --list)")
    parser.add_argument("--paper", metavar="NAME", help="A4, Letter, A3, Tabloid, A5 or Half-Letter")
    parser.add_argument("--out", type=Path, metavar="OUT", help="the PDF to write (default: DOC.pdf)")
    parser.add_argument("--second", metavar="LANGUAGE", default="", help="filipino or spanish beside English")
    parser.add_argument("--large-type", action="store_true", help="set all type a quarter larger")
    parser.add_argument("--black-and-white", action="store_true", help="no colour; patterns and letters stay")
    parser.add_argument("--ink-saving", action="store_true", help="no colour and no filled ground")
    parser.set_defaults(run=run_print)


def run_print(parsed: argparse.Namespace) -> int:
    """List the documents, or write one."""
    if parsed.list:
        return _list(as_json=parsed.json)
    document = _document(parsed)
    paper, out = _paper(parsed, document), parsed.out or Path(f"{document.key}{_PDF}")
    _check(parsed, out)
    from planner.bootstrap_paper import Looked, document_report, write_report
    from planner.paper.style import style_for

    means = Means()
    farm = means.read(parsed.file).farm
    forecast = means.forecaster.forecast(farm)
    span = _span(parsed, document, forecast)
    report = document_report(
        document,
        Looked(farm=farm, forecast=forecast, catalogue=means.forecaster.catalogue_for(farm)),
        from_on=forecast.ruler.week_start(span.first),
        weeks=span.last - span.first,
        paper=paper,
        second=parsed.second,
    )
    style = style_for(
        large_type=parsed.large_type, black_and_white=parsed.black_and_white, ink_saving=parsed.ink_saving
    )
    pages = write_report(report, out, paper, style=style)
    _tell(parsed, document, out, pages)
    return _GOOD


def _list(*, as_json: bool) -> int:
    from planner.paper.registry import BY_OTHER_COMMANDS, DOCUMENTS

    if as_json:
        json.dump([_data(document) for document in DOCUMENTS], sys.stdout, indent=2, ensure_ascii=False)
        print()
        return _GOOD
    wide = max(len(document.key) for document in DOCUMENTS)
    for document in DOCUMENTS:
        weeks = f"{document.weeks} week{'' if document.weeks == 1 else 's'}"
        print(f"{document.key:<{wide}}  {document.paper.name:<3} {weeks:>8}  {document.says}")
    for key, command, says in BY_OTHER_COMMANDS:
        print(f"{key:<{wide}}  {says}: {command}")
    return _GOOD


def _data(document: Document) -> dict[str, Any]:
    return {
        "document": document.key,
        "title": document.title,
        "says": document.says,
        "paper": document.paper.name,
        "landscape": document.landscape,
        "weeks": document.weeks,
    }


def _document(parsed: argparse.Namespace) -> Document:
    from planner.cli_shared import WrongUsageError
    from planner.paper.registry import UnknownDocumentError, document_named

    if parsed.document is None:
        raise WrongUsageError("say which document; --list names them all.")
    try:
        return document_named(parsed.document)
    except UnknownDocumentError as unknown:
        raise WrongUsageError(str(unknown)) from None


def _paper(parsed: argparse.Namespace, document: Document) -> Paper:
    from planner.cli_shared import WrongUsageError
    from planner.paper.style import paper_named

    if parsed.paper is None:
        return document.lies_on(document.paper)
    try:
        return paper_named(parsed.paper, landscape=document.landscape)
    except ValueError as unknown:
        raise WrongUsageError(f"--{unknown}.") from None


def _check(parsed: argparse.Namespace, out: Path) -> None:
    """Raise `WrongUsageError` for a farm that is not named, a language there is not, or an odd file name."""
    from planner.cli_shared import WrongUsageError, check_name
    from planner.paper.sheet_files import LANGUAGES

    if parsed.file is None:
        raise WrongUsageError(f"say which farm {parsed.document} is printed for.")
    if parsed.second and parsed.second not in LANGUAGES:
        raise WrongUsageError(f'--second: "{parsed.second}" is none of {", ".join(LANGUAGES)}.')
    check_name(out, _PDF)


def _span(parsed: argparse.Namespace, document: Document, forecast: Forecast) -> WeekSpan:
    """Return the weeks asked for; when nobody says, the document's own, cut to the plan."""
    from planner.cli_shared import span_asked
    from planner.forecast.plain import WeekSpan

    ruler = forecast.ruler
    if parsed.from_on is None:
        today = document.begins_on(local_today(), parsed.weeks or document.weeks)
        parsed.from_on = today if 0 <= ruler.week_of(today) < ruler.weeks else ruler.start_on
    if parsed.weeks is not None:
        return span_asked(parsed, forecast)
    first = span_asked(parsed, forecast).first
    return WeekSpan(first=first, last=min(first + document.weeks, ruler.weeks))


def _tell(parsed: argparse.Namespace, document: Document, out: Path, pages: int) -> None:
    if parsed.json:
        told = {"document": document.key, "file": str(out), "pages": pages}
        json.dump(told, sys.stdout, ensure_ascii=False)
        print()
    else:
        print(f"{out}: {pages} page{'' if pages == 1 else 's'}")
