"""What the fish feed, the make-up water and the doses bring to the plants, element by element.

Each element of the feed is kept in fish, leaves as solids, is lost as gas (nitrogen) or is
dissolved; the four always sum to the feed.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from planner.farm.site import Loop
from planner.farm.species import ELEMENTS, Feed, FishSpecies, Supplement
from planner.farm.water import Dose
from planner.forecast.figures import SupplyFigures
from planner.forecast.values import Floats, GroupForecast, Ruler
from planner.science.elements import nitrogen_from_protein, split_feed

_G_PER_KG: Final = 1000.0
_MG_PER_KG: Final = 1_000_000.0
_MG_PER_G: Final = 1000.0
_NITROGEN: Final = ELEMENTS.index("n")


@dataclass(frozen=True, slots=True, kw_only=True)
class FedGroup:
    """A group with the fish and the feed it is of."""

    group: GroupForecast
    species: FishSpecies
    feed: Feed


@dataclass(frozen=True, slots=True, kw_only=True)
class FeedFate:
    """Where the elements of the feed of a loop go [g], each of shape (element, day)."""

    content_g: Floats
    fish_g: Floats
    solids_g: Floats
    gas_g: Floats
    dissolved_g: Floats


def figures_of_loop(figures: SupplyFigures, loop: Loop) -> SupplyFigures:
    """Return the figures of supply with a loop's own loss of nitrogen as gas, where it has one."""
    if loop.gas_loss_share is None:
        return figures
    shares = figures.gas_loss_share.copy()
    shares[_NITROGEN] = loop.gas_loss_share
    return replace(figures, gas_loss_share=shares)


def feed_contents(feed: Feed, figures: SupplyFigures) -> Floats:
    """Return what a gram of feed holds of each element [g/g], shape (element,)."""
    nitrogen = nitrogen_from_protein(feed.protein_share, protein_per_nitrogen=figures.protein_per_nitrogen)
    minerals = [feed.p_g_per_kg, feed.k_g_per_kg, feed.ca_g_per_kg, feed.mg_g_per_kg]
    iron = feed.fe_mg_per_kg / _MG_PER_KG
    return np.asarray([nitrogen, *(grams / _G_PER_KG for grams in minerals), iron])


def body_contents(species: FishSpecies) -> Floats:
    """Return what a gram of live fish holds of each element [g/g], shape (element,)."""
    grams = [getattr(species, f"body_{element}_g_per_kg") / _G_PER_KG for element in ELEMENTS[:-1]]
    return np.asarray([*grams, species.body_fe_mg_per_kg / _MG_PER_KG])


def gas_share_of_dissolved(figures: SupplyFigures) -> Floats:
    """Return the share of what dissolves that is lost as gas [g/g], shape (element,).

    The published share is of the feed, in systems where so much of it dissolved; fish that keep more
    leave less to lose.
    """
    return np.minimum(figures.gas_loss_share / figures.dissolving_share, 1.0)


def feed_fate(fed: Sequence[FedGroup], *, figures: SupplyFigures, ruler: Ruler) -> FeedFate:
    """Return where the elements of all groups' feed go."""
    shape = (len(ELEMENTS), ruler.days)
    content, fish, solids, gas, dissolved = (np.zeros(shape) for _ in range(5))
    for one in fed:
        feed_g, gain_g = one.group.feed_g, one.group.gain_g
        into = feed_contents(one.feed, figures)[:, None] * feed_g
        split = split_feed(
            into,
            gain_g=gain_g,
            body_content_g_per_g=body_contents(one.species)[:, None],
            solids_share=figures.solids_share[:, None],
        )
        lost = split.dissolved_g * gas_share_of_dissolved(figures)[:, None]
        content += into
        fish += split.fish_g
        solids += split.solids_g
        gas += lost
        dissolved += split.dissolved_g - lost
    return FeedFate(content_g=content, fish_g=fish, solids_g=solids, gas_g=gas, dissolved_g=dissolved)


def top_up_g(loop: Loop, *, figures: SupplyFigures, ruler: Ruler) -> Floats:
    """Return what the make-up water of a loop brings [g/d], shape (element, day).

    Without a volume of its own a loop is topped up by the usual share of its water.
    """
    litres = loop.top_up_l_per_day
    if litres is None:
        litres = loop.water_l * figures.top_up_share_per_day
    per_l = [getattr(loop, f"top_up_{element}_mg_per_l") for element in ELEMENTS]
    a_day = np.asarray(per_l) * litres / _MG_PER_G
    return np.repeat(a_day[:, None], ruler.days, axis=1)


def dose_g(doses: Sequence[Dose], *, supplements: Mapping[str, Supplement], ruler: Ruler) -> Floats:
    """Return what doses bring [g/d], shape (element, day).

    A dose that is repeated counts evenly over the days until the next one, for what is dissolved
    waits in the water; a single dose counts on its day.
    """
    brought = np.zeros((len(ELEMENTS), ruler.days))
    for dose in doses:
        supplement = supplements[dose.supplement]
        shares = np.asarray([getattr(supplement, f"{element}_share") for element in ELEMENTS])
        lasts = max(dose.every_days, 1)
        for day in dose_days(dose, ruler, lead=lasts - 1):
            days = slice(max(day, 0), max(day + lasts, 0))
            brought[:, days] += (shares * dose.grams / lasts)[:, None]
    return brought


def dose_days(dose: Dose, ruler: Ruler, *, lead: int = 0) -> list[int]:
    """Return the days on which a dose is given, from `lead` days before the ruler to its end."""
    first = ruler.day_of(dose.on)
    if dose.every_days == 0:
        days: Iterable[int] = (first,)
    else:
        last = ruler.days - 1 if dose.until_on is None else ruler.day_of(dose.until_on)
        days = range(first, min(last, ruler.days - 1) + 1, dose.every_days)
    return [day for day in days if -lead <= day < ruler.days]


def protein_share(fed: Sequence[FedGroup], *, reference: float, ruler: Ruler) -> Floats:
    """Return the mean protein of what is fed [g/g] by day; `reference` on days without feed."""
    feed = sum((one.group.feed_g for one in fed), start=np.zeros(ruler.days))
    protein = sum((one.group.feed_g * one.feed.protein_share for one in fed), start=np.zeros(ruler.days))
    return np.where(feed > 0, protein / np.where(feed > 0, feed, 1.0), reference)


def nitrogen_row(by_element: Floats) -> Floats:
    """Return the nitrogen row of an element array."""
    row: Floats = by_element[_NITROGEN]
    return row
