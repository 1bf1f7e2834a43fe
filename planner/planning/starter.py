"""A farm to begin with: one site and one loop with a tank, and nothing grown yet."""

from __future__ import annotations

from datetime import date
from typing import Final

from planner.farm.farm import Farm, Settings
from planner.farm.ids import new_id
from planner.farm.site import Loop, Site, Tank

STARTER_TANK_L: Final = 1000.0
STARTER_WATER_L: Final = 1500.0


def starter_farm(*, name: str, plan_from: date) -> Farm:
    """Return a farm with one site, one loop and one tank, planned for the usual number of weeks."""
    site = Site(id=new_id(), name="Site")
    loop = Loop(id=new_id(), name="Loop", site=site.id, water_l=STARTER_WATER_L)
    tank = Tank(id=new_id(), name="Fish tank", loop=loop.id, volume_l=STARTER_TANK_L)
    settings = Settings(id=new_id(), name=name, plan_from=plan_from)
    return Farm(settings=settings, sites=(site,), loops=(loop,), tanks=(tank,))
