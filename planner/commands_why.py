"""The command `why`: says how any figure of the forecast came about, down to the catalogue's figures."""

from __future__ import annotations

import argparse
from collections.abc import Iterable, Mapping, Sequence
from datetime import date
from difflib import get_close_matches
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
from planner.farm.farm import DAYS_PER_WEEK

if TYPE_CHECKING:
    from planner.farm.farm import Farm
    from planner.farm.fields import Id
    from planner.forecast.engine import Forecaster
    from planner.forecast.values import Forecast, Ruler
    from planner.forecast.why.reasons import Reason
    from planner.forecast.why.values import Explanation, Subject

_GOOD: Final = 0
_SUBJECTS: Final = f"""\
subjects, in words:
  batch CODE seeds                      seeds to sow
  batch CODE first-pick                 days from sowing to the first pick
  batch CODE harvest                    what is picked of it and can be sold
  batch CODE STAGE                      days of a stage: germination, nursery, spacing, bed, picking, clearing
  week WEEK ELEMENT                     supply over demand of N, P, K, Ca, Mg or Fe, and why it is short
  week WEEK ELEMENT supply|demand       one of the two
  week WEEK least|feed|feed-ratio|area  the least supplied element, feed, feed per m², area the fish feed
  week WEEK planted                     area planted in final places
  week WEEK ammonia|filter|oxygen       what fish ask of filter and air: ammonia, biofilm surface, oxygen
  week WEEK acid|base                   acid made in a week, and base wanted for it
  water DATE base|salt|iron PRODUCT     grams advised of a product, by its key such as iron-dtpa-11
  water DATE iron-due|salts|free-ammonia  the day iron is due, what a meter says, what ammonia is un-ionised
  water DATE LIMIT                      alkalinity-limit, ph-limit or ph-trend: days until it is reached
  week WEEK crop KEY [plants|kg]        harvest of a crop, such as lettuce-leaf
  fish NAME DATE                        feed of a fish group on a day
  fish NAME DATE mass                   mass of a fish group on a day
  fish NAME WEEK                        feed of a fish group a day in a week, such as 2027-W18
  tank NAME DATE                        density of a tank on a day

{SURE_SUBJECTS}

WEEK is 2027-W18 or a day of it, DATE such as 2027-05-03. Names that hold a blank stand in quotes.

examples:
  raftweek why school.toml batch LTB-27W14-A seeds
  raftweek why school.toml week 2027-W18 N
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


# --- subjects in words -------------------------------------------------------------------------------


def subject_of(words: Sequence[str], farm: Farm, forecast: Forecast, *, loop: str | None) -> Subject:
    """Return the subject that words name; raises `WrongUsageError` for one that is not there."""
    kind, *rest = words
    if kind == "week":
        return _week(rest, farm, forecast, loop=loop)
    if kind == "water":
        return _water(rest, farm, forecast, loop=loop)
    if kind not in _OF_THINGS:
        raise _wrong(f'"{kind}" is no subject.{_near(kind, (*_OF_THINGS, "week", "water"))}')
    with_mass = kind == "fish" and rest[2:] == ["mass"]
    if len(rest) != 2 and not with_mass:
        raise _wrong(f'"{kind}" takes two words more; "raftweek why --help" shows which.')
    if kind == "batch":
        return _batch(rest, farm)
    return _fish(rest, farm, forecast) if kind == "fish" else _tank(rest, farm, forecast)


_OF_THINGS: Final = ("batch", "fish", "tank")


def _near(word: str, known: Iterable[str]) -> str:
    every = list(dict.fromkeys(known))
    close = get_close_matches(word, every, n=1)
    if close:
        return f' Did you mean "{close[0]}"?'
    return f" There are {', '.join(every)}." if every else " There are none."


def _named(word: str, thing: str, by_name: Mapping[str, str]) -> str:
    """Return the id behind a name, in whatever case it is written."""
    folded = {name.casefold(): about for name, about in by_name.items()}
    found = folded.get(word.casefold())
    if found is None:
        raise _wrong(f'there is no {thing} "{word}".{_near(word, by_name)}')
    return found


def _batch(words: Sequence[str], farm: Farm) -> Subject:
    from planner.farm.crops import Stage
    from planner.farm.fields import Id
    from planner.forecast.why.values import Subject, SubjectKind

    code, figure = words
    about = Id(_named(code, "batch", {batch.code: batch.id for batch in farm.batches}))
    stages = {stage.value: stage for stage in Stage}
    match figure:
        case "seeds":
            return Subject(kind=SubjectKind.SEEDS, about=about)
        case "first-pick":
            return Subject(kind=SubjectKind.FIRST_PICK, about=about)
        case "harvest":
            return Subject(kind=SubjectKind.BATCH_HARVEST, about=about)
    if figure not in stages:
        raise _wrong(
            f'a batch has no figure "{figure}".{_near(figure, ["seeds", "first-pick", "harvest", *stages])}'
        )
    return Subject(kind=SubjectKind.STAGE_DAYS, about=about, stage=stages[figure])


def _fish(words: Sequence[str], farm: Farm, forecast: Forecast) -> Subject:
    from planner.farm.fields import Id
    from planner.forecast.why.values import Subject, SubjectKind

    about = Id(_named(words[0], "fish group", {group.name: group.id for group in farm.fish_groups}))
    if words[2:]:
        return Subject(kind=SubjectKind.GROUP_MASS, about=about, day=_day(words[1], forecast.ruler))
    if "W" in words[1].upper():
        return Subject(kind=SubjectKind.GROUP_FEED, about=about, week=week_of(words[1], forecast.ruler))
    return Subject(kind=SubjectKind.FEED, about=about, day=_day(words[1], forecast.ruler))


def _tank(words: Sequence[str], farm: Farm, forecast: Forecast) -> Subject:
    from planner.farm.fields import Id
    from planner.forecast.why.values import Subject, SubjectKind

    about = Id(_named(words[0], "tank", {tank.name: tank.id for tank in farm.tanks}))
    return Subject(kind=SubjectKind.DENSITY, about=about, day=_day(words[1], forecast.ruler))


def _day(word: str, ruler: Ruler) -> int:
    try:
        day = ruler.day_of(date.fromisoformat(word))
    except ValueError:
        raise _wrong(f'"{word}" is not a date such as 2027-04-08.') from None
    if not 0 <= day < ruler.days:
        raise _wrong(_outside(word, ruler))
    return day


def _outside(word: str, ruler: Ruler) -> str:
    last = ruler.date_of(ruler.days - 1)
    return (
        f"{word} is outside the plan, which covers {ruler.weeks} weeks from {ruler.start_on.isoformat()} to "
        f"{last.isoformat()}, {ruler.week_name(0)} to {ruler.week_name(ruler.weeks - 1)}."
    )


def week_of(word: str, ruler: Ruler) -> int:
    """Return the week that a name such as 2027-W18, or a day in it, means."""
    names = {ruler.week_name(week): week for week in range(ruler.weeks)}
    found = names.get(word.upper())
    if found is not None:
        return found
    if "W" in word.upper():
        raise _wrong(_outside(word, ruler))
    return _day(word, ruler) // DAYS_PER_WEEK


def _loop(name: str | None, farm: Farm) -> Id:
    from planner.farm.fields import Id

    if name is None:
        return farm.loops[0].id
    return Id(_named(name, "loop", {one.name: one.id for one in farm.loops}))


def _water(words: Sequence[str], farm: Farm, forecast: Forecast, *, loop: str | None) -> Subject:
    from planner.forecast.why.values import Subject, SubjectKind

    if len(words) < 2:
        raise _wrong('"water" takes a day and a figure, such as 2027-05-03 iron-due.')
    on = forecast.ruler.date_of(_day(words[0], forecast.ruler))
    figure, *rest = words[1:]
    if figure in _OF_PRODUCT:
        if len(rest) != 1:
            raise _wrong(f'"{figure}" takes the key of one product, such as iron-dtpa-11.')
        return Subject(kind=SubjectKind(_OF_PRODUCT[figure]), about=_loop(loop, farm), on=on, part=rest[0])
    if figure not in _OF_WATER or rest:
        known = [*_OF_PRODUCT, *_OF_WATER]
        raise _wrong(f'the water of a day has no figure "{" ".join(words[1:])}".{_near(figure, known)}')
    kind, part = _OF_WATER[figure]
    return Subject(kind=SubjectKind(kind), about=_loop(loop, farm), on=on, part=part)


_OF_PRODUCT: Final = {"base": "base grams", "salt": "salt grams", "iron": "iron grams"}
_OF_WATER: Final = {
    "iron-due": ("iron due", ""),
    "salts": ("salts", ""),
    "free-ammonia": ("free ammonia", ""),
    "alkalinity-limit": ("limit", "alkalinity by balance"),
    "ph-limit": ("limit", "pH by balance"),
    "ph-trend": ("limit", "pH by trend"),
}


def _week(words: Sequence[str], farm: Farm, forecast: Forecast, *, loop: str | None) -> Subject:
    from planner.farm.species import ELEMENTS
    from planner.forecast.why.values import Subject, SubjectKind

    if len(words) < 2:
        raise _wrong('"week" takes a week and a figure, such as 2027-W18 N.')
    week, (figure, *rest) = week_of(words[0], forecast.ruler), words[1:]
    if figure == "crop":
        return _harvest(rest, forecast, week)
    about = _loop(loop, farm)
    if figure in _OF_WEEK and not rest:
        return Subject(kind=SubjectKind(_OF_WEEK[figure]), about=about, week=week)
    if figure.lower() not in ELEMENTS:
        symbols = [element.capitalize() for element in ELEMENTS]
        raise _wrong(f'a week has no figure "{figure}".{_near(figure, [*symbols, *_OF_WEEK, "crop"])}')
    side = " ".join(rest)
    if side not in _SIDES:
        raise _wrong(f'"{side}" is neither supply nor demand.')
    kind = SubjectKind(_SIDES[side])
    return Subject(kind=kind, about=about, week=week, element=ELEMENTS.index(figure.lower()))


_OF_WEEK: Final = {
    "least": "limiting element",
    "feed": "mean feed",
    "feed-ratio": "feed-rate ratio",
    "area": "area fed",
    "planted": "planted area",
    "ammonia": "ammonia",
    "filter": "filter need",
    "oxygen": "oxygen",
    "acid": "acid",
    "base": "base",
}
_SIDES: Final = {"": "ratio", "supply": "supply", "demand": "demand"}


def _harvest(words: Sequence[str], forecast: Forecast, week: int) -> Subject:
    from planner.forecast.why.values import Subject, SubjectKind

    if not words or words[0] not in forecast.crops:
        word = words[0] if words else ""
        raise _wrong(f'the farm does not grow "{word}".{_near(word, forecast.crops)}')
    unit = words[1] if len(words) > 1 else "plants"
    kinds = {"plants": SubjectKind.HARVEST_PLANTS, "kg": SubjectKind.HARVEST_G}
    if unit not in kinds or len(words) > 2:
        raise _wrong(f'"{" ".join(words[1:])}" is neither plants nor kg.')
    return Subject(kind=kinds[unit], crop=words[0], week=week)
