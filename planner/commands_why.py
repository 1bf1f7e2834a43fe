"""The command `why`: says how any figure of the forecast came about, down to the catalogue's figures."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import Means
from planner.commands_answers import DEPTH, print_answer
from planner.commands_uncertainty import seed_number
from planner.commands_why_sure import (
    SURE_SUBJECTS,
    figure_words,
    is_sure,
    sure_answer,
    sure_subject,
)

if TYPE_CHECKING:
    from planner.farm.farm import Farm
    from planner.forecast.engine import Forecaster
    from planner.forecast.values import Forecast
    from planner.forecast.why.reasons import Reason
    from planner.forecast.why.values import Explanation, Subject

_GOOD: Final = 0
_SUBJECTS: Final = f"""\
of a batch:
  batch CODE seeds|harvest|yield|heads  seeds to sow, what can be sold, what a plant gives, plants that live
  batch CODE first-pick|late|freed|area  days to the first pick, days later than by the book, when places
                                        are free again, ground it covers
  batch CODE STAGE [first|last]         days of a stage: germination, nursery, spacing, bed, picking,
                                        clearing; its first and its last day
  batch CODE DATE places|picked         places it holds and plants to pick on a day
  batch CODE WEEK ELEMENT               what it wants of an element in a week
of a week:
  week WEEK ELEMENT [SIDE]              supply over demand of N, P, K, Ca, Mg or Fe, and why it is short;
                                        SIDE is supply, demand, band, covered (with the stock) or lacking
  week WEEK least|feed|feed-ratio|area  the least supplied element, feed, feed per m², area the fish feed
  week WEEK hole                        by how much feed lies below the four weeks before, and why
  week WEEK planted [CROP]              area planted in final places
  week WEEK ammonia|filter|surface|gravel  what fish ask of the filter, and what there is
  week WEEK oxygen|peak-oxygen|saturation  oxygen taken, after feeding, and held by the water
  week WEEK acid|base|alkalinity-fall   acid made in a week, base wanted for it, what alkalinity loses
  week WEEK crop KEY [plants|kg]        harvest of a crop, such as lettuce-leaf
of a week, of some, of the whole plan:
  week WEEK ...   weeks WEEK WEEK ...   plan ...
      sow|sown-plants|space|move|pick|clear [CROP]   work on batches: seeds to sow, plants else
      seeds [CROP or LOT]  plugs  net-pots           what is used up
      harvest-plants|harvest-kg [CROP]               what is harvested
      feed-kg [FEED]  gain-kg  fish-kg               feed, gain and harvest of fish
of fish:
  fish NAME DATE                        feed of a fish group on a day
  fish NAME DATE mass|count|weight|gain  mass of the group, fish, weight of one, growth of a day
  fish NAME DATE harvest|harvested|fall  kg and fish of a harvest, and how deep it lets the feed fall
  fish NAME WEEK [deaths|feed-kg|gain-kg|fish-kg]  feed a day, or what is told, in a week
  fish NAME plan deaths|feed-kg|gain-kg|fish-kg  over the whole plan
  fish NAME ready                       the day on which they are heavy enough to harvest
  tank NAME DATE                        density of a tank on a day
of places:
  bed NAME DATE used|free               places held and free on a day
  nursery DATE                          nursery places held
of water:
  water DATE base|salt|iron|brings PRODUCT  grams advised of a product such as iron-dtpa-11, what it brings
  water DATE iron-due|salts|free-ammonia  the day iron is due, what a meter says, what ammonia is un-ionised
  water DATE LIMIT                      alkalinity-limit, ph-limit or ph-trend: days until it is reached
  water DATE stock|wanting ELEMENT      mg/L dissolved as the day begins; what is wanting in the week
  water DATE trend|test-late QUANTITY   how fast readings of ph, tan and so on change; how late a test is
  water DATE alkalinity DATE            alkalinity foreseen for a later day
  water DATE observed-acid|base-left    acid that the log shows, base that is left over
of other things:
  lot CODE DATE                         germination of a seed lot
  solids CODE gathered|back|gas         a batch of solids
  dose PRODUCT DATE                     what a dose brings, by the day it is first given
  meter NAME DATE                       how late its calibration is
  flag KIND NAME [DATE]                 why the forecast warns of something, such as short-supply
{SURE_SUBJECTS}

WEEK is 2027-W18 or a day of it, DATE such as 2027-05-03. Names that hold a blank stand in quotes.

examples:
  raftweek why school.toml batch LTB-27W14-A seeds
  raftweek why school.toml week 2027-W18 N
  raftweek why school.toml plan harvest-kg
  raftweek why school.toml week 2027-W19 crop lettuce-leaf chance 40
  raftweek why school.toml fish "Winter fish" 2027-05-03 --depth 4"""


def add_why(commands: Any) -> None:
    """Add the command to the parsers of the command line."""
    parser = commands.add_parser(
        "why",
        help="say how a figure came about",
        description="Shows the formula of a figure, every number in it with its source and how sure it is, "
        "and what lies behind those that were worked out.",
        epilog=_SUBJECTS,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument(
        "file", type=Path, metavar="FILE", help="a farm file (.raftweek) or farm text (.toml)"
    )
    parser.add_argument("subject", nargs="+", metavar="SUBJECT", help="which figure; see below")
    parser.add_argument("--loop", metavar="NAME", help="which loop of water (default: the first)")
    parser.add_argument(
        "--depth", type=_depth, default=DEPTH, metavar="N", help=f"how far to go down (default: {DEPTH})"
    )
    parser.add_argument("--seed", type=seed_number, metavar="N", help="which draws, for draws and chances")
    parser.add_argument("--json", action="store_true", help="as JSON, all the way down (docs/why.md)")
    parser.set_defaults(run=run_why)


def _depth(word: str) -> int:
    if not word.isdigit():
        raise argparse.ArgumentTypeError(f'"{word}" is not a number of levels, 0 or more')
    return int(word)


def run_why(parsed: argparse.Namespace) -> int:
    """Print the explanation of the figure asked for."""
    from planner.forecast.why.ground import NoSuchFigureError

    means = Means()
    farm = means.read(parsed.file).farm
    forecast = means.forecaster.forecast(farm)
    try:
        found, reasons = _answer(parsed, means, farm, forecast)
    except NoSuchFigureError as error:
        raise _wrong(str(error)) from None
    print_answer(found, means, reasons=reasons, depth=parsed.depth, as_json=parsed.json)
    return _GOOD


def _answer(
    parsed: argparse.Namespace, means: Means, farm: Farm, forecast: Forecast
) -> tuple[Explanation, tuple[Reason, ...]]:
    from planner.commands_why_words import subject_of
    from planner.forecast.why.ask import why

    words = parsed.subject
    if is_sure(words):
        of = subject_of(figure_words(words), farm, forecast, loop=parsed.loop)
        return sure_answer(sure_subject(words, of), means, farm, forecast, seed=parsed.seed), ()
    subject = subject_of(words, farm, forecast, loop=parsed.loop)
    found = why(subject, farm, forecast, means.forecaster)
    return found, _reasons(subject, farm, forecast, means.forecaster)


def _reasons(subject: Subject, farm: Farm, forecast: Forecast, forecaster: Forecaster) -> tuple[Reason, ...]:
    """Return why an element is short, where that is what was asked."""
    from planner.forecast.why.reasons import reasons
    from planner.forecast.why.values import SubjectKind

    if subject.kind not in (SubjectKind.RATIO, SubjectKind.LIMITING):
        return ()
    element = subject.element if subject.kind is SubjectKind.RATIO else None
    return reasons(
        forecast, farm, loop=subject.about, week=subject.week, forecaster=forecaster, element=element
    )


def _wrong(sentence: str) -> Exception:
    from planner.cli_shared import WrongUsageError

    return WrongUsageError(sentence)
