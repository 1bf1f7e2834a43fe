"""Solids: nothing comes back that did not go in, and time, air and siphoning do what they should."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.catalogue.loading import shipped_catalogue
from planner.farm.fish import Feeding
from planner.farm.ids import id_from
from planner.farm.site import Filter, FilterKind
from planner.farm.species import ELEMENTS, BedKind
from planner.farm.water import SolidsBatch
from planner.forecast.engine import Forecaster
from planner.forecast.solids import SolidsSetup, solids_fate, solids_figures, solids_setup
from planner.forecast.values import Ruler
from tests.farms import LOOP, MONDAY, NURSERY, RAFT, farm_of, group_of

CATALOGUE = shipped_catalogue()
FIGURES = solids_figures(CATALOGUE)
RULER = Ruler(start_on=MONDAY, weeks=20)
NITROGEN, PHOSPHORUS = ELEMENTS.index("n"), ELEMENTS.index("p")
GRAVEL = dataclasses.replace(RAFT, id=id_from("gravel"), name="Gravel", kind=BedKind.MEDIA, area_m2=12.0)


def solids_batch(code="SOL-1", *, filled=28, days=7, returned=None, **fields):
    return SolidsBatch(
        id=id_from("solids", code),
        code=code,
        loop=LOOP.id,
        siphoned_on=MONDAY + timedelta(days=filled),
        days=days,
        returned_on=None if returned is None else MONDAY + timedelta(days=returned),
        **fields,
    )


def setup_of(*batches, **fields):
    given_ = {"captured_share": 0.6, "media_share": 0.0, "siphoned_every_days": None}
    return SolidsSetup(**(given_ | {"fed_days_before": 0} | fields), batches=batches)


def steady(a_day=10.0):
    return np.full((len(ELEMENTS), RULER.days), a_day)


def fate_of(*batches, solids_g=None, **fields):
    return solids_fate(
        steady() if solids_g is None else solids_g, setup_of(*batches, **fields), FIGURES, RULER
    )


def filter_of(name, share):
    return Filter(
        id=id_from(name), name=name, loop=LOOP.id, kind=FilterKind.SETTLER, solids_captured_share=share
    )


def test_that_filters_in_a_row_each_take_their_share_of_what_is_left():
    farm = farm_of(filters=(filter_of("A", 0.5), filter_of("B", 0.4), filter_of("C", None)))
    assert solids_setup(farm, LOOP, FIGURES, RULER).captured_share == pytest.approx(0.7)


def test_that_without_a_share_entered_the_usual_one_counts():
    usual = CATALOGUE.figure("loop/solids_captured_share").value
    for filters in ((), (filter_of("A", None),)):
        assert solids_setup(farm_of(filters=filters), LOOP, FIGURES, RULER).captured_share == usual


def test_that_what_passes_spreads_over_rafts_and_gravel_by_area():
    assert solids_setup(farm_of(beds=(RAFT, NURSERY, GRAVEL)), LOOP, FIGURES, RULER).media_share == 0.75
    assert solids_setup(farm_of(beds=(NURSERY,)), LOOP, FIGURES, RULER).media_share == 0.0


def test_that_caught_solids_leave_where_no_batch_takes_them():
    fate = fate_of(captured_share=1.0)
    assert fate.gone_g == pytest.approx(steady())
    assert not fate.mineralised_g.any()
    assert not fate.lying_g.any()


def test_that_solids_in_gravel_give_back_more_than_those_under_rafts():
    rafts, gravel = (fate_of(media_share=share).mineralised_g.sum(axis=1)[PHOSPHORUS] for share in (0.0, 1.0))
    assert gravel > rafts > 0


def test_that_siphoning_takes_away_what_lies_and_less_comes_back():
    left, often = fate_of(), fate_of(siphoned_every_days=14)
    assert often.mineralised_g.sum() < left.mineralised_g.sum()
    assert often.lying_g[:, 13] == pytest.approx(left.lying_g[:, 13])
    # on the day of siphoning only what settled that day lies there
    assert often.lying_g[:, 14] == pytest.approx(np.full(len(ELEMENTS), 4.0))
    assert often.gone_g[:, 14] == pytest.approx(6.0 + left.lying_g[:, 13])


def test_that_a_batch_takes_what_was_caught_and_siphoned_in_its_days_and_no_more():
    fate = fate_of(solids_batch(filled=28, days=7), siphoned_every_days=14)
    (batch,) = fate.batches
    assert batch.gathered_g == pytest.approx(7 * 6.0 + fate_of().lying_g[:, 13])
    assert not fate.gone_g[:, 21:28].any()
    assert fate.gone_g[:, 20] == pytest.approx(np.full(len(ELEMENTS), 6.0))


def test_that_two_batches_do_not_take_the_same_solids():
    first, second = fate_of(
        solids_batch("SOL-1", filled=28, days=7), solids_batch("SOL-2", filled=30, days=7)
    ).batches
    assert first.gathered_g == pytest.approx(np.full(len(ELEMENTS), 42.0))
    assert second.gathered_g == pytest.approx(np.full(len(ELEMENTS), 12.0))


@given(st.integers(0, 100), st.integers(1, 60), st.booleans())
def test_that_a_batch_gives_more_the_longer_it_is_kept_and_never_all(filled, longer, aerated):
    short, long = (
        np.asarray(
            fate_of(solids_batch(filled=filled, days=7, returned=returned, aerated=aerated))
            .batches[0]
            .liquor_g
        )
        for returned in (min(filled + 2, 139), min(filled + 2 + longer, 139))
    )
    gathered = np.full(len(ELEMENTS), 6.0 * min(filled, 7))
    assert (short <= long + 1e-12).all()
    assert (long <= gathered + 1e-12).all()
    if filled and filled + 2 + longer < 139:
        assert (short < long).all()


def test_that_two_days_give_less_than_a_month_and_come_on_their_day():
    short, long = (
        fate_of(solids_batch(filled=28, days=7, returned=returned)).liquor_g for returned in (30, 58)
    )
    assert (short.sum(axis=1) < long.sum(axis=1)).all()
    assert (short.sum(axis=1) == short[:, 30]).all()
    assert (long.sum(axis=1) == long[:, 58]).all()


def test_that_without_air_less_comes_back_and_nitrogen_is_lost():
    aired, still = (
        fate_of(solids_batch(filled=28, days=7, returned=70, aerated=air)) for air in (True, False)
    )
    assert (still.liquor_g.sum(axis=1) <= aired.liquor_g.sum(axis=1)).all()
    assert still.liquor_g.sum(axis=1)[NITROGEN] < aired.liquor_g.sum(axis=1)[NITROGEN] / 2
    assert still.lost_g.sum(axis=1)[NITROGEN] > 0
    assert not aired.lost_g.any()


def test_that_half_of_the_liquor_brings_half():
    whole, half = (
        fate_of(solids_batch(returned=70, returned_share=share)).liquor_g.sum(axis=1) for share in (1, 0.5)
    )
    assert half == pytest.approx(whole / 2)


def test_that_a_batch_never_returned_brings_nothing_and_is_kept():
    fate = fate_of(solids_batch())
    assert not fate.liquor_g.any()
    assert fate.in_batches_g[:, -1] == pytest.approx(np.full(len(ELEMENTS), 42.0))


days = st.integers(-30, 160)
batches_drawn = st.lists(
    st.builds(
        dict,
        filled=days,
        days=st.integers(1, 60),
        wait=st.none() | st.integers(0, 90),
        aerated=st.booleans(),
        returned_share=st.floats(0, 1),
    ),
    max_size=4,
)


@given(
    batches=batches_drawn,
    seed=st.integers(0, 1000),
    captured=st.floats(0, 1),
    media=st.floats(0, 1),
    every=st.none() | st.integers(1, 200),
    fed_before=st.integers(-5, 60),
)
@settings(max_examples=60)
def test_that_solids_close_on_every_day_for_every_element(batches, seed, captured, media, every, fed_before):
    solids = np.random.default_rng(seed).uniform(0, 50, (len(ELEMENTS), RULER.days))
    made = [
        solids_batch(
            f"SOL-{number}",
            filled=one["filled"],
            days=one["days"],
            returned=None if one["wait"] is None else one["filled"] + one["wait"],
            aerated=one["aerated"],
            returned_share=one["returned_share"],
        )
        for number, one in enumerate(batches)
    ]
    fate = fate_of(
        *made,
        solids_g=solids,
        captured_share=captured,
        media_share=media,
        siphoned_every_days=every,
        fed_days_before=fed_before,
    )
    flows = (fate.gone_g, fate.lost_g, fate.liquor_g, fate.mineralised_g)
    out = sum(flow.cumsum(axis=1) for flow in flows)
    into = (solids + fate.before_g).cumsum(axis=1)
    assert into == pytest.approx(out + fate.in_batches_g + fate.lying_g, rel=1e-9, abs=1e-9)
    for batch in fate.batches:
        assert (np.add(batch.liquor_g, batch.lost_g) <= np.asarray(batch.gathered_g) * (1 + 1e-12)).all()
    assert fate.caught_g + fate.settled_g + fate.in_gravel_g == pytest.approx(solids)
    assert min(part.min() for part in (*flows, fate.in_batches_g, fate.lying_g)) >= 0


def test_that_a_batch_filled_before_the_plan_holds_what_the_fish_of_then_left():
    batch = solids_batch(filled=-5, days=10, returned=20)
    known, partly, unknown = (fate_of(batch, fed_days_before=days) for days in (100, 8, 0))
    assert known.batches[0].before_g == pytest.approx(np.full(len(ELEMENTS), 60.0))
    assert partly.batches[0].gathered_g == pytest.approx(np.full(len(ELEMENTS), 18.0))
    assert known.liquor_g[:, 20].all()
    assert not unknown.liquor_g.any()
    assert known.gone_g[:, :20] == pytest.approx(unknown.gone_g[:, :20])


def test_that_a_batch_returned_before_the_plan_holds_nothing_any_more():
    fate = fate_of(solids_batch(filled=-40, days=10, returned=-5), fed_days_before=100)
    assert fate.batches == ()
    assert not fate.in_batches_g.any()


def test_that_the_days_with_fish_before_the_plan_are_those_since_the_first_were_stocked():
    early = group_of(stocked_on=MONDAY - timedelta(days=30))
    late = group_of("Late", stocked_on=MONDAY + timedelta(days=3))
    for groups, days_ in (((early, late), 30), ((late,), -3), ((), 0)):
        assert solids_setup(farm_of(fish_groups=groups), LOOP, FIGURES, RULER).fed_days_before == days_


@given(feed=st.floats(1, 2000), more=st.floats(0, 500), day=st.integers(1, 60))
@settings(max_examples=30)
def test_that_more_feed_never_means_less_supply(feed, more, day):
    batch = solids_batch(filled=day, days=14, returned=day + 30)
    forecaster = Forecaster(CATALOGUE)
    less, greater = (
        forecaster.preview(
            farm_of(
                fish_groups=(group_of(feeding=Feeding.FIXED, feed_g_per_day=given_),),
                solids_batches=(batch,),
            )
        )
        .loops[0]
        .supply_g
        for given_ in (feed, feed + more)
    )
    assert (less <= greater * (1 + 1e-12)).all()


def test_that_a_loops_own_gas_loss_stands_in_for_the_books(forecaster):
    group = group_of(feeding=Feeding.FIXED, feed_g_per_day=500.0)
    book, none = (
        forecaster.forecast(
            farm_of(fish_groups=(group,), loops=(dataclasses.replace(LOOP, gas_loss_share=share),))
        ).loops[0]
        for share in (None, 0.0)
    )
    assert book.gas_g[NITROGEN].sum() > 0
    assert not none.gas_g.any()
    assert none.dissolved_g[NITROGEN] == pytest.approx(book.dissolved_g[NITROGEN] + book.gas_g[NITROGEN])


def test_that_solids_batches_of_another_loop_take_nothing(forecaster):
    other = dataclasses.replace(LOOP, id=id_from("other"), name="Other")
    batch = dataclasses.replace(solids_batch(returned=70), loop=other.id)
    farm = farm_of(fish_groups=(group_of(),), loops=(LOOP, other), solids_batches=(batch,))
    first, second = forecaster.forecast(farm).loops
    assert not first.liquor_g.any()
    assert not second.liquor_g.any()
