"""Whether a site names a time zone that the machine knows; which those are is told from outside."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator
from difflib import get_close_matches

from planner.farm.faults import Fault, FaultKind
from planner.farm.site import Site


def zone_faults(sites: Iterable[Site], known: Collection[str]) -> Iterator[Fault]:
    """Yield a fault for every site whose time zone is not among the known ones; none when none are known."""
    for site in sites if known else ():
        if site.time_zone and site.time_zone not in known:
            near = nearest_zone(site.time_zone, known)
            meant = f'Did you mean "{near}"? ' if near else ""
            yield Fault(
                kind=FaultKind.UNKNOWN_NAME,
                where=f'site "{site.name}"',
                field="time_zone",
                value=site.time_zone,
                limit="a name of the IANA list",
                message=f'time_zone "{site.time_zone}" is not known.',
                remedy=f'{meant}Names are as in "Asia/Manila"; "UTC" always does.',
            )


def nearest_zone(said: str, known: Collection[str]) -> str:
    """Return the known name that is most like what was said, empty when none is.

    >>> nearest_zone("manila", {"Asia/Manila", "Asia/Tokyo"}), nearest_zone("x", {"Asia/Tokyo"})
    ('Asia/Manila', '')
    """
    wanted = said.strip().casefold().replace(" ", "_").replace("\\", "/")
    # The signs of the zones under Etc are turned round, so nobody is led there.
    names = {name.casefold(): name for name in sorted(known) if not name.startswith("Etc/")}
    places = {name.rpartition("/")[2]: whole for name, whole in names.items() if "/" in name}
    place = wanted.rpartition("/")[2]
    for shelf, asked in ((names, wanted), (places, place)):
        if asked in shelf:
            return shelf[asked]
    for shelf, asked in ((names, wanted), (places, place)):
        found = get_close_matches(asked, shelf, n=1, cutoff=0.75)
        if found:
            return shelf[found[0]]
    return ""
