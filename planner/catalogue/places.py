"""Countries with their time zones and where the principal place of each zone lies.

Read from a shipped table that comes from the time zone database; must know nothing of farms.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Final

from planner.shipped import shipped_path

_FILE: Final = ("resources", "places", "zones.tab")


@dataclass(frozen=True, slots=True, kw_only=True)
class ZonePlace:
    """One zone of one country; the coordinates [°] are those of the zone's principal place."""

    country_code: str
    country: str
    latitude_deg: float
    longitude_deg: float
    time_zone: str
    comment: str

    @property
    def city(self) -> str:
        """The principal place, as the name of the zone has it.

        >>> ZonePlace(country_code="AR", country="Argentina", latitude_deg=0, longitude_deg=0,
        ...           time_zone="America/Argentina/Rio_Gallegos", comment="").city
        'Rio Gallegos'
        """
        return self.time_zone.rpartition("/")[2].replace("_", " ")


@cache
def zone_places() -> tuple[ZonePlace, ...]:
    """Return every zone of every country, by country and zone."""
    lines = shipped_path(*_FILE).read_text(encoding="utf-8").splitlines()
    return tuple(_place(line) for line in lines if line and not line.startswith("#"))


def _place(line: str) -> ZonePlace:
    code, country, latitude, longitude, zone, comment = line.split("\t")
    return ZonePlace(
        country_code=code,
        country=country,
        latitude_deg=float(latitude),
        longitude_deg=float(longitude),
        time_zone=zone,
        comment=comment,
    )
