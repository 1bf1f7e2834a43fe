"""Invented scenes to look at and to test with: empty, a year of a small farm, and a very large one."""

import math
import random
from array import array
from datetime import date

from planner.desk.lanes.packing import Held, packed
from planner.desk.lanes.scene import (
    BalanceScene,
    BandMark,
    Bar,
    Curve,
    ElementWeeks,
    FeedScene,
    FishMark,
    FishMarkKind,
    FishRow,
    RatioBand,
    Row,
    RowGroup,
    Scene,
    Segment,
)
from planner.farm.crops import Phase, Stage
from planner.farm.fields import Id
from planner.farm.species import ELEMENTS

START = date(2026, 1, 5).toordinal()
TODAY = date(2026, 4, 1)
WEEKS = 52
CROPS = (
    ("LET", "Lettuce, butterhead", 10, 12, 0, 26, 0),
    ("BAS", "Basil", 9, 14, 0, 28, 35),
    ("PAK", "Pak choi", 5, 12, 7, 24, 0),
    ("KAL", "Kale", 7, 18, 0, 40, 56),
    ("TOM", "Tomato, cherry", 9, 28, 10, 55, 120),
    ("CUC", "Cucumber", 6, 16, 0, 38, 70),
    ("CHI", "Chives", 14, 28, 0, 45, 60),
    ("SPI", "Spinach", 9, 12, 0, 30, 0),
)
STAGE_ORDER = (Stage.GERMINATION, Stage.NURSERY, Stage.SPACING, Stage.BED, Stage.PICKING, Stage.CLEARING)
PHASE_STAGES = {
    Phase.NURSERY: (Stage.GERMINATION, Stage.NURSERY),
    Phase.SPACING: (Stage.SPACING,),
    Phase.BED: (Stage.BED, Stage.PICKING, Stage.CLEARING),
}


def make_bar(
    *, code: str, crop: int, sow: int, phase: Phase, bed: str, unit: int, plants: int, locked=False
) -> Bar:
    """Make one bar of a phase from a crop's days."""
    days = (*CROPS[crop][2:], 2)
    at = sow
    segments = []
    for stage, length in zip(STAGE_ORDER, days, strict=True):
        if stage in PHASE_STAGES[phase] and length:
            segments.append(Segment(stage=stage, start=at, end=at + length))
        at += length
    return Bar(
        batch=Id(f"batch {code}"),
        run=Id(f"run {code} {phase.value} {bed} {unit}") if unit else Id(""),
        phase=phase,
        bed=Id(bed),
        unit=unit,
        code=code,
        crop=CROPS[crop][0],
        crop_name=CROPS[crop][1],
        colour=crop,
        plants=plants,
        start=segments[0].start,
        end=segments[-1].end,
        segments=tuple(segments),
        locked=locked,
    )


def make_row(bed: str, unit: int, name: str, held: list[Held], phase: Phase | None = None) -> Row:
    """Make a row from what its unit holds."""
    lines, bars = packed(held)
    return Row(bed=Id(bed), unit=unit, name=name, lines=lines, bars=bars, phase=phase)


def _curve(values: list[float], step: int = 7) -> Curve:
    return Curve(start=START, step=step, values=array("d", values))


def demo_scene() -> Scene:
    """Return a year of an invented farm with two raft beds, two gravel beds and a nursery."""
    beds = (
        ("north", "North raft", "4 × 24 holes", 4, (0, 2, 0, 7), "Raft"),
        ("south", "South raft under the long shade cloth", "4 × 24 holes", 4, (1, 0, 2, 3), "Raft"),
        ("gravel a", "Gravel A", "1 × 12 cells", 1, (4,), "Block"),
        ("gravel b", "Gravel B", "2 × 10 cells", 2, (5, 6), "Block"),
    )
    nursery: list[Held] = []
    groups: list[RowGroup] = []
    for bed, name, detail, units, crops, word in beds:
        rows = []
        for unit in range(1, units + 1):
            crop = crops[(unit - 1) % len(crops)]
            rows.append(make_row(bed, unit, f"{word} {unit}", _unit_held(bed, unit, crop, nursery)))
        held = [min(0.9, 0.35 + 0.5 * math.sin(week / 9) ** 2) for week in range(WEEKS)]
        groups.append(RowGroup(bed=Id(bed), name=name, detail=detail, rows=tuple(rows), held=_curve(held)))
    tray = make_row("nursery", 1, "Tray 1", nursery[::2])
    tray_2 = make_row("nursery", 2, "Tray 2", nursery[1::2])
    groups.append(RowGroup(bed=Id("nursery"), name="Nursery", detail="2 × 128 cells", rows=(tray, tray_2)))
    waiting = make_bar(code="LET-2614-2", crop=0, sow=START + 70, phase=Phase.BED, bed="", unit=0, plants=36)
    unplaced = make_row("", 0, "Final places", [Held(bar=waiting, first=1, share=0.0)], Phase.BED)
    groups.insert(
        0,
        RowGroup(
            bed=Id(""), name="Unplaced", detail="1 batch waits for places", rows=(unplaced,), urgent=True
        ),
    )
    return Scene(
        start=START, end=START + 7 * WEEKS, groups=tuple(groups), feeds=(_feed(),), balances=(demo_balance(),)
    )


def _unit_held(bed: str, unit: int, crop: int, nursery: list[Held]) -> list[Held]:
    held: list[Held] = []
    turn = sum(CROPS[crop][5:]) + 4
    shift = unit * 5
    for number, sow in enumerate(range(START - 20 + shift, START + 340, turn)):
        code = f"{CROPS[crop][0]}-26{number + 1:02d}-{bed[0].upper()}{unit}"
        locked = number == 1 and unit == 2
        whole = make_bar(
            code=code, crop=crop, sow=sow, phase=Phase.BED, bed=bed, unit=unit, plants=24, locked=locked
        )
        if unit == 3 and bed in {"north", "south"}:
            held.append(Held(bar=whole, first=1, share=0.75))
            if number % 4 == 0:
                other = make_bar(
                    code=f"CHI-26{number + 1:02d}",
                    crop=6,
                    sow=sow - 6,
                    phase=Phase.BED,
                    bed=bed,
                    unit=unit,
                    plants=6,
                )
                held.append(Held(bar=other, first=19, share=0.25))
        else:
            held.append(Held(bar=whole, first=1, share=1.0))
        tray = make_bar(code=code, crop=crop, sow=sow, phase=Phase.NURSERY, bed="nursery", unit=1, plants=30)
        nursery.append(Held(bar=tray, first=1, share=0.3))
    return held


def _feed() -> FeedScene:
    by_day = []
    for day in range(7 * WEEKS):
        cycle = day % 120
        by_day.append(0.0 if day % 90 in (40, 41) else 420 + 6.2 * cycle)
    by_week = [sum(by_day[7 * week : 7 * week + 7]) / 7 for week in range(WEEKS)]
    mass = [28000 + 500 * ((week * 7) % 120) for week in range(WEEKS)]
    marks = (
        FishMark(kind=FishMarkKind.STOCKED, day=START - 30, count=400),
        FishMark(kind=FishMarkKind.OFF_FEED, day=START + 40),
        FishMark(kind=FishMarkKind.HARVEST, day=START + 119, count=150),
        FishMark(kind=FishMarkKind.HARVEST, day=START + 239, count=150),
    )
    later = (
        FishMark(kind=FishMarkKind.STOCKED, day=START + 90, count=420),
        FishMark(kind=FishMarkKind.ADDED, day=START + 160, count=40),
        FishMark(kind=FishMarkKind.HARVEST, day=START + 330, count=None),
    )
    return FeedScene(
        loop=Id("loop 1"),
        name="Loop 1",
        feed_by_day=_curve(by_day, 1),
        feed_by_week=_curve(by_week),
        biomass_by_week=_curve(mass),
        groups=(
            FishRow(
                group=Id("g1"),
                name="Tilapia, winter",
                tank="Tank 1",
                start=START - 30,
                end=START + 260,
                marks=marks,
            ),
            FishRow(
                group=Id("g2"),
                name="Tilapia, spring fingerlings",
                tank="Tank 2",
                start=START + 90,
                end=START + 331,
                marks=later,
            ),
        ),
    )


def band_of(ratio: float) -> BandMark:
    """Return a band for a ratio of supply to demand; bounds invented for the picture."""
    return (
        BandMark.SHORT
        if ratio < 0.8
        else BandMark.THIN
        if ratio < 1
        else BandMark.MET
        if ratio < 1.5
        else BandMark.AMPLE
    )


def demo_balance(*, extra: float = 0.0) -> BalanceScene:
    """Return a year of balance; `extra` adds so many grams of demand to every week."""
    elements = []
    for position, element in enumerate(ELEMENTS):
        size = (120, 25, 150, 60, 20, 2)[position]
        supply = [size * (1 + 0.25 * math.sin(week / 8 + position)) for week in range(WEEKS)]
        demand = [
            extra + size * (0.9 + 0.45 * math.sin(week / 5 + 1.7 * position)) if week > 2 else 0.0
            for week in range(WEEKS)
        ]
        band = tuple(
            band_of(give / want) if want else BandMark.NO_DEMAND
            for give, want in zip(supply, demand, strict=True)
        )
        elements.append(
            ElementWeeks(element=element, supply=_curve(supply), demand=_curve(demand), band=band)
        )
    limiting: list[int | None] = []
    for week in range(WEEKS):
        ratios = [
            each.supply.values[week] / each.demand.values[week] if each.demand.values[week] else math.inf
            for each in elements
        ]
        limiting.append(None if min(ratios) == math.inf else ratios.index(min(ratios)))
    ratio = [math.nan if week < 3 else 48 + 22 * math.sin(week / 6) for week in range(WEEKS)]
    return BalanceScene(
        loop=Id("loop 1"),
        name="Loop 1",
        start=START,
        weeks=WEEKS,
        elements=tuple(elements),
        limiting=tuple(limiting),
        feed_ratio=_curve(ratio),
        ratio_bands=(
            RatioBand(
                name="FAO",
                low=_curve([math.nan] * 3 + [40.0] * 49),
                high=_curve([math.nan] * 3 + [50.0] * 49),
            ),
            RatioBand(name="UVI", low=_curve([60.0] * WEEKS), high=_curve([100.0] * WEEKS)),
        ),
    )


def empty_scene() -> Scene:
    """Return a farm where nothing has been entered."""
    return Scene(start=START, end=START + 7 * WEEKS)


def big_scene(*, rows: int = 500, batches: int = 20_000, beds: int = 25, seed: int = 7) -> Scene:
    """Return five years of a very large invented farm."""
    pick = random.Random(seed)
    per_row = batches // rows
    groups = []
    for bed in range(beds):
        made = []
        for unit in range(1, rows // beds + 1):
            held, at = [], START + pick.randrange(30)
            for number in range(per_row):
                crop = pick.choice((0, 2, 7))
                code = f"{CROPS[crop][0]}-{bed:02d}{unit:02d}-{number:02d}"
                bar = make_bar(
                    code=code,
                    crop=crop,
                    sow=at - sum(CROPS[crop][2:5]),
                    phase=Phase.BED,
                    bed=f"bed {bed}",
                    unit=unit,
                    plants=24,
                )
                held.append(Held(bar=bar, first=1, share=1.0))
                at += bar.end - bar.start + pick.randrange(1, 24)
            made.append(make_row(f"bed {bed}", unit, f"Raft {unit}", held))
        groups.append(
            RowGroup(bed=Id(f"bed {bed}"), name=f"Bed {bed + 1}", detail="20 × 24 holes", rows=tuple(made))
        )
    return Scene(
        start=START, end=START + 1826, groups=tuple(groups), feeds=(_feed(),), balances=(demo_balance(),)
    )
