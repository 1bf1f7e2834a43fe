"""What the questions about a new farm offer: classes of climate, cautions, and beds laid out to be drawn.

Must know nothing of widgets.
"""

from __future__ import annotations

from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.forms.editors import Choice
from planner.desk.say import careful, tr
from planner.desk.words import number_words
from planner.farm.fields import NO_ID
from planner.farm.site import Bed
from planner.planning.answers import BedWish
from planner.planning.climates import ClimateClass, monthly_air
from planner.planning.draft import laid_out

_CHOOSING: Final = "species choice"
_WORDS: Final = (
    (ClimateClass.UNKNOWN, "Not known: the days of the book"),
    (ClimateClass.TROPICAL, "Warm all year, as in the tropics"),
    (ClimateClass.MILD, "Hot summer, mild winter"),
    (ClimateClass.COLD, "Warm summer, cold winter"),
    (ClimateClass.HEATED, "Heated in winter, or indoors"),
)


def climate_choices(catalogue: Catalogue) -> tuple[Choice, ...]:
    """Return the classes, each with its coldest and warmest month at sea level and how sure that is."""
    return tuple(Choice(value=kind, words=tr(words), note=_note(kind, catalogue)) for kind, words in _WORDS)


def _note(kind: ClimateClass, catalogue: Catalogue) -> str:
    months = monthly_air(kind, latitude_deg=None, altitude_m=0.0, catalogue=catalogue)
    if not months:
        return tr("Days are then the same all year. Months of your own can be entered later, under Set-up.")
    heated = kind is ClimateClass.HEATED
    sure = tr("common practice") if heated else tr("from memory, not checked")
    return tr(
        "Air from {low} to {high} °C by month at sea level: a guess, {sure}. Put in your own later.",
        low=number_words(min(months)),
        high=number_words(max(months)),
        sure=sure,
    )


def species_cautions(catalogue: Catalogue) -> tuple[str, ...]:
    """Return the cautions that belong where fish are chosen."""
    found = (each for each in catalogue.cautions.values() if _CHOOSING in each.where)
    return tuple(f"{tr(each.topic)}. {careful(each.text)}" for each in found)


def laid_out_for(catalogue: Catalogue, wish: BedWish, crops: tuple[str, ...]) -> Bed:
    """Return the bed that a wish would become with some crops wanted, as a draft would lay it out."""
    return laid_out(wish, NO_ID, [catalogue.crops[key] for key in crops])
