"""The trace of a batch or a lot: one step back, one step forward, on one page."""

import json
from dataclasses import replace
from datetime import timedelta

import pytest

from planner.bootstrap import Means
from planner.farm.crops import SeedLot
from planner.farm.ids import id_from
from planner.paper.qt_writer import laid_out
from planner.paper.style import A4, LETTER
from planner.paper.trace import NothingTracedError, trace_data, trace_lines, trace_of, trace_report
from planner.shipped import shipped_path
from tests.paper.helpers import ARABIC, EMOJI, NAME_120, PRINTED

LOT = "LOT-7"


@pytest.fixture(scope="module")
def ground():
    means = Means()
    farm = means.read(shipped_path("sample_data", "school-kitchen.toml")).farm
    lot = SeedLot(id=id_from("lot"), code=LOT, crop="lettuce-leaf")
    batches = tuple(
        replace(batch, seed_lot=lot.id) if batch.crop == "lettuce-leaf" else batch for batch in farm.batches
    )
    farm = replace(farm, seed_lots=(lot,), batches=batches)
    return means, farm, means.forecaster.preview(farm)


def test_that_a_batch_leads_to_lot_places_harvest_and_readings(ground):
    _, farm, forecast = ground
    batch = next(batch for batch in farm.batches if batch.seed_lot)
    data = trace_data(trace_of(farm, forecast, batch.code.lower()))
    (one,) = data["batches"]
    assert (one["batch"], one["lot"], one["sown_on"]) == (batch.code, LOT, batch.sow_on.isoformat())
    assert one["places"][0]["phase"] == "nursery"
    assert one["places"][-1]["phase"] == "bed"
    assert one["expected_harvest"][0] >= one["places"][-1]["from"]
    begins, ends = one["places"][-1]["from"], one["places"][-1]["until"]
    wanted = [r for r in farm.readings if begins <= r.on.isoformat() < ends]
    assert len(one["readings"]) == len(wanted)
    json.dumps(data)


def test_that_a_lot_leads_to_every_batch_sown_of_it(ground):
    _, farm, forecast = ground
    trace = trace_of(farm, forecast, LOT)
    assert trace.is_lot
    assert [one.batch.code for one in trace.batches] == [b.code for b in farm.batches if b.seed_lot]


def test_that_readings_of_the_days_in_the_bed_are_summed_up(ground):
    _, farm, forecast = ground
    batch = farm.batches[30]
    stand = trace_of(farm, forecast, batch.code).batches[0].stands[-1]
    loop = next(bed.loop for bed in farm.beds if bed.id == batch.bed)
    ph = farm.readings[0]
    more = tuple(
        replace(
            ph, id=f"r{number}", loop=loop, on=stand.from_on + timedelta(days=number), value=6.5 + number / 10
        )
        for number in (-1, 0, 1, 2)
    )
    found = trace_of(replace(farm, readings=more), forecast, batch.code).batches[0]
    assert [reading.value for line in found.water for reading in line.readings] == [6.5, 6.6, 6.7]
    text = "\n".join(trace_lines(trace_of(replace(farm, readings=more), forecast, batch.code)))
    assert "3 readings, 6.5 to 6.7, last 6.7 on" in text


@pytest.mark.parametrize("paper", [A4, LETTER])
@pytest.mark.parametrize("name", ["", NAME_120, ARABIC, EMOJI, "=1+1", "<b>", "../../x"])
def test_that_a_batch_fits_one_page_whatever_its_names(qapp, ground, paper, name):
    means, farm, forecast = ground
    batch = replace(farm.batches[0], variety=name, notes=name)
    loops = tuple(replace(loop, name=name or loop.name) for loop in farm.loops)
    farm = replace(farm, batches=(batch, *farm.batches[1:]), loops=loops)
    trace = trace_of(farm, forecast, batch.code)
    report = trace_report(trace, farm, means.forecaster.catalogue, printed_on=PRINTED)
    assert len(laid_out(report, paper)) == 1


def test_that_an_unknown_code_is_told(ground):
    _, farm, forecast = ground
    with pytest.raises(NothingTracedError):
        trace_of(farm, forecast, "magic")
