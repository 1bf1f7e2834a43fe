"""The sheets of paper that are typed in afterwards: their columns in the printed order, and what a line says.

A line becomes entries of the log, or says which box cannot be read; nothing is guessed. Pure: knows nothing
of widgets, and reads no clock.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date
from enum import Enum
from typing import Any, Final

from planner.actions.records import new_entry
from planner.desk.forms.reading import UnreadError, read_day, read_number
from planner.desk.say import tr
from planner.farm.farm import Farm
from planner.farm.fields import NO_ID, FieldKind, FieldSpec, Id
from planner.farm.log import Happening, LogEntry, Unit
from planner.farm.water import Quantity

_CLOCK: Final = re.compile(r"(\d{1,2})[:.h]?(\d{2})")
_BASE: Final = re.compile(r"^([0-9.,]+)\s*(k|ca)$", re.IGNORECASE)
_AMOUNT: Final = re.compile(r"^([0-9.,]+)\s*(kg)?$", re.IGNORECASE)
_YES: Final = frozenset({"y", "yes", "x", "1", "s", "sí", "si", "oo"})
_NO: Final = frozenset({"n", "no", "0", "-", "hindi"})
_NUMBER: Final = FieldSpec(kind=FieldKind.NUMBER, low=-50, high=10_000_000, may_be_none=True)
_DAY: Final = FieldSpec(kind=FieldKind.DAY)
_HOURS, _MINUTES = 24, 60


class Sheet(Enum):
    """A printed sheet whose lines can be typed in."""

    WATER = "water log"
    FEED = "feed sheet"
    HARVEST = "harvest record"
    TASKS = "weekly tasks"


class CellError(ValueError):
    """A box that cannot be read: which one, and why, in words."""

    def __init__(self, key: str, words: str) -> None:
        super().__init__(words)
        self.key = key


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetColumn:
    """A column: its key, its heading, the unit under it, and how many letters it should show."""

    key: str
    heading: str
    unit: str = ""
    letters: int = 6


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetHead:
    """What stands in the head of a sheet and holds for all its lines.

    `meters` says which meter read a quantity; `ions` that nitrite and nitrate were read as the ion, whose
    share of nitrogen is in `nitrogen_share`. `products` are supplements by "k", "ca" and "fe".
    """

    loop: Id = NO_ID
    group: Id = NO_ID
    who: str = ""
    noted_at: str = ""
    meters: Mapping[Quantity, Id] = field(default_factory=dict)
    ions: bool = False
    nitrogen_share: Mapping[Quantity, float] = field(default_factory=dict)
    products: Mapping[str, str] = field(default_factory=dict)
    scoop_g: float = 0.0
    today: date = date.min


@dataclass(frozen=True, slots=True, kw_only=True)
class TaskOfLine:
    """What a prefilled line is about: what to do, with which batch, and how many are planned."""

    what: Happening
    batch: Id
    many: float
    unit: Unit


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetLine:
    """One line as typed: texts by column, and the task it was prefilled with."""

    texts: Mapping[str, str]
    task: TaskOfLine | None = None

    def text(self, key: str) -> str:
        """Return what stands in a box, without blanks around it."""
        return self.texts.get(key, "").strip()


TESTS: Final = {
    "ph": Quantity.PH,
    "water_c": Quantity.WATER_C,
    "ec": Quantity.EC_MS_PER_CM,
    "tds": Quantity.TDS_MG_PER_L,
    "tan": Quantity.TAN_MG_PER_L,
    "no2": Quantity.NITRITE_N_MG_PER_L,
    "no3": Quantity.NITRATE_N_MG_PER_L,
    "kh": Quantity.ALKALINITY_MG_PER_L,
    "do": Quantity.OXYGEN_MG_PER_L,
}
"""Boxes of the water log that hold a reading, in the printed order."""
_AS_ION: Final = frozenset({Quantity.NITRITE_N_MG_PER_L, Quantity.NITRATE_N_MG_PER_L})


def columns_of(sheet: Sheet) -> tuple[SheetColumn, ...]:
    """Return the columns of a sheet in the order they are printed in."""
    day, time = _column("date", tr("Date"), letters=16), _column("time", tr("Time"), letters=5)
    note = _column("note", tr("Note"), letters=12)
    initials = _column("initials", tr("Initials"), letters=5)
    return (day, *_MIDDLE[sheet](time), note, initials)


def _column(key: str, heading: str, unit: str = "", *, letters: int = 5) -> SheetColumn:
    return SheetColumn(key=key, heading=heading, unit=unit, letters=letters)


def _water_columns(time: SheetColumn) -> Iterator[SheetColumn]:
    yield time
    yield _column("ph", tr("pH"))
    yield _column("water_c", tr("Water"), "°C")
    yield _column("ec", tr("EC"), "mS/cm")
    yield _column("tds", tr("Meter"), "ppm")
    yield _column("tan", tr("TAN"), "mg/L")
    yield _column("no2", "NO₂", "mg/L")
    yield _column("no3", "NO₃", "mg/L")
    yield _column("kh", tr("KH"), "mg/L")
    yield _column("do", tr("Oxygen"), "mg/L")
    yield _column("top_up", tr("Top-up"), "L")
    yield _column("base", tr("Base"), tr("g, K or Ca"), letters=7)
    yield _column("iron", tr("Iron"), "g")


def _feed_columns(time: SheetColumn) -> Iterator[SheetColumn]:
    yield _column("scoops", tr("Scoops"))
    yield _column("given", tr("Given"), "g")
    yield _column("left", tr("Left over"), tr("yes or no"), letters=8)
    yield _column("dead", tr("Dead"), tr("fish"))
    yield _column("water_c", tr("Water"), "°C")
    yield time


def _harvest_columns(time: SheetColumn) -> Iterator[SheetColumn]:
    yield time
    yield _column("batch", tr("Batch"), letters=14)
    yield _column("picked", tr("Picked"), tr("heads, or kg"), letters=9)
    yield _column("waste", tr("Waste"), letters=8)
    yield _column("where", tr("Goes to"), letters=10)
    yield _column("cold", tr("Cold store"), "°C", letters=8)
    yield _column("clean", tr("Hands, tools clean"), tr("yes or no"), letters=8)


def _task_columns(time: SheetColumn) -> Iterator[SheetColumn]:
    yield _column("task", tr("Task"), letters=26)
    yield _column("done", tr("Done"), tr("yes or no"), letters=8)
    yield _column("many", tr("How many"), letters=8)
    yield time


_MIDDLE: Final[dict[Sheet, Callable[[SheetColumn], Iterator[SheetColumn]]]] = {
    Sheet.WATER: _water_columns,
    Sheet.FEED: _feed_columns,
    Sheet.HARVEST: _harvest_columns,
    Sheet.TASKS: _task_columns,
}

PREFILLED: Final = {
    Sheet.WATER: ("date",),
    Sheet.FEED: ("date",),
    Sheet.HARVEST: ("date", "batch"),
    Sheet.TASKS: ("date", "task"),
}
"""Boxes that are filled in beforehand; a line with nothing else in it is passed over."""


def is_blank(sheet: Sheet, line: SheetLine) -> bool:
    """Tell whether nothing was typed into a line."""
    return not any(line.text(key) for key in line.texts if key not in PREFILLED[sheet])


def entries_of(sheet: Sheet, line: SheetLine, head: SheetHead, farm: Farm) -> tuple[LogEntry, ...]:
    """Return the entries of a line; none for a line without anything typed.

    Raises `CellError` for the first box that cannot be read.
    """
    if is_blank(sheet, line):
        return ()
    common: dict[str, Any] = {
        "on": _day(line, head),
        "at": _clock(line),
        "who": line.text("initials") or head.who,
        "notes": line.text("note"),
        "noted_at": head.noted_at,
    }
    found = tuple(_READ[sheet](line, head, farm, common))
    if not found and common["notes"]:
        return (new_entry(what=Happening.NOTE, loop=head.loop, group=head.group, **common),)
    return found


def _day(line: SheetLine, head: SheetHead) -> date:
    try:
        found = read_day(line.text("date"), field="on", spec=_DAY, today=head.today)
    except UnreadError as refused:
        raise CellError("date", refused.fault.message) from refused
    assert found is not None
    if found > head.today:
        raise CellError("date", tr("This day is still to come."))
    return found


def _clock(line: SheetLine) -> str:
    typed = line.text("time")
    if not typed:
        return ""
    found = _CLOCK.fullmatch(typed)
    if found is None or int(found[1]) >= _HOURS or int(found[2]) >= _MINUTES:
        raise CellError("time", tr("“{value}” is no time of day; write it as 07:30 or 730.", value=typed))
    return f"{int(found[1]):02d}:{found[2]}"


def _number(line: SheetLine, key: str) -> float | None:
    typed = line.text(key)
    if not typed:
        return None
    return _number_of(typed, key)


def _number_of(typed: str, key: str) -> float:
    try:
        found = read_number(typed, field="amount", spec=_NUMBER)
    except UnreadError as refused:
        raise CellError(key, tr("“{value}” is no number.", value=typed)) from refused
    assert found is not None
    return float(found)


def _yes(line: SheetLine, key: str) -> bool | None:
    typed = line.text(key).casefold()
    if not typed:
        return None
    if typed in _YES or typed in _NO:
        return typed in _YES
    raise CellError(key, tr("“{value}” is neither yes nor no; write y or n.", value=typed))


def _water(line: SheetLine, head: SheetHead, _farm: Farm, common: dict[str, Any]) -> Iterator[LogEntry]:
    for key, quantity in TESTS.items():
        value = _number(line, key)
        if value is None:
            continue
        if head.ions and quantity in _AS_ION:
            value *= head.nitrogen_share[quantity]
        meter = head.meters.get(quantity, NO_ID)
        if quantity is Quantity.TDS_MG_PER_L and meter == NO_ID:
            raise CellError(key, tr("ppm need a meter with its factor: choose one above, or add it first."))
        given = {"loop": head.loop, "quantity": quantity, "amount": value, "meter": meter}
        yield new_entry(what=Happening.MEASURED, **given, **common)
    litres = _number(line, "top_up")
    if litres is not None:
        given = {"loop": head.loop, "amount": litres, "unit": Unit.LITRES}
        yield new_entry(what=Happening.TOPPED_UP, **given, **common)
    yield from _doses(line, head, common)


def _doses(line: SheetLine, head: SheetHead, common: dict[str, Any]) -> Iterator[LogEntry]:
    base = line.text("base")
    if base:
        found = _BASE.match(base)
        if found is None:
            raise CellError("base", tr("Write grams and K or Ca, such as 40K or 35 Ca."))
        yield _dose("base", _number_of(found[1], "base"), found[2].casefold(), head, common)
    iron = _number(line, "iron")
    if iron is not None:
        yield _dose("iron", iron, "fe", head, common)


def _dose(key: str, grams: float, which: str, head: SheetHead, common: dict[str, Any]) -> LogEntry:
    product = head.products.get(which, "")
    if not product:
        raise CellError(key, tr("Choose above which product was given."))
    given = {"loop": head.loop, "supplement": product, "amount": grams, "unit": Unit.G}
    return new_entry(what=Happening.DOSED, **given, **common)


def _feed(line: SheetLine, head: SheetHead, farm: Farm, common: dict[str, Any]) -> Iterator[LogEntry]:
    grams, scoops = _number(line, "given"), _number(line, "scoops")
    if grams is None and scoops is not None:
        if head.scoop_g <= 0:
            raise CellError("scoops", tr("Say above what a level scoop holds, or write the grams."))
        grams = scoops * head.scoop_g
    if grams is not None:
        given = {"group": head.group, "amount": grams, "unit": Unit.G}
        yield new_entry(what=Happening.FEED_GIVEN, **given, **common)
    if _yes(line, "left"):
        yield new_entry(what=Happening.LEFT_OVER, group=head.group, **common)
    dead = _number(line, "dead")
    if dead:
        given = {"group": head.group, "amount": dead, "unit": Unit.FISH}
        yield new_entry(what=Happening.DEATHS, **given, **common)
    warmth = _number(line, "water_c")
    if warmth is not None:
        given = {"loop": _loop_of(farm, head.group), "quantity": Quantity.WATER_C, "amount": warmth}
        yield new_entry(what=Happening.MEASURED, **given, **common)


def _loop_of(farm: Farm, group: Id) -> Id:
    tank = next((each.tank for each in farm.fish_groups if each.id == group), NO_ID)
    return next((each.loop for each in farm.tanks if each.id == tank), NO_ID)


def _harvest(line: SheetLine, _head: SheetHead, farm: Farm, common: dict[str, Any]) -> Iterator[LogEntry]:
    code = line.text("batch")
    batch = next((each for each in farm.batches if each.code.casefold() == code.casefold()), None)
    if batch is None:
        raise CellError("batch", tr("There is no batch “{code}”.", code=code))
    typed = line.text("picked")
    found = _AMOUNT.match(typed)
    if found is None:
        raise CellError("picked", tr("Write heads, or kilograms with kg, such as 23 or 1.2 kg."))
    clean = _yes(line, "clean")
    told = (
        common["notes"],
        tr("waste {many}", many=line.text("waste")) if line.text("waste") else "",
        tr("goes to {place}", place=line.text("where")) if line.text("where") else "",
        tr("cold store {warmth} °C", warmth=line.text("cold")) if line.text("cold") else "",
        "" if clean is None else (tr("hands and tools clean") if clean else tr("hands or tools NOT clean")),
    )
    common = {**common, "notes": "; ".join(part for part in told if part)}
    unit = Unit.KG if found[2] else Unit.HEADS
    given = {"batch": batch.id, "amount": _number_of(found[1], "picked"), "unit": unit}
    yield new_entry(what=Happening.PICKED, **given, **common)


def _tasks(line: SheetLine, _head: SheetHead, _farm: Farm, common: dict[str, Any]) -> Iterator[LogEntry]:
    done, many, task = _yes(line, "done"), _number(line, "many"), line.task
    if task is None:
        raise CellError("task", tr("This line has no task; log it in the line above instead."))
    if done is False and many is None:
        yield new_entry(what=Happening.NOT_DONE, batch=task.batch, **common)
    elif done or many is not None:
        given = {"batch": task.batch, "amount": task.many if many is None else many, "unit": task.unit}
        yield new_entry(what=task.what, **given, **common)


_READ: Final[dict[Sheet, Callable[..., Iterator[LogEntry]]]] = {
    Sheet.WATER: _water,
    Sheet.FEED: _feed,
    Sheet.HARVEST: _harvest,
    Sheet.TASKS: _tasks,
}
