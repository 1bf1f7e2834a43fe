"""Looks up what the words of the command `why` name: things of the farm, days, weeks and elements."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date
from difflib import get_close_matches
from typing import TYPE_CHECKING

from planner.cli_shared import WrongUsageError
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import ELEMENTS

if TYPE_CHECKING:
    from planner.farm.farm import Farm
    from planner.farm.fields import Id
    from planner.forecast.values import Ruler


def wrong(sentence: str) -> WrongUsageError:
    """Return the error of words that name nothing."""
    return WrongUsageError(sentence)


def near(word: str, known: Iterable[str]) -> str:
    """Return a sentence that says what was perhaps meant, else what there is."""
    every = list(dict.fromkeys(known))
    close = get_close_matches(word, every, n=1)
    if close:
        return f' Did you mean "{close[0]}"?'
    return f" There are {', '.join(every)}." if every else " There are none."


def named(word: str, thing: str, by_name: Mapping[str, Id]) -> Id:
    """Return the id behind a name, in whatever case it is written."""
    folded = {name.casefold(): about for name, about in by_name.items()}
    found = folded.get(word.casefold())
    if found is None:
        raise wrong(f'there is no {thing} "{word}".{near(word, by_name)}')
    return found


def day_of_word(word: str, ruler: Ruler) -> int:
    """Return the day of the plan that a date means."""
    try:
        day = ruler.day_of(date.fromisoformat(word))
    except ValueError:
        raise wrong(f'"{word}" is not a date such as 2027-04-08.') from None
    if not 0 <= day < ruler.days:
        raise wrong(_outside(word, ruler))
    return day


def _outside(word: str, ruler: Ruler) -> str:
    last = ruler.date_of(ruler.days - 1)
    return (
        f"{word} is outside the plan, which covers {ruler.weeks} weeks from {ruler.start_on.isoformat()} to "
        f"{last.isoformat()}, {ruler.week_name(0)} to {ruler.week_name(ruler.weeks - 1)}."
    )


def is_week(word: str) -> bool:
    """Tell whether a word is the name of a week rather than a date."""
    return "W" in word.upper()


def week_of(word: str, ruler: Ruler) -> int:
    """Return the week that a name such as 2027-W18, or a day in it, means."""
    names = {ruler.week_name(week): week for week in range(ruler.weeks)}
    found = names.get(word.upper())
    if found is not None:
        return found
    if is_week(word):
        raise wrong(_outside(word, ruler))
    return day_of_word(word, ruler) // DAYS_PER_WEEK


def loop_id(name: str | None, farm: Farm) -> Id:
    """Return the loop of a name, the first without one."""
    if name is None:
        return farm.loops[0].id
    return named(name, "loop", {one.name: one.id for one in farm.loops})


def element_of(word: str) -> int:
    """Return the number of an element by its symbol."""
    if word.lower() not in ELEMENTS:
        raise wrong(f'"{word}" is no element.{near(word, symbols())}')
    return ELEMENTS.index(word.lower())


def symbols() -> list[str]:
    """Return the symbols of all elements."""
    return [element.capitalize() for element in ELEMENTS]
