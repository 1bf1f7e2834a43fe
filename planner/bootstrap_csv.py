"""Wires tables that are brought in: file to rows, rows to one act; for window and command alike."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from functools import cached_property
from pathlib import Path

from planner.actions.changing import addition
from planner.actions.water import add_readings
from planner.bootstrap import Means
from planner.desk.csv_in.values import BATCHES, READINGS, TableLook, TableWish
from planner.farm.codes import codes_of
from planner.farm.crops import Batch, Placement
from planner.farm.farm import Farm, replace_things
from planner.farm.ids import ManyIds
from planner.farm.water import Quantity
from planner.forecast.engine import Forecaster
from planner.paper.sentences import refusal_sentence
from planner.planning.many import Rules, place_many
from planner.store.csv_in.batches import FIELDS, BatchWish, ReadBatches, batch_steps, guessed_fields
from planner.store.csv_in.cells import DayOrder, Decimal
from planner.store.csv_in.readings import (
    QUANTITY_WORDS,
    ROLES,
    MappingError,
    ReadingWish,
    ReadReadings,
    RowFault,
    guessed_roles,
    parted_heading,
    reading_steps,
)
from planner.store.csv_in.sheet import Sheet, last_of, read_sheet
from planner.store.csv_in.units import Unit, unit_named, unit_table


class TableIn:
    """One table and the farm it is brought into."""

    def __init__(self, means: Means, farm_of: Callable[[], Farm], sheet: Sheet) -> None:
        """Keep what is needed; the farm is asked for at every look, for it may change meanwhile."""
        self._means, self._farm_of, self._sheet = means, farm_of, sheet

    @classmethod
    def read(cls, means: Means, farm_of: Callable[[], Farm], path: Path) -> TableIn:
        """Return the table in a file; raises `SheetError` for none, `OSError` for none to read."""
        return cls(means, farm_of, read_sheet(path.read_bytes()))

    @property
    def headings(self) -> tuple[str, ...]:
        """The headings of its columns."""
        return self._sheet.headings

    @property
    def rows(self) -> int:
        """How many rows it has."""
        return len(self._sheet.rows)

    @property
    def loops(self) -> tuple[str, ...]:
        """Loops that readings may be of."""
        return tuple(loop.name for loop in self._farm_of().loops)

    @cached_property
    def _units(self) -> Mapping[Quantity, tuple[Unit, ...]]:
        catalogue = self._means.catalogue
        return unit_table(lambda path: catalogue.figure(path).value)

    def choices(self, what: str) -> tuple[str, ...]:
        """Return what a column may be."""
        return ROLES if what == READINGS else FIELDS

    def guessed(self, what: str) -> Mapping[str, str]:
        """Return heading -> what it is, for headings that speak for themselves."""
        return (guessed_roles if what == READINGS else guessed_fields)(self.headings)

    def units_of(self, role: str) -> tuple[str, ...]:
        """Return the units a column of readings may be in; empty for another one."""
        quantity = QUANTITY_WORDS.get(role)
        return () if quantity is None else tuple(unit.name for unit in self._units[quantity])

    def unit_said(self, heading: str, role: str) -> str:
        """Return the unit a heading says in brackets, nothing when it says none that is known."""
        quantity = QUANTITY_WORDS.get(role)
        word = parted_heading(heading)[1]
        found = None if quantity is None or not word else unit_named(word, self._units[quantity])
        return "" if found is None else found.name

    def look(self, wish: TableWish) -> TableLook:
        """Return what would come in."""
        return last_of(self.look_steps(wish))

    def look_steps(self, wish: TableWish) -> Iterator[int | TableLook]:
        """Yield now and then how many rows are read, and at the end what would come in."""
        try:
            yield from self._batches(wish) if wish.what == BATCHES else self._readings(wish)
        except MappingError as error:
            yield TableLook(trouble=str(error))

    def _readings(self, wish: TableWish) -> Iterator[int | TableLook]:
        farm = self._farm_of()
        loops = {loop.name: loop.id for loop in farm.loops}
        name = wish.loop or (next(iter(loops)) if len(loops) == 1 else "")
        if name not in loops:
            known = ", ".join(loops)[:300] or "none"
            raise MappingError(f"say which loop the readings are of. There are: {known}.")
        steps = reading_steps(
            self._sheet,
            ReadingWish(
                roles=wish.roles,
                units=wish.units,
                loop=loops[name],
                loops=loops,
                meter_factor=wish.meter_factor,
                decimal=Decimal(wish.decimal) if wish.decimal else None,
                day_order=DayOrder(wish.day_order) if wish.day_order else None,
            ),
            units=self._units,
            known=farm.readings,
        )
        for found in steps:
            yield found if isinstance(found, int) else _readings_look(found)

    def _batches(self, wish: TableWish) -> Iterator[int | TableLook]:
        farm = self._farm_of()
        catalogue = self._forecaster.catalogue_for(farm)
        codes = codes_of(farm)
        steps = batch_steps(
            self._sheet,
            BatchWish(
                roles=wish.roles,
                crops={
                    word.lower(): key for key, crop in catalogue.crops.items() for word in (crop.name, key)
                },
                give_code=lambda crop, on: codes.give(catalogue.crops[crop].code, on),
                decimal=Decimal(wish.decimal) if wish.decimal else None,
                day_order=DayOrder(wish.day_order) if wish.day_order else None,
            ),
            farm,
        )
        for found in steps:
            yield found if isinstance(found, int) else self._batches_look(farm, found)

    def _batches_look(self, farm: Farm, found: ReadBatches) -> TableLook:
        placements, notes = self._placed(farm, found.batches)
        title = f"Bring in {len(found.batches)} batches"
        return TableLook(
            change_set=addition(title, *found.batches, *placements),
            count=len(found.batches),
            faults=_plain(found.faults),
            notes=notes,
        )

    @cached_property
    def _forecaster(self) -> Forecaster:
        """One of its own: a table may be looked at beside the window."""
        return Forecaster(self._means.catalogue)

    def _placed(
        self, farm: Farm, batches: tuple[Batch, ...]
    ) -> tuple[tuple[Placement, ...], tuple[str, ...]]:
        """Return places for batches in the beds they name, and a sentence for each that found none."""
        after = replace_things(farm, "batch", (*farm.batches, *batches))
        forecast = self._forecaster.preview(after)
        found = place_many(batches, after, forecast, rules=Rules(keep_together=True), make_id=ManyIds())
        codes = {batch.id: batch.code for batch in batches}
        return found.placements, tuple(refusal_sentence(one, codes[one.batch]) for one in found.refusals)


def _readings_look(found: ReadReadings) -> TableLook:
    return TableLook(
        change_set=add_readings(found.readings),
        count=len(found.readings),
        faults=_plain(found.faults),
        known=found.known,
    )


def _plain(faults: tuple[RowFault, ...]) -> tuple[tuple[int, str, str, str], ...]:
    return tuple((fault.line, fault.column, fault.value, fault.reason) for fault in faults)
