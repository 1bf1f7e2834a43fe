"""One step back and one step forward from a batch or a seed lot: lot, places, harvest, and the water it had.

What is foreseen and not yet noted is called expected. Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any, Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import Batch, Phase, SeedLot
from planner.farm.farm import Farm, by_id
from planner.farm.fields import NO_ID, Id
from planner.farm.log import Happening, LogEntry, standing
from planner.farm.mark import plan_mark
from planner.farm.water import Quantity, Reading
from planner.forecast.values import Forecast
from planner.paper.documents.quantities import QUANTITY_NAMES, unit_of
from planner.paper.places import PlaceBook
from planner.paper.plain_names import one_line
from planner.paper.report import (
    Align,
    Caution,
    Cell,
    Column,
    Line,
    Paragraph,
    Report,
    RowGroup,
    Section,
    Size,
    Table,
)
from planner.paper.words import count_words, day_words

FORMAT: Final = "raftweek.trace/1"
TITLE: Final = "Trace"
_SIZE: Final = Size(best_pt=11.0, least_pt=11.0)
_CAUTIONS: Final = ("produce-records", "water-on-leaves")
_PHASES: Final = {Phase.NURSERY: "nursery", Phase.SPACING: "spaced out", Phase.BED: "bed"}


class NothingTracedError(LookupError):
    """No batch and no seed lot has the code that was asked for; `codes` are those there are."""

    def __init__(self, code: str, codes: tuple[str, ...]) -> None:
        """Keep what was asked for and what there is."""
        super().__init__(code)
        self.code, self.codes = code, codes


@dataclass(frozen=True, slots=True, kw_only=True)
class Stand:
    """Where a batch stands, or is to stand, in one phase: from a day up to the day before another."""

    phase: Phase
    from_on: date
    behind_on: date
    where: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class WaterLine:
    """What was read of one quantity while the batch stood in the water."""

    quantity: Quantity
    readings: tuple[Reading, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class BatchTrace:
    """One batch: its lot, its places, its harvest, the water of its loop while it stood in it."""

    batch: Batch
    crop: str
    lot: SeedLot | None
    lot_tests: tuple[LogEntry, ...]
    seeds: int
    stands: tuple[Stand, ...]
    harvest: tuple[date, date]
    loop: str
    water: tuple[WaterLine, ...]
    liquor: tuple[tuple[date, str], ...]
    """Days on which the liquor of a solids batch went back into its water, and the batch's code."""
    noted: tuple[LogEntry, ...]
    """What the log says of the batch, as it stands, by date."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Trace:
    """All batches that a code leads to: the one it names, or all that were sown of a lot."""

    code: str
    is_lot: bool
    batches: tuple[BatchTrace, ...]


def trace_of(farm: Farm, forecast: Forecast, code: str) -> Trace:
    """Return the trace of a batch or lot by its code; capitals do not matter.

    Raises `NothingTracedError` when there is none.
    """
    wanted = code.strip().casefold()
    rows = [row for row, batch in enumerate(farm.batches) if batch.code.casefold() == wanted]
    lots = {lot.id for lot in farm.seed_lots if lot.code.casefold() == wanted}
    is_lot = not rows and bool(lots)
    if is_lot:
        rows = [row for row, batch in enumerate(farm.batches) if batch.seed_lot in lots]
    if not rows and not lots:
        codes = (*(batch.code for batch in farm.batches), *(lot.code for lot in farm.seed_lots))
        raise NothingTracedError(code, codes)
    tracer = _Tracer(farm, forecast)
    return Trace(code=code.strip(), is_lot=is_lot, batches=tuple(tracer.of(row) for row in rows))


class _Tracer:
    """Follows the batches of one farm."""

    def __init__(self, farm: Farm, forecast: Forecast) -> None:
        self._farm, self._forecast = farm, forecast
        self._places = PlaceBook(farm)
        self._log = sorted(standing(farm.log_entries), key=_when)
        self._beds, self._loops, self._lots = by_id(farm.beds), by_id(farm.loops), by_id(farm.seed_lots)

    def of(self, row: int) -> BatchTrace:
        batch, ruler = self._farm.batches[row], self._forecast.ruler
        stands = tuple(self._stands(batch, row))
        first, behind = self._forecast.batches.pick_days(row)
        loop = self._loop_of(batch)
        in_water = (stands[-1].from_on, stands[-1].behind_on)
        profile = self._forecast.profiles[int(self._forecast.batches.profile[row])]
        return BatchTrace(
            batch=batch,
            crop=profile.crop.name,
            lot=self._lots.get(batch.seed_lot),
            lot_tests=tuple(each for each in self._log if _is_test(each, batch.seed_lot)),
            seeds=int(self._forecast.batches.seeds[row]),
            stands=stands,
            harvest=(ruler.date_of(first), ruler.date_of(behind - 1)),
            loop="" if loop == NO_ID else self._loops[loop].name,
            water=self._water(loop, in_water),
            liquor=self._liquor(loop, in_water),
            noted=tuple(each for each in self._log if each.batch == batch.id),
        )

    def _stands(self, batch: Batch, row: int) -> Iterator[Stand]:
        ruler = self._forecast.ruler
        for phase in Phase:
            first, behind = self._forecast.batches.phase_days(row, phase)
            if behind > first or phase is Phase.BED:
                yield Stand(
                    phase=phase,
                    from_on=ruler.date_of(first),
                    behind_on=ruler.date_of(behind),
                    where=self._places.where(batch, phase),
                )

    def _loop_of(self, batch: Batch) -> Id:
        held = self._places.held(batch, Phase.BED)
        bed = held[0].bed if held else batch.bed
        return self._beds[bed].loop if bed != NO_ID else NO_ID

    def _water(self, loop: Id, days: tuple[date, date]) -> tuple[WaterLine, ...]:
        found: dict[Quantity, list[Reading]] = {}
        for reading in self._farm.readings:
            if reading.loop == loop and days[0] <= reading.on < days[1]:
                found.setdefault(reading.quantity, []).append(reading)
        return tuple(
            WaterLine(quantity=quantity, readings=tuple(sorted(found[quantity], key=_on)))
            for quantity in Quantity
            if quantity in found
        )

    def _liquor(self, loop: Id, days: tuple[date, date]) -> tuple[tuple[date, str], ...]:
        return tuple(
            (solids.returned_on, solids.code)
            for solids in self._farm.solids_batches
            if solids.loop == loop and solids.returned_on and days[0] <= solids.returned_on < days[1]
        )


def _when(entry: LogEntry) -> tuple[date, str]:
    return entry.on, entry.at


def _is_test(entry: LogEntry, lot: Id) -> bool:
    return entry.what is Happening.SEED_TESTED and entry.seed_lot == lot and lot != NO_ID


def _on(reading: Reading) -> date:
    return reading.on


# --- as plain data and as lines ----------------------------------------------------------------------


def trace_data(trace: Trace) -> dict[str, Any]:
    """Return a trace as plain data."""
    return {
        "format": FORMAT,
        "code": trace.code,
        "of": "lot" if trace.is_lot else "batch",
        "batches": [_batch_data(one) for one in trace.batches],
    }


def _batch_data(one: BatchTrace) -> dict[str, Any]:
    return {
        "batch": one.batch.code,
        "crop": one.batch.crop,
        "variety": one.batch.variety,
        "lot": one.lot and one.lot.code,
        "supplier": one.lot.supplier if one.lot else "",
        "lot_tests": [
            {"on": test.on.isoformat(), "seeds": test.out_of, "came_up": test.amount}
            for test in one.lot_tests
        ],
        "noted": [
            {
                "on": each.on.isoformat(),
                "at": each.at,
                "what": each.what.value,
                "amount": each.amount,
                "unit": each.unit.value,
                "who": each.who,
            }
            for each in one.noted
        ],
        "sown_on": one.batch.sow_on.isoformat(),
        "seeds": one.seeds,
        "plants": one.batch.plants,
        "places": [
            {
                "phase": stand.phase.value,
                "from": stand.from_on.isoformat(),
                "until": stand.behind_on.isoformat(),
                "where": list(stand.where),
            }
            for stand in one.stands
        ],
        "expected_harvest": [on.isoformat() for on in one.harvest],
        "loop": one.loop,
        "readings": [
            {"on": reading.on.isoformat(), "quantity": line.quantity.value, "value": reading.value}
            for line in one.water
            for reading in line.readings
        ],
        "liquor": [{"on": on.isoformat(), "solids_batch": code} for on, code in one.liquor],
    }


def trace_lines(trace: Trace) -> Iterator[str]:
    """Yield a trace for people, a line for each thing."""
    if trace.is_lot:
        yield f"lot {one_line(trace.code)}: {count_words(len(trace.batches), 'batch', 'batches')}"
    for one in trace.batches:
        yield f"{one_line(one.batch.code)}"
        for what, text in _facts(one):
            yield f"  {what}: {one_line(text)}"
        for line in one.water:
            yield f"  {line.quantity.value}: {_water_words(line)}"


def _facts(one: BatchTrace) -> Iterator[tuple[str, str]]:
    variety = f", {one.batch.variety}" if one.batch.variety else ""
    yield "crop", f"{one.crop}{variety}"
    yield "seed lot", "; ".join(_lot_words(one.lot)) if one.lot else "not noted"
    for test in one.lot_tests:
        yield "seed tested", f"{day_words(test.on)}: {test.amount:g} of {test.out_of} came up"
    yield "sown", f"{day_words(one.batch.sow_on)}, {count_words(one.seeds, 'seed', 'seeds')}"
    for stand in one.stands:
        yield _PHASES[stand.phase], f"from {day_words(stand.from_on)}: {'; '.join(stand.where)}"
    first, last = one.harvest
    days = day_words(first) if first == last else f"{day_words(first)} to {day_words(last)}"
    yield "harvest expected", f"{days}, up to {count_words(one.batch.plants, 'plant', 'plants')}"
    for each in one.noted:
        yield "noted", _noted_words(each)
    yield "water", one.loop or "no bed chosen"
    for on, code in one.liquor:
        yield "liquor returned", f"{day_words(on)}, solids batch {code}"


def _lot_words(lot: SeedLot) -> Iterator[str]:
    yield lot.code
    if lot.supplier:
        yield f"from {lot.supplier}"
    yield from (word for word, holds in (("pelleted", lot.pelleted), ("primed", lot.primed)) if holds)
    if lot.packed_on or lot.bought_on:
        said, day = ("packed", lot.packed_on) if lot.packed_on else ("bought", lot.bought_on)
        yield f"{said} {day_words(day)}" if day else ""


def _noted_words(entry: LogEntry) -> str:
    amount = "" if entry.amount is None else f" {entry.amount:g} {entry.unit.value}".rstrip()
    who = f", {entry.who}" if entry.who else ""
    return f"{day_words(entry.on)} {entry.at}".rstrip() + f": {entry.what.value}{amount}{who}"


def _water_words(line: WaterLine) -> str:
    values = [reading.value for reading in line.readings]
    last = line.readings[-1]
    return (
        f"{count_words(len(values), 'reading', 'readings')}, {min(values):g} to {max(values):g}, "
        f"last {last.value:g} on {day_words(last.on)}"
    )


# --- as a page ---------------------------------------------------------------------------------------


def trace_report(trace: Trace, farm: Farm, catalogue: Catalogue, *, printed_on: datetime) -> Report:
    """Return the trace as a sheet: one page for a batch."""
    cautions = tuple(
        Caution(title=catalogue.cautions[key].topic, text=catalogue.cautions[key].text) for key in _CAUTIONS
    )
    return Report(
        title=TITLE,
        subtitle=one_line(f"{'lot' if trace.is_lot else 'batch'} {trace.code}"),
        header_lines=("Back to the seed, forward to the harvest. What is expected is not yet noted.",),
        sections=(*(_section(one) for one in trace.batches), Section(parts=cautions, columns=2)),
        farm_name=farm.settings.name,
        plan_mark=plan_mark(farm),
        printed_on=printed_on,
    )


def _quantity_words(quantity: Quantity) -> str:
    return f"{QUANTITY_NAMES[quantity]} {unit_of(quantity)}".strip()


def _section(one: BatchTrace) -> Section:
    water = tuple((_quantity_words(line.quantity), _water_words(line)) for line in one.water)
    facts = tuple((what, one_line(text)) for what, text in _facts(one))
    parts: list[Table | Paragraph] = [_table("Batch", (*facts, *water))]
    if not water:
        parts.append(Paragraph(text="No reading of its water was noted while it stood in the bed."))
    return Section(heading=one_line(one.batch.code), parts=tuple(parts))


def _table(name: str, rows: tuple[tuple[str, str], ...]) -> Table:
    def column(key: str, heading: str, share: float, least_mm: float) -> Column:
        return Column(
            key=key,
            heading=heading,
            share=share,
            least_mm=least_mm,
            main=_SIZE,
            detail=_SIZE,
            align=Align.LEFT,
            wrap=4,
        )

    cells = tuple(tuple(Cell(lines=(Line(text=text),)) for text in row) for row in rows)
    columns = (column("what", "What", 1.0, 35.0), column("told", "As noted or planned", 4.0, 60.0))
    return Table(name=name, columns=columns, groups=(RowGroup(rows=cells),))
