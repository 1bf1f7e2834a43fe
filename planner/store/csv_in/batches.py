"""Batches out of a table: one row a sowing, names looked up in farm and catalogue, every fault told."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any, Final

from planner.farm.checks import thing_faults
from planner.farm.crops import Batch
from planner.farm.farm import Farm
from planner.farm.fields import FieldKind, FieldSpec, Id, specs_of
from planner.farm.ids import ManyIds
from planner.store.csv_in.cells import (
    CellError,
    DayOrder,
    Decimal,
    day_of,
    day_order_of,
    decimal_of,
    number_of,
    whole_of,
)
from planner.store.csv_in.cells import shown as quoted
from planner.store.csv_in.readings import IGNORE, MappingError, RowFault, parted_heading
from planner.store.csv_in.sheet import ROWS_A_STEP, Sheet, SheetRow, last_of

CodeGiver = Callable[[str, date], str]
"""Returns a free batch code for a crop's key and a day of sowing."""

FIELDS: Final = tuple(name for name in specs_of(Batch) if name != "id")
"""What a column may be said to be."""

_GUESSES: Final = {
    "code": ("batch", "batch code", "id"),
    "crop": ("plant", "species"),
    "sow_on": ("sow on", "sow", "sown", "sown on", "sowing date", "date", "sow date"),
    "plants": ("number", "count", "plants wanted", "heads"),
    "bed": ("place", "raft bed"),
    "seed_lot": ("lot", "seed lot"),
    "variety": ("cultivar",),
    "notes": ("note", "remark", "remarks", "comment", "comments"),
}
_YES: Final = frozenset({"true", "yes", "1", "x"})
_NO: Final = frozenset({"false", "no", "0", ""})


@dataclass(frozen=True, slots=True, kw_only=True)
class BatchWish:
    """How a table is to be read: heading -> field, and what is looked up."""

    roles: Mapping[str, str]
    crops: Mapping[str, str]
    """Key or name of a crop, in small letters -> its key."""

    give_code: CodeGiver
    decimal: Decimal | None = None
    day_order: DayOrder | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadBatches:
    """What was found: batches, and faults of rows."""

    batches: tuple[Batch, ...]
    faults: tuple[RowFault, ...]


def guessed_fields(headings: Sequence[str]) -> dict[str, str]:
    """Return heading -> field for the headings that speak for themselves."""
    word_of = {name: name for name in FIELDS}
    word_of |= {name.replace("_", " "): name for name in FIELDS}
    word_of |= {guess: name for name, guesses in _GUESSES.items() for guess in guesses}
    found: dict[str, str] = {}
    for heading in headings:
        field = word_of.get(parted_heading(heading)[0].lower(), "")
        if field and field not in found.values():
            found[heading] = field
    return found


def read_batches(sheet: Sheet, wish: BatchWish, farm: Farm) -> ReadBatches:
    """Return the batches of a table and what is wrong with its rows; raises as `batch_steps` does."""
    return last_of(batch_steps(sheet, wish, farm))


def batch_steps(sheet: Sheet, wish: BatchWish, farm: Farm) -> Iterator[int | ReadBatches]:
    """Yield now and then how many rows are read, and at the end the batches and what is wrong.

    Raises `MappingError` for a mapping that cannot be used at all.
    """
    reader = _Reader(sheet, wish, farm)
    made: list[Batch] = []
    faults: list[RowFault] = []
    for at, row in enumerate(sheet.rows):
        if at % ROWS_A_STEP == 0:
            yield at
        batch, wrong = reader.read(row)
        if row.line in sheet.too_wide:
            wrong.append(
                RowFault(line=row.line, column="", value="", reason="there are more cells than headings.")
            )
        faults += wrong
        if batch is not None and not wrong:
            made.append(batch)
    yield ReadBatches(batches=tuple(made), faults=tuple(faults))


class _Reader:
    """Reads the rows of one table by one mapping."""

    def __init__(self, sheet: Sheet, wish: BatchWish, farm: Farm) -> None:
        self._wish, self._ids = wish, ManyIds()
        place = {heading: number for number, heading in enumerate(sheet.headings)}
        self._at = _places(wish.roles, place)
        self._heading = {field: heading for heading, field in wish.roles.items() if field != IGNORE}
        self._beds = {bed.name: bed.id for bed in farm.beds}
        self._lots = {lot.code: lot.id for lot in farm.seed_lots}
        self._codes = {batch.code for batch in farm.batches}
        numbers = [
            row.cells[at] for row in sheet.rows for field, at in self._at.items() if _is_measured(field)
        ]
        self._decimal = wish.decimal or decimal_of(numbers)
        days = [row.cells[self._at["sow_on"]] for row in sheet.rows]
        self._order = wish.day_order or day_order_of(days)

    def read(self, row: SheetRow) -> tuple[Batch | None, list[RowFault]]:
        """Return the batch of a row, and what is wrong with it."""
        values: dict[str, Any] = {}
        wrong: list[RowFault] = []
        for field, at in self._at.items():
            text = row.cells[at]
            try:
                values |= self._value(field, text)
            except CellError as error:
                wrong.append(self._fault(row, field, text, str(error)))
        if wrong:
            return None, wrong
        if "code" not in values:
            values["code"] = self._wish.give_code(values["crop"], values["sow_on"])
        batch = Batch(id=self._ids(), **values)
        wrong = [self._fault(row, fault.field, fault.value, fault.message) for fault in thing_faults(batch)]
        if batch.code in self._codes:
            wrong.append(self._fault(row, "code", batch.code, f"{quoted(batch.code)} is there already."))
        self._codes.add(batch.code)
        return batch, wrong

    def _fault(self, row: SheetRow, field: str, value: str, reason: str) -> RowFault:
        return RowFault(line=row.line, column=self._heading.get(field, field), value=value, reason=reason)

    def _value(self, field: str, text: str) -> dict[str, Any]:
        """Return the field with its value; nothing for an empty cell of a field that may be left open."""
        spec = specs_of(Batch)[field]
        if not text:
            if spec.needed and field != "code":
                raise CellError(f"{field} is missing.")
            return {}
        return {field: self._read(field, text, spec)}

    def _read(self, field: str, text: str, spec: FieldSpec) -> Any:
        if spec.kind is FieldKind.KEY:
            return _looked_up(text.lower(), text, self._wish.crops, "crop")
        if spec.kind is FieldKind.REFERENCE:
            known: Mapping[str, Id] = self._beds if field == "bed" else self._lots
            return _looked_up(text, text, known, spec.refers_to)
        if spec.kind is FieldKind.DAY:
            return day_of(text, self._order)
        if spec.kind is FieldKind.YES_NO:
            return _yes_no(text)
        if _is_measured(field):
            read = whole_of if spec.kind is FieldKind.WHOLE else number_of
            return read(text, self._decimal)
        return text


def _looked_up(word: str, text: str, known: Mapping[str, Any], kind: str) -> Any:
    if word not in known:
        raise CellError(f"no {kind} is called {quoted(text)}.")
    return known[word]


def _yes_no(text: str) -> bool:
    word = text.lower()
    if word not in _YES | _NO:
        raise CellError(f"{quoted(text)} is neither yes nor no.")
    return word in _YES


def _is_measured(field: str) -> bool:
    return specs_of(Batch)[field].kind in (FieldKind.NUMBER, FieldKind.WHOLE)


def _places(roles: Mapping[str, str], place: Mapping[str, int]) -> dict[str, int]:
    """Return field -> column; raises `MappingError` for what is unknown, said twice or missing."""
    found: dict[str, int] = {}
    for heading, field in roles.items():
        if heading not in place:
            raise MappingError(f"there is no column {quoted(heading)}. There are: {', '.join(place)[:300]}.")
        if field == IGNORE:
            continue
        if field not in FIELDS:
            raise MappingError(
                f"{quoted(heading)} cannot be {quoted(field)}. It can be: {', '.join(FIELDS)}."
            )
        if field in found:
            raise MappingError(f"two columns are said to be {field}.")
        found[field] = place[heading]
    for field in ("crop", "sow_on", "plants"):
        if field not in found:
            raise MappingError(f"no column is {field}. Say which one is, such as Crop=crop.")
    return found
