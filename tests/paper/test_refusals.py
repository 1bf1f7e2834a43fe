"""Batches without a place are told of in a few lines, one for each batch."""

import pytest

from planner.farm.ids import id_from
from planner.farm.species import BedKind
from planner.paper.sentences import refusal_sentence, refusals_lines
from planner.planning.placement import Refusal, RefusalKind


def refusals(many: int) -> list[Refusal]:
    return [Refusal(kind=RefusalKind.LOCKED, batch=id_from(f"b{n}"), bed="Rafts") for n in range(many)]


def lines(many: int) -> list[str]:
    codes = {id_from(f"b{n}"): f"BAS-{n}" for n in range(many)}
    return list(refusals_lines([*refusals(many), *refusals(many)], codes))


def test_that_a_batch_is_told_once():
    assert lines(0) == []
    assert lines(2) == [f"BAS-{n} is locked and stays where it is." for n in range(2)]
    assert len(lines(3)) == 3


def test_that_many_are_summed_up():
    assert lines(4)[3:] == ["and 1 more batch without a place"]
    assert lines(40)[3:] == ["and 37 more batches without a place"]


def test_that_a_unit_is_called_by_its_name():
    refusal = Refusal(
        kind=RefusalKind.NO_SUCH_UNIT, batch=id_from("b"), bed="Bench", unit=9, bed_kind=BedKind.NURSERY
    )
    assert refusal_sentence(refusal, "BAS-1") == 'BAS-1 cannot stand there: "Bench" has no tray 9.'


@pytest.mark.parametrize("kind", RefusalKind)
def test_that_every_refusal_has_a_sentence(kind):
    said = refusal_sentence(Refusal(kind=kind, batch=id_from("b"), bed="Rafts", blocking=("LTL-2",)), "BAS-1")
    assert said.startswith("BAS-1 ")
    assert "{" not in said
