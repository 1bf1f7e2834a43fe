"""Every fault of a farm: its own, what the catalogue does not know, two plants in one place."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from difflib import get_close_matches

from planner.catalogue.catalogue import Catalogue
from planner.farm.checks import farm_faults, where_of
from planner.farm.farm import KINDS, Farm, things
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import FieldKind, specs_of
from planner.farm.zones import zone_faults
from planner.forecast.engine import Forecaster
from planner.forecast.occupancy import HoldKeeper, clash_faults

_SHOWN_MATCHES = 3


def shelves(catalogue: Catalogue) -> dict[str, Mapping[str, object]]:
    """Return the shelves of the catalogue by the word that fields name them with."""
    return {
        "crop": catalogue.crops,
        "fish": catalogue.fish,
        "feed": catalogue.feeds,
        "supplement": catalogue.supplements,
        "feeding table": catalogue.feeding_tables,
    }


def catalogue_faults(farm: Farm, catalogue: Catalogue) -> Iterator[Fault]:
    """Yield a fault for every key that is on no shelf of the catalogue."""
    known = shelves(catalogue)
    for kind in KINDS:
        keys = [
            (name, known[spec.catalogue])
            for name, spec in specs_of(kind.owner).items()
            if spec.kind is FieldKind.KEY and spec.catalogue in known
        ]
        for thing in things(farm, kind.word) if keys else ():
            for name, shelf in keys:
                value = getattr(thing, name)
                if value and value not in shelf:
                    yield _unknown_key(where_of(thing), name, value, shelf)


def _unknown_key(where: str, field: str, value: str, shelf: Mapping[str, object]) -> Fault:
    near = get_close_matches(value, shelf, n=_SHOWN_MATCHES)
    remedy = f"Did you mean {' or '.join(near)}?" if near else f"Known are: {', '.join(sorted(shelf))}."
    return Fault(
        kind=FaultKind.UNKNOWN_NAME,
        where=where,
        field=field,
        value=value,
        limit="a key of the catalogue",
        message=f'{field} "{value}" is not in the catalogue.',
        remedy=remedy,
    )


def all_faults(
    farm: Farm,
    forecaster: Forecaster,
    *,
    sound: Farm | None = None,
    zones: Collection[str] = (),
    keeper: HoldKeeper | None = None,
) -> tuple[Fault, ...]:
    """Return every fault of a farm; places are looked at once all else is right.

    `sound` is a farm without faults that this one comes from; `zones` are the time zones that are known, none
    when they are not to be looked at. A `keeper` remembers how long places are held between farms much alike.
    """
    found = farm_faults(farm, sound=sound)
    if found:
        return found
    try:
        catalogue = forecaster.catalogue_for(farm)
    except FarmFaultError as error:
        return error.faults
    found = (*zone_faults(farm.sites, zones), *catalogue_faults(farm, catalogue))
    return found or clash_faults(farm, forecaster.preview(farm), keeper=keeper)
