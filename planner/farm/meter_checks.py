"""Checks meters, and whether what was read can be read with the meter that is named."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import Id
from planner.farm.meters import READ_BY, Meter, MeterKind
from planner.farm.water import Reading


def meter_faults(meter: Meter, where: str) -> Iterator[Fault]:
    """Yield a fault for a meter of dissolved solids that does not say how it turns them from conductivity."""
    if meter.kind is MeterKind.TDS and meter.factor is None:
        yield Fault(
            kind=FaultKind.MISSING,
            where=where,
            field="factor",
            limit="0.3 to 1 ppm per µS/cm",
            message="factor is missing: ppm of dissolved solids mean nothing without it.",
            remedy="Write what the leaflet of the meter says; it is often 0.5, 0.64 or 0.7.",
        )


def read_with_faults(readings: Iterable[Reading], meters: Mapping[Id, Meter]) -> Iterator[Fault]:
    """Yield a fault for every reading whose meter does not measure what was read."""
    for reading in readings:
        meter = meters.get(reading.meter)
        if meter is not None and reading.quantity not in READ_BY[meter.kind]:
            yield Fault(
                kind=FaultKind.NOT_SUITED,
                where="reading",
                field="meter",
                value=meter.name,
                limit=f"a meter of {reading.quantity.value}",
                message=f'meter "{meter.name}" measures {meter.kind.value}, not {reading.quantity.value}.',
                remedy="Choose another meter, or leave meter out.",
            )
