"""Made-up farms of all sizes, and the words of a finished PDF."""

import random
import subprocess
from collections.abc import Mapping
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from functools import lru_cache
from pathlib import Path

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.loading import load_catalogue
from planner.catalogue.own import laid_over
from planner.farm.crops import Batch, Phase, Placement, SeedLot
from planner.farm.farm import Farm, OwnEntry, Settings, Shelf
from planner.farm.fields import NO_ID
from planner.farm.ids import id_from
from planner.farm.site import Bed, Loop, Site, WeekStart
from planner.farm.species import BedKind, Crop
from planner.forecast.profiles import Profile, profile_key, profile_of
from planner.forecast.values import BatchTable, Flag, FlagKind, Forecast, Ruler
from planner.paper.report import Report
from planner.paper.seeding_calendar import seeding_calendar
from planner.science.schedule import seeds_to_sow
from planner.shipped import shipped_path

START = date(2027, 4, 5)
PRINTED = datetime(2027, 4, 1, 9, 5, tzinfo=UTC)
CROPS = ("lettuce-leaf", "basil", "pak-choi", "tomato", "chives", "lettuce-romaine", "coriander")
VARIETIES = ("Green Oak", "Genovese", "", "Early Red", "Fine", "Parris", "Slow Bolt")
NAME_120 = ("Extraordinarily long name of a crop that somebody typed in one afternoon of rain " * 3)[
    :119
] + "Z"
ARABIC = "خس روماني"
HEBREW = "חסה"
UNICODE = "Ærøskøbing – Çeşme – Łódź – Ωμέγα – Жито"
EMOJI = "Basil \U0001f33f"


@lru_cache(maxsize=1)
def book() -> Catalogue:
    """The catalogue that ships."""
    return load_catalogue(shipped_path("resources"))


def bare_farm(
    *, name: str = "Brookside Loop", week_start: WeekStart = WeekStart.MONDAY, weeks: int = 52
) -> Farm:
    """A farm with beds and a nursery and nothing sown."""
    site = Site(id=id_from("site"), name="Lower greenhouse", week_start=week_start)
    loop = Loop(id=id_from("loop"), name="Loop 1", site=site.id, water_l=6000)
    beds = (
        Bed(id=id_from("bed", "N"), name="Nursery", loop=loop.id, kind=BedKind.NURSERY, units=60, rows=6,
            columns=12, area_m2=6),
        Bed(id=id_from("bed", "A"), name="Bed A", loop=loop.id, kind=BedKind.RAFT, units=12, rows=4,
            columns=7, area_m2=13.4),
        Bed(id=id_from("bed", "G"), name="Gravel 1", loop=loop.id, kind=BedKind.MEDIA, units=2, rows=4,
            columns=10, area_m2=6),
    )  # fmt: skip
    settings = Settings(id=id_from("settings"), name=name, plan_from=START, plan_weeks=weeks)
    return Farm(settings=settings, sites=(site,), loops=(loop,), beds=beds)


def sown_farm(count: int, *, weeks: int = 9, seed: int = 7, farm: Farm | None = None) -> Farm:
    """A farm with `count` sowings spread over some weeks; some placed, some not."""
    chance = random.Random(seed)
    farm = farm or bare_farm(weeks=max(weeks, 20))
    lots = tuple(
        SeedLot(id=id_from("lot", crop), code=f"{crop[:3].upper()}-26-{n:02d}", crop=crop)
        for n, crop in enumerate(CROPS)
    )
    batches, placements = [], []
    for n in range(count):
        pick = n % len(CROPS)
        sow_on = START + timedelta(days=chance.randrange(weeks) * 7 + chance.choice((0, 1, 3)))
        batch = Batch(
            id=id_from("batch", str(n)),
            code=f"{book().crops[CROPS[pick]].code}-27W{sow_on.isocalendar().week:02d}-{n:03d}",
            crop=CROPS[pick],
            variety=VARIETIES[pick],
            sow_on=sow_on,
            plants=chance.choice((12, 28, 40, 56, 84, 140)),
            bed=farm.beds[1].id if n % 3 == 1 else NO_ID,
            seed_lot=lots[pick].id if n % 4 else NO_ID,
        )
        batches.append(batch)
        placements.extend(_places(batch, n) if n % 3 == 0 else ())
    return replace(farm, seed_lots=lots, batches=tuple(batches), placements=tuple(placements))


def _places(batch: Batch, n: int) -> tuple[Placement, ...]:
    nursery = Placement(
        id=id_from("held", batch.id, "n"), batch=batch.id, phase=Phase.NURSERY, bed=id_from("bed", "N"),
        unit=1 + n % 60, first=1, count=min(batch.plants + 4, 72),
    )  # fmt: skip
    left, unit, held = batch.plants, 1 + n % 6, [nursery]
    while left > 0:
        count = min(left, 28)
        held.append(
            Placement(
                id=id_from("held", batch.id, str(unit)),
                batch=batch.id,
                phase=Phase.BED,
                bed=id_from("bed", "A"),
                unit=unit,
                first=1,
                count=count,
            )
        )
        left, unit = left - count, unit + 1
    return tuple(held)


def strange_farm() -> Farm:
    """A farm whose names are as long and as foreign as they may be."""
    farm = bare_farm(name=NAME_120)
    named = OwnEntry(
        id=id_from("own"), shelf=Shelf.CROP, key="own-long", like="basil", name=NAME_120,
        values=(("germination_share", 0.5),),
    )  # fmt: skip
    varieties = (NAME_120, ARABIC, HEBREW, UNICODE, EMOJI, "W" * 120, "=HYPERLINK(1)", "fine affluent office")
    batches = tuple(
        Batch(
            id=id_from("strange", str(n)),
            code=f"{'LONG-BATCH-CODE-' * 8}"[:116] + f"-{n:03d}" if n == 0 else f"STR-27W14-{n}",
            crop="own-long" if n % 2 == 0 else "basil",
            variety=variety,
            sow_on=START + timedelta(days=n),
            plants=1_000_000 if n == 1 else 1,
        )
        for n, variety in enumerate(varieties)
    )
    beds = tuple(replace(bed, name=f"{bed.name} {NAME_120}"[:120]) for bed in farm.beds)
    return replace(farm, own_entries=(named,), batches=batches, beds=beds)


def catalogue_of(farm: Farm) -> Catalogue:
    """The catalogue with a farm's own crops laid over it."""
    return laid_over(book(), farm.own_entries)


def forecast_of(farm: Farm, catalogue: Catalogue) -> Forecast:
    """What the forecast says of the batches, put together by hand; no fish, no water."""
    start = farm.settings.plan_from
    ruler = Ruler(start_on=start - timedelta(days=start.weekday()), weeks=farm.settings.plan_weeks)
    profiles, numbers = profiles_of(farm, catalogue.crops)
    none = np.zeros((0, ruler.days))
    return Forecast(
        ruler=ruler,
        crops=tuple(dict.fromkeys(batch.crop for batch in farm.batches)),
        profiles=profiles,
        batches=table_of(farm, ruler, profiles, numbers),
        loops=(),
        harvest_plants=none,
        harvest_g=none,
        flags=tuple(Flag(kind=FlagKind.NO_CLIMATE, about=s.id, name=s.name) for s in farm.sites),
        source_keys=(),
    )


def profiles_of(farm: Farm, crops: Mapping[str, Crop]) -> tuple[tuple[Profile, ...], list[int]]:
    """The profiles of all batches, each once, and which one each batch has."""
    keys = [profile_key(batch) for batch in farm.batches]
    order = list(dict.fromkeys(keys))
    return tuple(profile_of(key, crops[str(key[0])]) for key in order), [order.index(key) for key in keys]


def table_of(farm: Farm, ruler: Ruler, profiles: tuple[Profile, ...], numbers: list[int]) -> BatchTable:
    """The dates and numbers of all batches."""
    count = len(farm.batches)
    sow_day = np.array([ruler.day_of(batch.sow_on) for batch in farm.batches], dtype=np.int64)
    days = np.array([profiles[n].stage_days for n in numbers], dtype=np.int64).reshape(count, 6)
    seeds = [
        seeds_to_sow(
            batch.plants, germination=profiles[n].germination_share, survival=profiles[n].survival_share
        )
        for batch, n in zip(farm.batches, numbers, strict=True)
    ]
    return BatchTable(
        ids=tuple(batch.id for batch in farm.batches),
        row_of={batch.id: row for row, batch in enumerate(farm.batches)},
        profile=np.array(numbers, dtype=np.int64),
        crop=np.zeros(count, dtype=np.int64),
        loop=np.zeros(count, dtype=np.int64),
        pace=np.zeros(count, dtype=np.int64),
        sow_day=sow_day,
        ends=sow_day[:, None] + np.cumsum(days, axis=1),
        plants=np.array([batch.plants for batch in farm.batches], dtype=np.int64),
        seeds=np.array(seeds, dtype=np.int64),
        area_m2=np.zeros(count),
        ripe=np.ones(count),
    )


def calendar_of(farm: Farm, *, weeks: int = 9, large: bool = False, from_on: date = START) -> Report:
    """The seeding calendar of a farm."""
    catalogue = catalogue_of(farm)
    return seeding_calendar(
        farm, forecast_of(farm, catalogue), catalogue, from_on=from_on, weeks=weeks, printed_on=PRINTED,
        large=large,
    )  # fmt: skip


def told(program: str, *arguments: str | Path) -> str:
    """What a PDF tool prints."""
    done = subprocess.run([program, *map(str, arguments)], capture_output=True, text=True, check=True)
    return done.stdout


def pdf_text(path: Path) -> str:
    """All words of a PDF as they stand."""
    return told("pdftotext", "-layout", path, "-")


def squeezed(text: str) -> str:
    """A text without any white space, so that line breaks do not matter."""
    return "".join(text.split())
