"""Places for batches that only name a bed."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

from hypothesis import given
from hypothesis import strategies as st

from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import Phase
from planner.farm.ids import id_from
from planner.forecast.engine import Forecaster
from planner.forecast.occupancy import clashes, holds
from planner.planning.placement import RefusalKind
from planner.planning.wishes import nurseries_of, place_wishes
from tests.farms import LOOP, MONDAY, NURSERY, RAFT, batch_of, farm_of, places_of, weekly_batches

FORECASTER = Forecaster(shipped_catalogue())


def placed(farm):
    return place_wishes(farm, FORECASTER.preview(farm))


def by_phase(farm, phase):
    return [placement for placement in farm.placements if placement.phase is phase]


def test_that_a_batch_gets_its_bed_and_a_nursery_cell_for_every_seed():
    farm = farm_of(batches=(batch_of(bed=RAFT.id),))
    seeds = int(FORECASTER.preview(farm).batches.seeds[0])
    found = placed(farm)
    assert found.refusals == ()
    assert sum(p.count for p in by_phase(found.farm, Phase.BED)) == 25
    nursery = by_phase(found.farm, Phase.NURSERY)
    assert {p.bed for p in nursery} == {NURSERY.id}
    assert sum(p.count for p in nursery) == seeds > 25


def test_that_a_batch_without_a_bed_in_mind_is_left_alone():
    farm = farm_of(batches=(batch_of(),))
    assert placed(farm).farm == farm


def test_that_places_already_given_stay_as_they_are():
    batch = batch_of(bed=RAFT.id)
    own = places_of(batch, unit=3)
    found = placed(farm_of(batches=(batch,), placements=(own,)))
    assert by_phase(found.farm, Phase.BED) == [own]
    assert by_phase(found.farm, Phase.NURSERY)


def test_that_a_farm_without_a_nursery_gives_no_cells_and_no_complaint():
    found = placed(farm_of(beds=(RAFT,), batches=(batch_of(bed=RAFT.id),)))
    assert found.refusals == ()
    assert by_phase(found.farm, Phase.NURSERY) == []
    assert len(by_phase(found.farm, Phase.BED)) == 1


def test_that_only_nurseries_of_the_same_loop_are_used():
    elsewhere = dataclasses.replace(LOOP, id=id_from("elsewhere"), name="Elsewhere")
    far = dataclasses.replace(NURSERY, id=id_from("far"), name="Far bench", loop=elsewhere.id)
    batch = batch_of(bed=RAFT.id)
    farm = farm_of(loops=(LOOP, elsewhere), beds=(far, RAFT, NURSERY), batches=(batch,))
    assert nurseries_of(farm, batch) == (NURSERY.id,)
    assert {p.bed for p in by_phase(placed(farm).farm, Phase.NURSERY)} == {NURSERY.id}


def test_that_a_full_first_bench_leads_to_the_second():
    second = dataclasses.replace(NURSERY, id=id_from("second"), name="Second bench", units=4)
    big = batch_of(bed=RAFT.id, plants=100, bed_days=10.0)
    small = dataclasses.replace(NURSERY, units=1)
    found = placed(farm_of(beds=(RAFT, small, second), batches=(big,)))
    assert found.refusals == ()
    assert {p.bed for p in by_phase(found.farm, Phase.NURSERY)} == {second.id}


def test_that_what_does_not_fit_is_refused_with_its_numbers_and_the_rest_is_placed():
    batches = tuple(batch_of(f"B-{n}", bed=RAFT.id, plants=40) for n in range(3))
    found = placed(farm_of(beds=(RAFT,), batches=batches))
    assert [refusal.batch for refusal in found.refusals] == [batches[2].id]
    refusal = found.refusals[0]
    assert refusal.kind is RefusalKind.NO_FREE_PLACES
    assert (refusal.needed, refusal.free, refusal.blocking) == (40, 20, ("B-0", "B-1"))
    assert sum(p.count for p in by_phase(found.farm, Phase.BED)) == 80


def test_that_the_batch_that_needs_its_place_first_is_served_first():
    late = batch_of("LATE", bed=RAFT.id, plants=60, sow_on=MONDAY + timedelta(days=2))
    early = batch_of("EARLY", bed=RAFT.id, plants=60)
    found = placed(farm_of(beds=(RAFT,), batches=(late, early)))
    assert [refusal.batch for refusal in found.refusals] == [late.id]


@given(
    count=st.integers(1, 12),
    plants=st.integers(1, 60),
    bed_days=st.integers(1, 60),
    nursery_days=st.integers(0, 30),
)
def test_that_what_is_placed_never_clashes_and_is_the_same_each_time(count, plants, bed_days, nursery_days):
    farm = farm_of(
        batches=weekly_batches(
            count, plants=plants, bed=RAFT.id, bed_days=float(bed_days), nursery_days=float(nursery_days)
        )
    )
    found = placed(farm)
    assert list(clashes(holds(found.farm, FORECASTER.preview(found.farm)))) == []
    assert placed(farm) == found


def test_that_order_of_sets_has_no_say_in_where_batches_go(under_two_hash_seeds):
    first, second = under_two_hash_seeds(
        "from pathlib import Path\n"
        "from planner.bootstrap import Means\n"
        "from planner.shipped import shipped_path\n"
        "found = Means().read(Path(shipped_path('sample_data', 'school-kitchen.toml')))\n"
        "print(found.farm.placements, found.refusals)\n"
    )
    assert first == second
