"""For how long a run of places is held: what the forecast works out and the store guards."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from planner.farm.fields import Id


@dataclass(frozen=True, slots=True, kw_only=True)
class Hold:
    """A placement's dates: from `from_on` until the day before `until_on`, cleaning days included."""

    placement: Id
    batch: Id
    bed: Id
    unit: int
    first: int
    last: int
    from_on: date
    until_on: date
