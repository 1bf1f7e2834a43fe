"""Farms for the documents: the sample, one with hostile names everywhere, one with nothing, a long year."""

from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import cache

from planner.bootstrap import Means
from planner.farm.crops import Batch, Phase, Placement, SeedLot
from planner.farm.farm import Farm, OwnEntry, Shelf
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.farm.ids import id_from
from planner.farm.site import Filter, FilterKind, Tank
from planner.farm.water import Dose, Quantity, Reading, SolidsBatch
from planner.forecast.values import Forecast
from planner.paper.documents.ask import Ask
from planner.paper.registry import Document
from planner.paper.report import Report
from planner.shipped import shipped_path
from tests.paper.helpers import PRINTED, START, bare_farm, sown_farm

HOSTILE = (
    "<b>&amp; <script>alert(1)</script> %s {0} $(rm -rf /)",
    '=HYPERLINK("http://x","y")',
    "../../etc/passwd",
    "خس روماني أخضر",
    "abc\u202edef\u2066ghi 12 kg",
    "Basil \U0001f33f \U0001f468\u200d\U0001f33e pot",
    "W" * 120,
    ("Extraordinarily long name that somebody typed on a rainy afternoon " * 3)[:119] + "Z",
)
"""Names that a grower might type, or somebody who means harm: each at most as long as a name may be."""


@dataclass(frozen=True, slots=True)
class Looked:
    """A farm with its forecast."""

    farm: Farm
    forecast: Forecast
    means: Means

    def ask(self, *, from_on: date | None = None, weeks: int = 4, large: bool = False) -> Ask:
        """Ask for some weeks, from the plan's first when nobody says."""
        return Ask(
            farm=self.farm,
            forecast=self.forecast,
            catalogue=self.means.forecaster.catalogue_for(self.farm),
            from_on=from_on or self.farm.settings.plan_from,
            weeks=weeks,
            printed_on=PRINTED,
            large=large,
        )

    def report(self, document: Document, **how) -> Report:
        """Make a document as it usually is."""
        return document.make(self.ask(**{"weeks": document.weeks, **how}))


def looked(farm: Farm) -> Looked:
    """Forecast a farm."""
    means = Means()
    return Looked(farm, means.forecaster.forecast(farm), means)


@cache
def sample() -> Looked:
    """The farm that ships as a sample."""
    means = Means()
    farm = means.read(shipped_path("sample_data", "school-kitchen.toml")).farm
    return Looked(farm, means.forecaster.forecast(farm), means)


@cache
def empty() -> Looked:
    """A farm with a name and nothing else."""
    return looked(replace(bare_farm(), sites=(), loops=(), beds=()))


@cache
def long_year() -> Looked:
    """Sixty weeks with three hundred sowings."""
    return looked(sown_farm(300, weeks=60, farm=with_water(bare_farm(weeks=60))))


@cache
def hostile() -> Looked:
    """A farm in which everything that can have a name has a hostile one."""
    return looked(_named(with_water(bare_farm(name=HOSTILE[0]))))


def with_water(farm: Farm) -> Farm:
    """A farm with fish, filter, readings, doses and a solids batch."""
    loop = farm.loops[0].id
    tank = Tank(id=id_from("tank"), name="Tank", loop=loop, volume_l=3000)
    group = FishGroup(
        id=id_from("group"), name="Fish", tank=tank.id, species="nile-tilapia", feed="tilapia-grow-out-32",
        stocked_on=START - timedelta(days=30), count=80, mean_weight_g=60,
    )  # fmt: skip
    events = (
        FishEvent(id=id_from("e1"), group=group.id, on=START, kind=FishEventKind.SAMPLE, mean_weight_g=75),
        FishEvent(
            id=id_from("e2"), group=group.id, on=START + timedelta(days=3), kind=FishEventKind.DEATHS, count=2
        ),
    )
    return replace(
        farm,
        loops=tuple(replace(one, water_c=(24.0,) * 12) for one in farm.loops),
        tanks=(tank,),
        filters=(Filter(id=id_from("filter"), name="Filter", loop=loop, kind=FilterKind.SETTLER),),
        fish_groups=(group,),
        fish_events=events,
        doses=(
            Dose(id=id_from("d"), loop=loop, supplement="iron-dtpa-11", grams=20, on=START, every_days=21),
        ),
        readings=tuple(_readings(loop)),
        solids_batches=(
            SolidsBatch(id=id_from("solids"), code="SB-1", loop=loop, siphoned_on=START, days=14,
                        returned_on=START + timedelta(days=28)),
        ),
    )  # fmt: skip


def _readings(loop: Id):
    for at in range(4):
        on = START - timedelta(days=7 * at)
        for quantity, value in (
            (Quantity.PH, 7.4 - at * 0.1),
            (Quantity.TAN_MG_PER_L, 0.5),
            (Quantity.NITRATE_N_MG_PER_L, 20.0 + at),
        ):
            yield Reading(
                id=id_from("r", str(at), quantity.value), loop=loop, on=on, quantity=quantity, value=value
            )


def _named(farm: Farm) -> Farm:
    own = OwnEntry(
        id=id_from("own"), shelf=Shelf.CROP, key="own-long", like="basil", name=HOSTILE[7], values=()
    )
    lots = tuple(
        SeedLot(id=id_from("lot", str(n)), code=name, crop="basil", variety=name)
        for n, name in enumerate(HOSTILE)
    )
    batches = tuple(
        Batch(
            id=id_from("b", str(n)), code=name, crop="own-long" if n % 2 else "basil", variety=name,
            sow_on=START + timedelta(days=n), plants=12, seed_lot=lots[n].id,
        )
        for n, name in enumerate(HOSTILE)
    )  # fmt: skip
    held = tuple(
        Placement(id=id_from("h", batch.id), batch=batch.id, phase=Phase.BED, bed=id_from("bed", "A"),
                  unit=1 + n, first=1, count=12)
        for n, batch in enumerate(batches)
    )  # fmt: skip
    beds = (
        *farm.beds,
        *(replace(farm.beds[1], id=id_from("bed", str(n)), name=name) for n, name in enumerate(HOSTILE)),
    )
    return replace(
        farm,
        sites=tuple(replace(site, name=HOSTILE[1], place=HOSTILE[3]) for site in farm.sites),
        loops=tuple(replace(loop, name=HOSTILE[4]) for loop in farm.loops),
        tanks=tuple(replace(tank, name=HOSTILE[7]) for tank in farm.tanks),
        filters=tuple(replace(one, name=HOSTILE[2]) for one in farm.filters),
        fish_groups=tuple(replace(group, name=HOSTILE[5]) for group in farm.fish_groups),
        solids_batches=tuple(replace(one, code=HOSTILE[6]) for one in farm.solids_batches),
        beds=beds,
        own_entries=(own,),
        seed_lots=lots,
        batches=batches,
        placements=held,
    )
