"""Readings out of a table: which column is what, in which unit, and every row that cannot be taken.

A column is never taken on trust: its unit must be known, and a meter's ppm needs the meter's factor.
"""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Final

from planner.farm.checks import thing_faults
from planner.farm.fields import Id
from planner.farm.ids import ManyIds
from planner.farm.water import READING_LIMITS, Quantity, Reading
from planner.store.csv_in.cells import (
    CellError,
    DayOrder,
    Decimal,
    day_of,
    day_order_of,
    decimal_of,
    number_of,
)
from planner.store.csv_in.cells import shown as quoted
from planner.store.csv_in.sheet import ROWS_A_STEP, Sheet, SheetRow, last_of
from planner.store.csv_in.units import Unit, unit_named

DATE: Final = "date"
NOTES: Final = "notes"
LOOP: Final = "loop"
QUANTITY: Final = "quantity"
VALUE: Final = "value"
FACTOR: Final = "meter factor"
IGNORE: Final = "ignore"

QUANTITY_WORDS: Final = {
    "ph": Quantity.PH,
    "water_c": Quantity.WATER_C,
    "air_c": Quantity.AIR_C,
    "ec": Quantity.EC_MS_PER_CM,
    "tds": Quantity.TDS_MG_PER_L,
    "tan": Quantity.TAN_MG_PER_L,
    "nitrite": Quantity.NITRITE_N_MG_PER_L,
    "nitrate": Quantity.NITRATE_N_MG_PER_L,
    "alkalinity": Quantity.ALKALINITY_MG_PER_L,
    "oxygen": Quantity.OXYGEN_MG_PER_L,
    "p": Quantity.P_MG_PER_L,
    "k": Quantity.K_MG_PER_L,
    "ca": Quantity.CA_MG_PER_L,
    "mg": Quantity.MG_MG_PER_L,
    "fe": Quantity.FE_MG_PER_L,
    "top_up": Quantity.TOP_UP_L,
}
"""What a column may be said to be, in words of a mapping."""

ROLES: Final = (DATE, LOOP, QUANTITY, VALUE, FACTOR, NOTES, IGNORE, *QUANTITY_WORDS)
_GUESSES: Final = {
    DATE: ("date", "day", "on", "datetime", "timestamp", "time stamp", "date/time", "fecha", "petsa"),
    NOTES: ("notes", "note", "remark", "remarks", "comment", "comments", "notas", "tala"),
    LOOP: ("loop", "system"),
    QUANTITY: ("quantity", "parameter"),
    VALUE: ("value",),
    FACTOR: ("meter_factor", "meter factor"),
    "ph": ("ph",),
    "water_c": (
        "temp",
        "temperature",
        "water temp",
        "water temperature",
        "water_c",
        "water",
        "temperatura",
        "agua",
        "tubig",
    ),
    "air_c": ("air", "aire", "air temp", "air temperature", "air_c"),
    "ec": ("ec", "conductivity", "conductividad"),
    "tds": ("tds",),
    "tan": ("tan", "ammonia", "amonio", "amoníaco", "nh3", "nh4", "ammonium"),
    "nitrite": ("nitrite", "nitrito", "no2"),
    "nitrate": ("nitrate", "nitrato", "no3"),
    "alkalinity": ("alkalinity", "alcalinidad", "kh", "alk"),
    "oxygen": ("do", "oxygen", "dissolved oxygen", "oxígeno", "o2"),
    "p": ("p", "phosphorus"),
    "k": ("k", "potassium"),
    "ca": ("ca", "calcium"),
    "mg": ("mg", "magnesium"),
    "fe": ("fe", "iron"),
    "top_up": ("top-up", "top up", "topup", "top_up"),
}
_DIGITS: Final = 6
_HEADING: Final = re.compile(r"(.*?)\s*[\(\[]([^\)\]]*)[\)\]]\s*")


@dataclass(frozen=True, slots=True, kw_only=True)
class RowFault:
    """What is wrong with one row: its line in the file, the column, what stands there, and why not."""

    line: int
    column: str
    value: str
    reason: str

    def sentence(self) -> str:
        """Return the fault in one line."""
        where = f"line {self.line}" + (f", {self.column}" if self.column else "")
        return f"{where}: {self.reason}"


class MappingError(ValueError):
    """A mapping that cannot be used; the text says which column and what is allowed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingWish:
    """How a table is to be read: heading -> role, heading -> unit, and what the table leaves open."""

    roles: Mapping[str, str]
    units: Mapping[str, str] = field(default_factory=dict)
    loop: Id
    loops: Mapping[str, Id]
    meter_factor: float | None = None
    decimal: Decimal | None = None
    day_order: DayOrder | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadReadings:
    """What was found: readings that are new, faults of rows, and how many readings the farm has already."""

    readings: tuple[Reading, ...]
    faults: tuple[RowFault, ...]
    known: int


def guessed_roles(headings: Sequence[str]) -> dict[str, str]:
    """Return heading -> role for the headings that speak for themselves."""
    word_of = {guess: role for role, guesses in _GUESSES.items() for guess in guesses}
    found: dict[str, str] = {}
    for heading in headings:
        name, _ = parted_heading(heading)
        role = word_of.get(name.lower(), "")
        if role and role not in found.values():
            found[heading] = role
    return found


def parted_heading(heading: str) -> tuple[str, str]:
    """Return name and unit of a heading.

    >>> parted_heading("Temp (°F)"), parted_heading("pH")
    (('Temp', '°F'), ('pH', ''))
    """
    found = _HEADING.fullmatch(heading)
    return (found[1].strip(), found[2].strip()) if found else (heading.strip(), "")


def read_readings(
    sheet: Sheet,
    wish: ReadingWish,
    *,
    units: Mapping[Quantity, tuple[Unit, ...]],
    known: Sequence[Reading] = (),
) -> ReadReadings:
    """Return the readings of a table and what is wrong with its rows; raises as `reading_steps` does."""
    return last_of(reading_steps(sheet, wish, units=units, known=known))


def reading_steps(
    sheet: Sheet,
    wish: ReadingWish,
    *,
    units: Mapping[Quantity, tuple[Unit, ...]],
    known: Sequence[Reading] = (),
) -> Iterator[int | ReadReadings]:
    """Yield now and then how many rows are read, and at the end the readings and what is wrong.

    Raises `MappingError` for a mapping that cannot be used at all: no date, an unknown unit, no meter factor.
    """
    reader = _Reader(sheet, wish, units)
    faults = [
        RowFault(line=line, column="", value="", reason="there are more cells than headings.")
        for line in sheet.too_wide
    ]
    there = {_what(reading) for reading in known}
    new: list[Reading] = []
    doubles = 0
    for at, row in enumerate(sheet.rows):
        if at % ROWS_A_STEP == 0:
            yield at
        made, wrong = reader.read(row)
        faults += wrong
        if wrong or row.line in sheet.too_wide:
            continue
        for reading in made:
            doubles += _what(reading) in there
            if _what(reading) not in there:
                there.add(_what(reading))
                new.append(reading)
    yield ReadReadings(readings=tuple(new), faults=tuple(sorted(faults, key=_line)), known=doubles)


def _line(fault: RowFault) -> int:
    return fault.line


def _what(reading: Reading) -> tuple[object, ...]:
    return reading.loop, reading.on, reading.quantity, reading.value


class _Reader:
    """Reads the rows of one table by one mapping."""

    def __init__(self, sheet: Sheet, wish: ReadingWish, units: Mapping[Quantity, tuple[Unit, ...]]) -> None:
        self._wish, self._units, self._ids = wish, units, ManyIds()
        self._place = {heading: number for number, heading in enumerate(sheet.headings)}
        self._heading_of = _heading_of(wish.roles, self._place)
        if DATE not in self._heading_of:
            raise MappingError(
                "no column is the date. Say which one is: beside its heading, or as --map Day=date."
            )
        self._columns = {
            heading: self._unit(heading, QUANTITY_WORDS[role])
            for role, heading in self._heading_of.items()
            if role in QUANTITY_WORDS
        }
        self._long = QUANTITY in self._heading_of and VALUE in self._heading_of
        if not self._columns and not self._long:
            raise MappingError(f"no column is a reading. Columns may be: {', '.join(QUANTITY_WORDS)}.")
        valued = [*self._columns, *((self._heading_of[VALUE],) if self._long else ())]
        cells = [row.cells[self._place[heading]] for row in sheet.rows for heading in valued]
        days = [row.cells[self._place[self._heading_of[DATE]]] for row in sheet.rows]
        self._decimal = wish.decimal or decimal_of(cells) or _by_separator(sheet, cells)
        self._order = wish.day_order or day_order_of(days)

    def _unit(self, heading: str, quantity: Quantity) -> tuple[Quantity, Unit]:
        known = self._units[quantity]
        word = self._wish.units.get(heading) or parted_heading(heading)[1]
        unit = unit_named(word, known) if word else self._kept_unit(heading, quantity)
        if unit is None:
            allowed = ", ".join(each.name for each in known)
            raise MappingError(f"{quoted(heading)} is in {quoted(word)}, but must be in one of: {allowed}.")
        if unit.needs_factor and self._wish.meter_factor is None and FACTOR not in self._heading_of:
            raise MappingError(
                f"{quoted(heading)} is in ppm, which means nothing without the meter's factor (0.3 to 1 ppm "
                "per µS/cm). It is in the meter's manual."
            )
        return quantity, unit

    def _kept_unit(self, heading: str, quantity: Quantity) -> Unit:
        known = self._units[quantity]
        if len(known) > 1:
            allowed = ", ".join(each.name for each in known)
            raise MappingError(f"{quoted(heading)} has no unit. Say which one: {allowed}.")
        return known[0]

    def read(self, row: SheetRow) -> tuple[list[Reading], list[RowFault]]:
        """Return the readings of a row, and what is wrong with it."""
        made: list[Reading] = []
        wrong: list[RowFault] = []
        base = self._base(row, wrong)
        for heading, text, quantity, unit in self._values(row, wrong):
            try:
                read = (number_of(text, self._decimal) - unit.zero) * unit.scale
                value = _within_limits(quantity, read)
            except CellError as error:
                wrong.append(RowFault(line=row.line, column=heading, value=text, reason=str(error)))
                continue
            if base is not None:
                factor = base.meter_factor if unit.needs_factor else None
                made.append(
                    dataclasses.replace(
                        base, id=self._ids(), quantity=quantity, value=value, meter_factor=factor
                    )
                )
        wrong += [
            RowFault(line=row.line, column=fault.field, value=fault.value, reason=fault.message)
            for reading in made
            for fault in thing_faults(reading)
        ]
        return made, wrong

    def _base(self, row: SheetRow, wrong: list[RowFault]) -> Reading | None:
        """Return what all readings of a row share; None, with faults told, when it is not known."""
        before = len(wrong)
        on = self._told(row, DATE, wrong, self._day)
        loop = self._told(row, LOOP, wrong, self._loop) if self._cell(row, LOOP) else self._wish.loop
        factor: object = self._wish.meter_factor
        if self._cell(row, FACTOR):
            factor = self._told(row, FACTOR, wrong, self._number)
        if len(wrong) > before or not isinstance(on, date):
            return None
        return Reading(
            id=Id(""),
            loop=Id(str(loop)),
            on=on,
            quantity=Quantity.PH,
            value=0.0,
            meter_factor=factor if isinstance(factor, float) else None,
            notes=self._cell(row, NOTES),
        )

    def _told(self, row: SheetRow, role: str, wrong: list[RowFault], read: Callable[[str], object]) -> object:
        text = self._cell(row, role)
        try:
            return read(_given(text, role))
        except CellError as error:
            wrong.append(
                RowFault(line=row.line, column=self._heading_of[role], value=text, reason=str(error))
            )
            return None

    def _day(self, text: str) -> date:
        return day_of(text, self._order)

    def _number(self, text: str) -> float:
        return number_of(text, self._decimal)

    def _loop(self, text: str) -> Id:
        if text not in self._wish.loops:
            raise CellError(
                f"no loop is called {quoted(text)}. There are: {', '.join(self._wish.loops)[:200]}."
            )
        return self._wish.loops[text]

    def _values(self, row: SheetRow, wrong: list[RowFault]) -> Iterator[tuple[str, str, Quantity, Unit]]:
        for heading, (quantity, unit) in self._columns.items():
            text = row.cells[self._place[heading]]
            if text:
                yield heading, text, quantity, unit
        if not self._long:
            return
        word, heading = self._cell(row, QUANTITY), self._heading_of[VALUE]
        found = next((each for each in Quantity if each.value.lower() == word.lower()), None)
        found = found or QUANTITY_WORDS.get(word.lower())
        if found is None:
            reason = (
                f"{quoted(word)} is no quantity. There are: {', '.join(each.value for each in Quantity)}."
            )
            wrong.append(
                RowFault(line=row.line, column=self._heading_of[QUANTITY], value=word, reason=reason)
            )
            return
        yield heading, self._cell(row, VALUE), found, self._units[found][0]

    def _cell(self, row: SheetRow, role: str) -> str:
        heading = self._heading_of.get(role)
        return "" if heading is None else row.cells[self._place[heading]]


def _heading_of(roles: Mapping[str, str], place: Mapping[str, int]) -> dict[str, str]:
    """Return role -> heading; raises `MappingError` for what is unknown or said twice."""
    found: dict[str, str] = {}
    for heading, role in roles.items():
        if heading not in place:
            raise MappingError(f"there is no column {quoted(heading)}. There are: {', '.join(place)[:300]}.")
        if role not in ROLES:
            raise MappingError(f"{quoted(heading)} cannot be {quoted(role)}. It can be: {', '.join(ROLES)}.")
        if role == IGNORE:
            continue
        if role in found:
            raise MappingError(f"both {quoted(found[role])} and {quoted(heading)} are said to be {role}.")
        found[role] = heading
    return found


def _by_separator(sheet: Sheet, cells: Sequence[str]) -> Decimal | None:
    """Return what the separator tells: in a table parted by commas, a point stands before a fraction."""
    told = sheet.separator == "," and not any("," in cell for cell in cells)
    return Decimal.POINT if told else None


def _within_limits(quantity: Quantity, value: float) -> float:
    """Return a value; raises `CellError` when no water has it."""
    low, high = READING_LIMITS[quantity]
    if not low <= value <= high:
        raise CellError(f"{quantity.value} is {value:g}, but must lie within {low:g} to {high:g}.")
    return round(value, _DIGITS)


def _given(text: str, role: str) -> str:
    if not text:
        raise CellError(f"{role} is missing.")
    return text
