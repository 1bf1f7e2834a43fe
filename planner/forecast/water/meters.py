"""Which readings are doubtful because their meter was not calibrated in time, and where a trend begins anew.

A meter that was set right reads otherwise than before: values on both sides of a calibration make no
trend. Must not know what the values mean.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from planner.farm.farm import Farm, by_id
from planner.farm.fields import Id
from planner.farm.log import Happening, standing
from planner.farm.meters import Meter
from planner.farm.water import Quantity, Reading

_NOT_SET_RIGHT: Final = frozenset({Quantity.WATER_C, Quantity.AIR_C})
"""What a calibration of pH, conductivity or oxygen leaves as it was."""


@dataclass(frozen=True, slots=True, kw_only=True)
class MeterState:
    """How a meter stands on a day: `due_on` is None when nobody watches over it.

    A meter that is watched but of which no calibration and no first day of use is known is due at once.
    """

    meter: Meter
    last_on: date | None
    due_on: date | None
    days_late: int


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class MeterBook:
    """The meters of a farm with the days on which each was calibrated, in order."""

    meters: Mapping[Id, Meter]
    calibrated: Mapping[Id, tuple[date, ...]]

    def last_on(self, meter: Meter, on: date) -> date | None:
        """Return the last day up to `on` on which a meter read right: calibrated, or first used."""
        days = self.calibrated.get(meter.id, ())
        at = bisect_right(days, on)
        if at:
            return days[at - 1]
        return meter.used_from if meter.used_from is not None and meter.used_from <= on else None

    def due_on(self, meter: Meter, on: date) -> date | None:
        """Return when a meter was to be calibrated at the latest, as seen on a day; None when unwatched."""
        if meter.calibrate_every_days is None:
            return None
        last = self.last_on(meter, on)
        return date.min if last is None else last + timedelta(days=meter.calibrate_every_days)

    def is_doubtful(self, reading: Reading) -> bool:
        """Tell whether a reading was made with a meter that was overdue on its day."""
        meter = self.meters.get(reading.meter)
        if meter is None or reading.quantity in _NOT_SET_RIGHT:
            return False
        due = self.due_on(meter, reading.on)
        return due is not None and reading.on > due

    def marks(self, found: Sequence[Reading]) -> tuple[date, ...]:
        """Return the days on which the meters of a series were calibrated, from its first to its last day."""
        days = {
            day
            for meter in {each.meter for each in found if each.quantity not in _NOT_SET_RIGHT}
            for day in self.calibrated.get(meter, ())
            if found[0].on < day <= found[-1].on
        }
        return tuple(sorted(days))

    def in_one_trend(self, found: Sequence[Reading]) -> tuple[Reading, ...]:
        """Return the readings of a series from the last calibration on; those before make another trend."""
        marks = self.marks(found)
        return tuple(each for each in found if each.on >= marks[-1]) if marks else tuple(found)

    def states(self, today: date) -> tuple[MeterState, ...]:
        """Return how every meter stands on a day, as entered."""
        return tuple(self._state(meter, today) for meter in self.meters.values())

    def _state(self, meter: Meter, today: date) -> MeterState:
        due = self.due_on(meter, today)
        due = today if due == date.min else due
        late = 0 if due is None else (today - due).days
        return MeterState(meter=meter, last_on=self.last_on(meter, today), due_on=due, days_late=late)


def meter_book(farm: Farm) -> MeterBook:
    """Return the meters of a farm with their calibrations, as the log has them."""
    found: dict[Id, list[date]] = {}
    for entry in standing(farm.log_entries) if farm.meters else ():
        if entry.what is Happening.CALIBRATED:
            found.setdefault(entry.meter, []).append(entry.on)
    calibrated = {meter: tuple(sorted(days)) for meter, days in found.items()}
    return MeterBook(meters=by_id(farm.meters), calibrated=calibrated)


def trend_readings(farm: Farm, *, loop: Id, until_on: date) -> tuple[Reading, ...]:
    """Return the readings of a loop that trends may be drawn through: of each quantity those of one trend."""
    book = meter_book(farm)
    of: dict[Quantity, list[Reading]] = {}
    for reading in farm.readings:
        if reading.loop == loop and reading.on <= until_on:
            of.setdefault(reading.quantity, []).append(reading)
    return tuple(
        reading for found in of.values() for reading in book.in_one_trend(sorted(found, key=_moment))
    )


def _moment(reading: Reading) -> tuple[date, str]:
    return reading.on, reading.at
