"""The hand-over booklet: what was built, the fish, the first weeks, the cautions, and whom to call.

What nobody has entered is called "not recorded", never left out. Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.farm.site import Bed, FilterKind
from planner.farm.species import BedKind
from planner.forecast.week import DueKind, DueTask, DueUnit
from planner.paper.documents.amounts import number_words, ration_words
from planner.paper.documents.ask import Ask
from planner.paper.documents.columns import BENCH_SIZE, WRITE, says, told, written
from planner.paper.documents.week_tasks import week_tasks
from planner.paper.places import PLACE_WORDS, UNIT_WORDS
from planner.paper.report import Cell, Column, Paragraph, Part, Report, RowGroup, Section, Table, Tone
from planner.paper.words import NO_BREAK, count_words, day_words, whole_words

TITLE: Final = "Hand-over booklet"
NOT_RECORDED: Final = "not recorded"
_L_PER_M2_CM: Final = 10.0
"""Litres of one centimetre of water on a square metre: what the units mean."""
_FILTER_WORDS: Final = {
    FilterKind.SETTLER: "settler",
    FilterKind.SCREEN: "screen",
    FilterKind.STATIC: "static filter",
    FilterKind.MOVING_BED: "moving-bed biofilter",
    FilterKind.TRICKLING: "trickling filter",
    FilterKind.MINERALISER: "mineraliser",
    FilterKind.DEGASSING: "degassing tank",
}
_BED_WORDS: Final = {
    BedKind.NURSERY: "nursery",
    BedKind.RAFT: "floating-raft bed",
    BedKind.MEDIA: "gravel bed",
}
_PUMP: Final = (
    ("Make and type of pump", ""),
    ("Flow at its height", "L/h"),
    ("Height it lifts", "m"),
    ("Power", "W"),
    ("Air pump, power", "W"),
    ("Battery for air", "Wh"),
    ("Safety switch, circuit", ""),
)
_CAUTIONS: Final = (
    "electricity-near-water",
    "tripped-device",
    "power-cut",
    "local-codes",
    "slips-and-drowning",
    "water-on-leaves",
    "solids-as-manure",
    "species-law",
    "fish-medicine",
    "fish-as-food",
    "fish-welfare",
    "pesticides",
    "caustic-bases",
    "acids",
    "ill-workers",
    "animals",
    "materials",
    "planning-aid",
)
_CALL: Final = (
    "Who built it",
    "Electrician",
    "Plumber",
    "Fish adviser or vet",
    "Produce-safety adviser",
    "Fisheries office",
)


def hand_over(ask: Ask) -> Report:
    """Return the booklet; the first weeks are those asked for."""
    tasks = week_tasks(replace(ask, weeks=1))
    built = Section(heading="As built", parts=(_places(ask), _water(ask), _beds(ask)))
    first = Section(heading="Week by week", parts=(_weeks(ask),), new_page=True)
    return ask.report(
        TITLE,
        (
            Section(parts=tuple(_opening(ask))),
            built,
            Section(heading="Pump, air and power", parts=(_pump(),)),
            Section(heading="Fish", parts=tuple(_fish(ask))),
            first,
            replace(tasks.sections[0], heading="The first week, day by day", new_page=True),
            *tasks.sections[1:],
            Section(heading="Take care", parts=ask.cautions(*_CAUTIONS), columns=2, new_page=True),
            Section(heading="Whom to call", parts=(_call(),), new_page=True),
            Section(heading="Handed over", parts=(_signed(),)),
        ),
        subtitle=ask.span_words,
    )


def _opening(ask: Ask) -> Iterator[Paragraph]:
    for site in ask.farm.sites:
        where = f"{site.name}, {site.place}" if site.place else site.name
        yield Paragraph(text=f"Site: {where}.", tone=Tone.STRONG)
    yield Paragraph(
        text="Fish and plants share one body of water. Fish are fed; what they give off feeds the plants "
        "by way of "
        "bacteria in filters and gravel; the plants clean the water for the fish. So three things are "
        "looked at "
        "every day: the water moves, the fish eat, the plants stand well. This booklet says what was "
        "built, what "
        "comes in the first weeks, what to take care of and whom to call. Keep it dry, near the beds."
    )


def _said(value: float | None, unit: str) -> str:
    return NOT_RECORDED if value is None else f"{number_words(value)}{NO_BREAK}{unit}"


def _table(name: str, headings: Sequence[str], rows: Sequence[Sequence[str]]) -> Table:
    columns = tuple(
        told(f"c{at}", heading, mm=46.0 if at == 0 else 26.0, share=3.0 if at == 0 else 1.0)
        for at, heading in enumerate(headings)
    )
    cells = tuple(
        tuple(says(text, tone=Tone.STRONG if at == 0 else Tone.DETAIL) for at, text in enumerate(row))
        for row in rows
    )
    return Table(
        name=name, columns=columns, groups=(RowGroup(rows=cells, empty="" if cells else NOT_RECORDED),)
    )


def _places(ask: Ask) -> Table:
    loops: dict[Id, str] = {loop.id: loop.name for loop in ask.farm.loops}
    tanks = [(tank.name, "fish tank", _said(tank.volume_l, "L"), loops[tank.loop]) for tank in ask.farm.tanks]
    filters = [
        (one.name, _FILTER_WORDS[one.kind], _said(one.volume_l, "L"), loops[one.loop])
        for one in ask.farm.filters
    ]
    return _table("Tanks and filters", ("Tank or filter", "What", "Volume", "Loop"), [*tanks, *filters])


def _water(ask: Ask) -> Table:
    rows = [
        (loop.name, _said(loop.water_l, "L"), _said(loop.top_up_l_per_day, "L a day"), _span(loop.water_c))
        for loop in ask.farm.loops
    ]
    return _table("Loops of water", ("Loop", "Water in all", "Topped up", "Water temperature"), rows)


def _span(values: Sequence[float]) -> str:
    if not values:
        return NOT_RECORDED
    return f"{number_words(min(values))} to {number_words(max(values))}{NO_BREAK}°C"


def _beds(ask: Ask) -> Table:
    rows = [
        (
            bed.name,
            _BED_WORDS[bed.kind],
            _holes(bed),
            f"{number_words(bed.area_m2)}{NO_BREAK}m²",
            _said(bed.depth_cm, "cm"),
            _load(bed),
        )
        for bed in ask.farm.beds
    ]
    return _table("Beds", ("Bed", "What", "Holes", "Area", "Depth", "Water it can hold"), rows)


def _holes(bed: Bed) -> str:
    units, places = UNIT_WORDS[bed.kind], PLACE_WORDS[bed.kind]
    return f"{count_words(bed.units, *units)} of {count_words(bed.places_per_unit, *places)}"


def _load(bed: Bed) -> str:
    """Return the litres of a raft bed filled to its depth, which weigh as many kilograms."""
    if bed.kind is not BedKind.RAFT:
        return "–"
    if bed.depth_cm is None:
        return NOT_RECORDED
    litres = bed.area_m2 * bed.depth_cm * _L_PER_M2_CM
    return f"{number_words(litres)}{NO_BREAK}L, as many kg"


def _pump() -> Table:
    columns = (
        told("what", "What", mm=60.0, share=1.0),
        told("entered", "In the plan", mm=34.0, share=0.5),
        written("found", "Write in at hand-over", mm=60.0, share=1.5),
        told("unit", "Unit", mm=16.0, share=0.1),
    )
    rows = tuple(
        (says(what, tone=Tone.STRONG), says(NOT_RECORDED), WRITE, says(unit)) for what, unit in _PUMP
    )
    return Table(name="Pump, air and power", columns=columns, groups=(RowGroup(rows=rows),))


def _fish(ask: Ask) -> Iterator[Part]:
    tanks = {tank.id: tank.name for tank in ask.farm.tanks}
    rows = [
        (
            group.name,
            f"{ask.catalogue.fish[group.species].name}, {tanks[group.tank]}",
            f"{count_words(group.count, 'fish', 'fish')} of {number_words(group.mean_weight_g)}{NO_BREAK}g",
            day_words(group.stocked_on),
            ask.catalogue.feeds[group.feed].name,
        )
        for group in ask.farm.fish_groups
    ]
    yield _table("Fish groups", ("Group", "Fish, tank", "Stocked with", "Stocked on", "Feed"), rows)


def _weeks(ask: Ask) -> Table:
    columns: tuple[Column, ...] = (
        told("week", "Week", mm=26.0, share=0.3, main=BENCH_SIZE),
        told("sow", "Sow", mm=40.0, share=1.0),
        told("move", "Move to bed", mm=40.0, share=1.0),
        told("pick", "Pick", mm=40.0, share=1.0),
        told("feed", "Feed a day", mm=24.0, share=0.2, right=True),
    )
    due = ask.due_by_week()
    return Table(
        name="First weeks",
        columns=columns,
        groups=(RowGroup(rows=tuple(_week(ask, start, due.get(start, ())) for start in ask.week_starts())),),
    )


def _week(ask: Ask, start: date, tasks: Sequence[DueTask]) -> tuple[Cell, ...]:
    first = max(ask.forecast.ruler.day_of(start), 0)
    fed = [loop.feed_g[first : first + DAYS_PER_WEEK] for loop in ask.forecast.loops]
    feed = sum(float(days.mean()) for days in fed if days.size)
    name, days = ask.week_head(start)
    return (
        says(name, days, tone=Tone.MAIN),
        *(says(*_sums(ask, tasks, kind)) for kind in (DueKind.SOW, DueKind.MOVE, DueKind.PICK)),
        says(ration_words(feed) if feed > 0 else "–"),
    )


def _sums(ask: Ask, tasks: Sequence[DueTask], kind: DueKind) -> Iterator[str]:
    """Yield how many of each crop, a line each."""
    sums: dict[str, float] = {}
    for task in tasks:
        if task.kind is kind:
            sums[task.crop] = sums.get(task.crop, 0.0) + task.many
    word = DueUnit.SEEDS.value if kind is DueKind.SOW else DueUnit.PLANTS.value
    for crop, many in sums.items():
        yield f"{ask.catalogue.crops[crop].name}: {whole_words(round(many))} {word}"


def _call() -> Table:
    columns = (
        told("who", "Who", mm=50.0, share=1.0, main=BENCH_SIZE),
        written("name", "Name", mm=50.0, share=1.0),
        written("number", "Telephone", mm=50.0, share=1.0),
    )
    rows = tuple((says(who, tone=Tone.MAIN), WRITE, WRITE) for who in _CALL)
    return Table(name="Whom to call", columns=columns, groups=(RowGroup(rows=rows),))


def _signed() -> Table:
    columns = (
        told("who", "Who", mm=40.0, share=1.0),
        written("name", "Name", mm=50.0, share=1.0),
        written("date", "Date", mm=30.0, share=0.5),
        written("sign", "Signature", mm=40.0, share=1.0),
    )
    rows = ((says("Handed over by"), WRITE, WRITE, WRITE), (says("Taken over by"), WRITE, WRITE, WRITE))
    return Table(name="Handed over", columns=columns, groups=(RowGroup(rows=rows),))
