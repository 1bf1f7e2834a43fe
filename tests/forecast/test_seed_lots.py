"""Seed lots: tests and counts move the share that seeds are reckoned with; old and primed seed is careful."""

import dataclasses
import math
from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.crops import SeedLot
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry, Unit
from planner.forecast.seed_lots import Caution, lot_shares
from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.ask import why
from planner.forecast.why.formulas import Formula
from planner.forecast.why.values import NoteKind, Origin, Subject, SubjectKind
from planner.planning.orders import order_list
from planner.science.germination import share_after_counts
from tests.farms import MONDAY, batch_of, farm_of

LOT = SeedLot(id=id_from("lot"), code="LOT-9", crop="lettuce-butterhead", germination_share=0.9)
BATCH = batch_of(seed_lot=LOT.id)


def entry(code, **given):
    fields = {"what": Happening.SEED_TESTED, "on": MONDAY - timedelta(days=3), "unit": Unit.PLANTS, **given}
    return LogEntry(id=id_from("log", code), code=code, **fields)


def test_of(code, came_up, out_of, **given):
    return entry(code, seed_lot=LOT.id, amount=float(came_up), out_of=out_of, **given)


test_of.__test__ = False


def farm(*entries, lot=LOT, batch=BATCH):
    return farm_of(seed_lots=(lot,), batches=(batch,), log_entries=entries)


def known(catalogue, *entries, lot=LOT):
    return lot_shares(farm(*entries, lot=lot), catalogue)[LOT.id]


def seeds(forecaster, *entries, lot=LOT, batch=BATCH):
    return int(forecaster.preview(farm(*entries, lot=lot, batch=batch)).batches.seeds[0])


def test_that_without_a_count_the_packet_is_believed(catalogue):
    lot = known(catalogue)
    assert (lot.share(MONDAY), lot.seeds, lot.tests) == (0.9, 0, 0)


def test_that_the_book_holds_where_nothing_is_known(catalogue, forecaster):
    bare = dataclasses.replace(LOT, germination_share=None)
    assert known(catalogue, lot=bare).share(MONDAY) is None
    assert seeds(forecaster, lot=bare) == seeds(forecaster, batch=batch_of())


def test_that_a_bad_test_raises_the_number_of_seeds(catalogue, forecaster):
    bad = test_of("T-1", 20, 50)
    lot = known(catalogue, bad)
    assert lot.share(MONDAY) == pytest.approx((0.9 * lot.prior_seeds + 20) / (lot.prior_seeds + 50))
    assert (lot.seeds, lot.came_up, lot.tests) == (50, 20, 1)
    assert seeds(forecaster, bad) > seeds(forecaster)


def test_that_a_corrected_test_counts_as_it_stands(catalogue):
    wrong, right = test_of("T-1", 2, 50), test_of("T-2", 48, 50, corrects=id_from("log", "T-1"))
    assert known(catalogue, wrong, right) == known(catalogue, right)


def test_that_the_counts_of_a_batch_teach_its_lot(catalogue):
    sown = entry("S", what=Happening.SOWN, batch=BATCH.id, amount=40.0, unit=Unit.SEEDS)
    up = entry("U", what=Happening.GERMINATED, batch=BATCH.id, amount=30.0)
    more = entry("V", what=Happening.GERMINATED, batch=BATCH.id, amount=34.0)
    lot = known(catalogue, sown, up, more)
    assert (lot.seeds, lot.came_up, lot.batches, lot.tests) == (40, 34, 1, 0)
    assert known(catalogue, up).seeds == 0


def test_that_an_old_lot_is_sown_thicker_until_it_is_tested(catalogue, forecaster):
    old = dataclasses.replace(LOT, packed_on=MONDAY - timedelta(days=800))
    assert known(catalogue, lot=old).cautions(MONDAY) == (Caution.OLD,)
    assert known(catalogue, lot=old).share(MONDAY) < 0.9
    assert seeds(forecaster, lot=old) > seeds(forecaster)
    good = test_of("T-1", 45, 50)
    assert known(catalogue, good, lot=old).cautions(MONDAY) == ()
    assert seeds(forecaster, good, lot=old) == seeds(forecaster)


def test_that_a_lot_without_any_date_is_not_called_old(catalogue):
    assert known(catalogue).cautions(MONDAY) == ()


def test_that_primed_seed_is_sown_thicker_and_less_so_the_more_is_counted(catalogue):
    primed = dataclasses.replace(LOT, primed=True)
    few, many = test_of("T-1", 45, 50), test_of("T-2", 900, 1000)
    shares = [known(catalogue, *tests, lot=primed).share(MONDAY) for tests in ((), (few,), (few, many))]
    assert shares == sorted(shares)
    assert shares[-1] < 0.9
    assert known(catalogue, lot=primed).cautions(MONDAY) == (Caution.PRIMED,)


def test_that_seeds_are_counted_anew_when_a_test_is_logged(forecaster):
    before = seeds(forecaster)
    after = seeds(forecaster, test_of("T-1", 10, 50))
    assert after > before
    assert seeds(forecaster) == before


def test_that_a_growers_own_share_stands_over_the_lot(forecaster):
    own = dataclasses.replace(BATCH, germination_share=0.5)
    assert seeds(forecaster, test_of("T-1", 1, 50), batch=own) == seeds(forecaster, batch=own)


@pytest.mark.parametrize("primed", [False, True])
def test_that_the_answer_to_why_is_the_arithmetic(forecaster, primed):
    lot = dataclasses.replace(LOT, primed=primed)
    asked = farm(test_of("T-1", 30, 50), lot=lot)
    subject = Subject(kind=SubjectKind.SEEDS, about=BATCH.id)
    answer = why(subject, asked, forecaster.forecast(asked), forecaster)
    assert answer.input("germination_share").origin is Origin.WORKED_OUT
    (child,) = (one for one in answer.children if "germination" in one.title)
    assert recomputed(child) == pytest.approx(child.value)
    assert child.value == pytest.approx(answer.input("germination_share").value)
    assert {note.kind for note in child.notes} == {NoteKind.PRIMED_SEED if primed else NoteKind.LOT_COUNTS}
    assert (child.formula is Formula.LOT_SHARE_CAREFUL) is primed


def test_that_the_order_list_reckons_with_the_same_share(catalogue, forecaster):
    asked = farm(test_of("T-1", 20, 50))
    (line,) = (
        line for line in order_list(asked, forecaster.forecast(asked), catalogue) if line.detail == "LOT-9"
    )
    assert line.germination_share == pytest.approx(known(catalogue, test_of("T-1", 20, 50)).mean)


@given(st.floats(0.01, 0.99), st.integers(1, 500), st.integers(0, 500), st.data())
def test_that_counting_draws_the_share_toward_what_was_seen(prior, prior_seeds, seeds_counted, data):
    came_up = data.draw(st.integers(0, seeds_counted))
    mean, deviation = share_after_counts(
        prior, prior_seeds=float(prior_seeds), came_up=float(came_up), seeds=float(seeds_counted)
    )
    seen = came_up / seeds_counted if seeds_counted else prior
    assert min(prior, seen) - 1e-12 <= mean <= max(prior, seen) + 1e-12
    assert deviation <= math.sqrt(0.25 / (prior_seeds + seeds_counted + 1)) + 1e-12
