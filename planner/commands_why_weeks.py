"""Subjects of `why` for a week, some weeks, the whole plan, and the water of a day."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from typing import TYPE_CHECKING, Final

from planner.commands_why_names import (
    day_of_word,
    element_of,
    loop_id,
    near,
    symbols,
    week_of,
    wrong,
)
from planner.farm.fields import NO_ID
from planner.farm.species import ELEMENTS
from planner.farm.water import Quantity
from planner.forecast.why.values import Subject, SubjectKind

if TYPE_CHECKING:
    from planner.farm.farm import Farm
    from planner.forecast.values import Forecast

_OF_WEEK: Final = {
    "least": "limiting element",
    "feed": "mean feed",
    "feed-ratio": "feed-rate ratio",
    "area": "area fed",
    "planted": "planted area",
    "hole": "fall of the feed in a week",
    "ammonia": "ammonia",
    "filter": "filter need",
    "surface": "filter surface",
    "gravel": "surface of gravel",
    "oxygen": "oxygen",
    "peak-oxygen": "oxygen after feeding",
    "saturation": "oxygen held",
    "acid": "acid",
    "base": "base",
    "alkalinity-fall": "fall of alkalinity",
}
_SIDES: Final = {
    "": "ratio",
    "supply": "supply",
    "demand": "demand",
    "band": "band of the ratio",
    "covered": "supply and stock",
    "lacking": "what plants lack",
}
_WORK: Final = ("sow", "sown-plants", "space", "move", "pick", "clear")
_PIECES: Final = {"plugs": "media plug", "net-pots": "net pot"}
OF_FISH: Final = {
    "feed-kg": "feed of some weeks",
    "gain-kg": "gain of fish in some weeks",
    "fish-kg": "fish harvested in some weeks",
}
"""What can be asked of fish over some weeks, of a group or of all."""
_HARVEST: Final = {"harvest-plants": "plants", "harvest-kg": "kg"}
OF_SPAN: Final = (*_WORK, "seeds", *_PIECES, *_HARVEST, *OF_FISH)
"""What can be asked of one week, of some, and of the whole plan."""


def week_subject(words: Sequence[str], farm: Farm, forecast: Forecast, *, loop: str | None) -> Subject:
    """Return the subject of a week; raises `WrongUsageError` for words that name none."""
    if len(words) < 2:
        raise wrong('"week" takes a week and a figure, such as 2027-W18 N.')
    week, (figure, *rest) = week_of(words[0], forecast.ruler), words[1:]
    if figure == "crop":
        return _crop(rest, forecast, week)
    if figure in OF_SPAN:
        return _span(figure, rest, farm, forecast, week=week, weeks=1)
    about = loop_id(loop, farm)
    if figure == "planted" and len(rest) == 1:
        kind = SubjectKind.PLANTED_CROP
        return Subject(kind=kind, about=about, week=week, crop=_grown(rest[0], forecast))
    if figure in _OF_WEEK and not rest:
        return Subject(kind=SubjectKind(_OF_WEEK[figure]), about=about, week=week)
    if figure.lower() not in ELEMENTS:
        known = [*symbols(), *_OF_WEEK, "crop", *OF_SPAN]
        raise wrong(f'a week has no figure "{" ".join(words[1:])}".{near(figure, known)}')
    side = " ".join(rest)
    if side not in _SIDES:
        more = ", ".join(list(_SIDES)[3:])
        raise wrong(f'"{side}" is neither supply nor demand, nor one of {more}.')
    kind = SubjectKind(_SIDES[side])
    return Subject(kind=kind, about=about, week=week, element=element_of(figure))


def _grown(word: str, forecast: Forecast) -> str:
    if word not in forecast.crops:
        raise wrong(f'the farm does not grow "{word}".{near(word, forecast.crops)}')
    return word


def _crop(words: Sequence[str], forecast: Forecast, week: int) -> Subject:
    crop = _grown(words[0] if words else "", forecast)
    unit = words[1] if len(words) > 1 else "plants"
    kinds = {"plants": SubjectKind.HARVEST_PLANTS, "kg": SubjectKind.HARVEST_G}
    if unit not in kinds or len(words) > 2:
        raise wrong(f'"{" ".join(words[1:])}" is neither plants nor kg.')
    return Subject(kind=kinds[unit], crop=crop, week=week)


def weeks_subject(words: Sequence[str], farm: Farm, forecast: Forecast) -> Subject:
    """Return the subject of some weeks, from one to another, both counted."""
    if len(words) < 3:
        raise wrong('"weeks" takes two weeks and a figure, such as 2027-W14 2027-W18 harvest-kg.')
    first, last = (week_of(word, forecast.ruler) for word in words[:2])
    if last < first:
        raise wrong(f"{words[1]} comes before {words[0]}; the first of the weeks stands first.")
    return _span(words[2], words[3:], farm, forecast, week=first, weeks=last - first + 1)


def plan_subject(words: Sequence[str], farm: Farm, forecast: Forecast) -> Subject:
    """Return the subject of the whole plan."""
    if not words:
        raise wrong(f'"plan" takes a figure.{near("", OF_SPAN)}')
    return _span(words[0], words[1:], farm, forecast, week=0, weeks=0)


def _span(
    figure: str, rest: Sequence[str], farm: Farm, forecast: Forecast, *, week: int, weeks: int
) -> Subject:
    """Return the subject of some weeks; one word more may say of which crop, lot or feed."""
    if figure not in OF_SPAN:
        raise wrong(f'weeks have no figure "{figure}".{near(figure, OF_SPAN)}')
    if len(rest) > (figure not in _PIECES and figure not in ("gain-kg", "fish-kg")):
        raise wrong(f'"{" ".join(rest)}" is too much: "{figure}" does not take it.')
    word = rest[0] if rest else ""
    span = partial(Subject, week=week, weeks=weeks)
    if figure in OF_FISH:
        return span(kind=SubjectKind(OF_FISH[figure]), part=word)
    if figure in _PIECES:
        return span(kind=SubjectKind.PIECES, part=_PIECES[figure])
    lots = {lot.code.casefold(): lot.id for lot in farm.seed_lots}
    if figure == "seeds" and word.casefold() in lots:
        return span(kind=SubjectKind.SEEDS_USED, about=lots[word.casefold()])
    crop = _grown(word, forecast) if word else ""
    if figure == "seeds":
        return span(kind=SubjectKind.SEEDS_USED, about=NO_ID, crop=crop)
    if figure in _HARVEST:
        return span(kind=SubjectKind.HARVEST_TOTAL, part=_HARVEST[figure], crop=crop)
    return span(kind=SubjectKind.WORK, part=figure.replace("-", " "), crop=crop)


_OF_PRODUCT: Final = {
    "base": "base grams",
    "salt": "salt grams",
    "iron": "iron grams",
    "brings": "what an advised dose brings",
}
_OF_ELEMENT: Final = {"stock": "stock in the water", "wanting": "element wanting"}
_OF_QUANTITY: Final = {"trend": "trend of readings", "test-late": "test late"}
_OF_WATER: Final = {
    "iron-due": ("iron due", ""),
    "salts": ("salts", ""),
    "free-ammonia": ("free ammonia", ""),
    "alkalinity-limit": ("limit", "alkalinity by balance"),
    "ph-limit": ("limit", "pH by balance"),
    "ph-trend": ("limit", "pH by trend"),
    "observed-acid": ("acid by the log", ""),
    "base-left": ("base left over", ""),
}


def water_subject(words: Sequence[str], farm: Farm, forecast: Forecast, *, loop: str | None) -> Subject:
    """Return the subject of the water of a day."""
    if len(words) < 2:
        raise wrong('"water" takes a day and a figure, such as 2027-05-03 iron-due.')
    day, about = day_of_word(words[0], forecast.ruler), loop_id(loop, farm)
    on, (figure, *rest) = forecast.ruler.date_of(day), words[1:]
    if figure in _OF_PRODUCT:
        part = _one(figure, rest, "the key of one product, such as iron-dtpa-11")
        return Subject(kind=SubjectKind(_OF_PRODUCT[figure]), about=about, on=on, part=part)
    if figure in _OF_ELEMENT:
        element = element_of(_one(figure, rest, "one element, such as K"))
        kind = SubjectKind(_OF_ELEMENT[figure])
        return Subject(kind=kind, about=about, on=on, day=day, element=element)
    if figure in _OF_QUANTITY:
        part = _quantity(_one(figure, rest, "what is read, such as ph"))
        return Subject(kind=SubjectKind(_OF_QUANTITY[figure]), about=about, on=on, part=part)
    if figure == "alkalinity":
        ahead = day_of_word(_one(figure, rest, "a later day, such as 2027-06-01"), forecast.ruler)
        return Subject(kind=SubjectKind.ALKALINITY, about=about, on=on, day=ahead)
    if figure not in _OF_WATER or rest:
        known = [*_OF_PRODUCT, *_OF_WATER, *_OF_ELEMENT, *_OF_QUANTITY, "alkalinity"]
        raise wrong(f'the water of a day has no figure "{" ".join(words[1:])}".{near(figure, known)}')
    name, part = _OF_WATER[figure]
    return Subject(kind=SubjectKind(name), about=about, on=on, part=part)


def _one(figure: str, rest: Sequence[str], what: str) -> str:
    if len(rest) != 1:
        raise wrong(f'"{figure}" takes {what}.')
    return rest[0]


def _quantity(word: str) -> str:
    """Return the quantity that a word means: the first word of its name, such as "tan", or all of it."""
    known = {quantity.value.split()[0].casefold(): quantity.value for quantity in Quantity}
    whole = {quantity.value.casefold(): quantity.value for quantity in Quantity}
    found = whole.get(word.casefold()) or known.get(word.casefold())
    if found is None:
        raise wrong(f'"{word}" is nothing that is read.{near(word, known)}')
    return found
