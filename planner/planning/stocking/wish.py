"""What is asked for when fish are to be stocked: which fish, into which tanks, on which days, how split."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import Id
from planner.farm.fish import Feeding, FishGroup
from planner.farm.site import Tank
from planner.forecast.flags import density_limit as limit_of_species

_ROUNDING: Final = 1e-9
WHOLE: Final = 1.0
"""Share of a group taken at a harvest of all its fish."""


@dataclass(frozen=True, slots=True, kw_only=True)
class StockingWish:
    """Groups to be stocked in a loop.

    `dates` are days on which fingerlings can be had, in order. Without `tanks` all of the loop are used;
    without `harvest_g` and `density_limit_kg_per_m3` the species' own figures hold. `shares` are of the
    fish stocked, taken at each harvest of a group, 1 for all at once. `fcr`, `tgc` and `feeding_table`
    overrule the species as in a fish group.
    """

    loop: Id
    species: str
    feed: str
    fingerling_g: float
    dates: tuple[date, ...]
    tanks: tuple[Id, ...] = ()
    harvest_g: float | None = None
    density_limit_kg_per_m3: float | None = None
    groups: tuple[int, ...] = (1, 2, 4, 6)
    shares: tuple[float, ...] = (WHOLE, 0.5, 0.3)
    tgc: float | None = None
    fcr: float | None = None
    feeding_table: str = ""


def dates_every(weeks: int, *, first_on: date, until_on: date) -> tuple[date, ...]:
    """Return a day every so many weeks, from the first to the last before `until_on`.

    >>> dates_every(4, first_on=date(2027, 1, 4), until_on=date(2027, 2, 28))
    (datetime.date(2027, 1, 4), datetime.date(2027, 2, 1))
    """
    if weeks < 1:
        raise ValueError(f"weeks is {weeks}; fingerlings come every 1 week or more")
    step = weeks * DAYS_PER_WEEK
    return tuple(first_on + timedelta(days=days) for days in range(0, (until_on - first_on).days, step))


def takes_of(share: float) -> int:
    """Return in how many harvests a group is taken.

    >>> [takes_of(share) for share in (1.0, 0.5, 0.3)]
    [1, 2, 4]
    """
    return math.ceil(1.0 / share - _ROUNDING)


def tanks_of(farm: Farm, wish: StockingWish) -> tuple[Tank, ...]:
    """Return the tanks that fish go into, in the farm's order."""
    inside = [tank for tank in farm.tanks if tank.loop == wish.loop]
    return tuple(tank for tank in inside if not wish.tanks or tank.id in wish.tanks)


def density_limit(tank: Tank, wish: StockingWish, catalogue: Catalogue) -> float:
    """Return the most fish a tank may hold [kg/m³]: what was asked for, else the species' limit."""
    if wish.density_limit_kg_per_m3 is not None:
        return wish.density_limit_kg_per_m3
    return limit_of_species(catalogue.fish[wish.species], tank.volume_l, catalogue)


def harvest_weight(wish: StockingWish, catalogue: Catalogue) -> float:
    """Return the weight from which fish are harvested [g]."""
    return catalogue.fish[wish.species].harvest_weight_g if wish.harvest_g is None else wish.harvest_g


def group_like(wish: StockingWish, *, key: Id, name: str, tank: Id, on: date, count: int) -> FishGroup:
    """Return a group of the fish that are asked for."""
    return FishGroup(
        id=key,
        name=name,
        tank=tank,
        species=wish.species,
        feed=wish.feed,
        stocked_on=on,
        count=count,
        mean_weight_g=wish.fingerling_g,
        feeding=Feeding.TABLE if wish.feeding_table else Feeding.GROWTH,
        feeding_table=wish.feeding_table,
        tgc=wish.tgc,
        fcr=wish.fcr,
    )


def check_wish(farm: Farm, wish: StockingWish, catalogue: Catalogue) -> None:
    """Raise `FarmFaultError` with everything about a wish that cannot be met."""
    found = [
        *_unknown("fish species", wish.species, catalogue.fish),
        *_unknown("feed", wish.feed, catalogue.feeds),
        *(
            _unknown("feeding table", wish.feeding_table, catalogue.feeding_tables)
            if wish.feeding_table
            else ()
        ),
    ]
    if wish.loop not in by_id(farm.loops):
        found.append(_fault("loop", wish.loop, "is not on the farm."))
    elif not tanks_of(farm, wish):
        found.append(_fault("tanks", "none", "the loop has no tank to stock."))
    if not wish.dates:
        found.append(_fault("dates", "none", "there must be a day on which fingerlings can be had."))
    found += [
        _fault("groups", str(many), "must be a whole number of 1 or more.", "1")
        for many in wish.groups
        if many < 1
    ]
    found += [
        _fault("shares", f"{share:g}", "must lie above 0 and be at most 1.", "0 to 1")
        for share in wish.shares
        if not 0.0 < share <= WHOLE
    ]
    if not found:
        found += _weights(wish, catalogue)
    if found:
        raise FarmFaultError(tuple(found))


def _weights(wish: StockingWish, catalogue: Catalogue) -> list[Fault]:
    species = catalogue.fish[wish.species]
    if species.ornamental:
        return [_fault("species", wish.species, "is ornamental: it is not harvested, so not staggered.")]
    harvest_g = harvest_weight(wish, catalogue)
    if not 0.0 < wish.fingerling_g < harvest_g:
        words = f"must be above 0 g and below the harvest weight of {harvest_g:g} g."
        return [_fault("fingerling_g", f"{wish.fingerling_g:g}", words, f"{harvest_g:g} g")]
    limit = wish.density_limit_kg_per_m3
    if limit is not None and limit <= 0.0:
        return [_fault("density_limit_kg_per_m3", f"{limit:g}", "must be above 0 kg/m³.", "0 kg/m³")]
    return []


def _unknown(what: str, key: str, shelf: object) -> list[Fault]:
    assert hasattr(shelf, "__contains__")
    return [] if key in shelf else [_fault(what, key, "is not in the catalogue.")]


def _fault(field: str, value: str, words: str, limit: str = "") -> Fault:
    return Fault(
        kind=FaultKind.OUT_OF_LIMITS if limit else FaultKind.UNKNOWN_NAME,
        where="stocking",
        field=field,
        value=value,
        limit=limit,
        message=f"{field} is {value}: {words}",
    )
