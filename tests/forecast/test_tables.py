"""The table that is brought up to date, against one made afresh, over many runs of edits."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.catalogue.loading import shipped_catalogue
from planner.forecast import tables
from planner.forecast.engine import Forecaster
from tests.farms import SITE, batch_of, farm_of, places_of

CATALOGUE = shipped_catalogue()
SEASONAL = dataclasses.replace(SITE, air_c=(8.0, 9, 11, 14, 18, 22, 24, 24, 20, 16, 11, 8), latitude_deg=48.0)
ACTS = st.lists(
    st.tuples(
        st.sampled_from(
            (
                "sow",
                "drop",
                "delay",
                "place",
                "clear",
                "swap",
                "turn round",
                "empty",
                "fresh copies",
                "nothing",
            )
        ),
        st.integers(0, 30),
    ),
    min_size=1,
    max_size=8,
)
COLUMNS = ("profile", "crop", "loop", "sow_day", "ends", "plants", "ripe", "seeds", "area_m2")


def after(farm, act, number):
    """Return a farm after one act on it."""
    batches, placements = farm.batches, farm.placements
    row = number % len(batches) if batches else 0
    match act:
        case "sow":
            crop = ("lettuce-butterhead", "basil", "okra")[number % 3]
            new = batch_of(
                f"N-{number}-{len(batches)}-{id(farm)}", crop=crop, plants=1 + number, bed_days=None
            )
            batches = (*batches[:row], new, *batches[row:])
        case "drop" if batches:
            placements = tuple(place for place in placements if place.batch != batches[row].id)
            batches = (*batches[:row], *batches[row + 1 :])
        case "delay" if batches:
            late = dataclasses.replace(batches[row], sow_on=batches[row].sow_on + timedelta(days=number))
            batches = (*batches[:row], late, *batches[row + 1 :])
        case "place" if batches:
            kept = tuple(place for place in placements if place.batch != batches[row].id)
            placements = (*kept, places_of(batches[row], unit=1 + number % 4, count=max(number, 1)))
        case "clear":
            placements = placements[: number % 2]
        case "swap" if len(batches) > 1:
            batches = (batches[1], batches[0], *batches[2:])
        case "turn round":
            batches, placements = batches[::-1], placements[::-1]
        case "empty":
            batches, placements = (), ()
        case "copy":
            batches = tuple(dataclasses.replace(batch) for batch in batches)
    known = {batch.id for batch in batches}
    placements = tuple(place for place in placements if place.batch in known)
    return dataclasses.replace(farm, batches=batches, placements=placements)


@given(acts=ACTS, many=st.integers(0, 6), seasonal=st.booleans())
def test_that_whatever_is_edited_the_kept_table_is_that_of_a_fresh_start(acts, many, seasonal):
    batches = tuple(
        batch_of(f"B-{number}", sow_on=batch_of().sow_on + timedelta(days=4 * number))
        for number in range(many)
    )
    places = tuple(places_of(batch, unit=1 + row % 4) for row, batch in enumerate(batches[:3]))
    farm = farm_of(batches=batches, placements=places, sites=(SEASONAL,) if seasonal else (SITE,))
    forecaster = Forecaster(CATALOGUE)
    forecaster.preview(farm)
    for act, number in acts:
        farm = after(farm, act, number)
        kept, fresh = forecaster.preview(farm), Forecaster(CATALOGUE).preview(farm)
        assert kept.batches.ids == fresh.batches.ids
        assert kept.batches.row_of == fresh.batches.row_of
        assert_alike(kept, fresh)


def assert_alike(kept, fresh):
    """Hold two forecasts against each other; profiles and crops may be numbered otherwise."""
    one, other = kept.batches, fresh.batches
    for name in COLUMNS[2:]:
        assert np.array_equal(getattr(one, name), getattr(other, name)), name
    assert [kept.profiles[n] for n in one.profile] == [fresh.profiles[n] for n in other.profile]
    assert [kept.crops[n] for n in one.crop] == [fresh.crops[n] for n in other.crop]
    for mine, theirs in zip(kept.loops, fresh.loops, strict=True):
        assert np.allclose(mine.demand_g, theirs.demand_g, rtol=1e-5, atol=1e-12)
        assert np.allclose(mine.planted_m2, theirs.planted_m2)


def test_that_a_forecast_broken_off_leaves_nothing_behind_that_is_gone_on_from():
    farm = farm_of(batches=(batch_of(), batch_of("B-2")))
    forecaster = Forecaster(CATALOGUE)
    forecaster.preview(farm)
    wrong = dataclasses.replace(farm, batches=(farm.batches[0], batch_of("B-3", crop="no such crop")))
    placed = dataclasses.replace(wrong, placements=(places_of(farm.batches[0], unit=2, count=3),))
    with pytest.raises(KeyError):
        forecaster.preview(placed)
    assert_alike(forecaster.preview(farm), Forecaster(CATALOGUE).preview(farm))


def test_that_rows_that_did_not_change_are_not_worked_out_again(monkeypatch):
    rows = []
    build = tables.build_table

    def counted(farm, *args, **kwargs):
        rows.append(len(farm.batches))
        return build(farm, *args, **kwargs)

    monkeypatch.setattr(tables, "build_table", counted)
    batches = tuple(batch_of(f"B-{number}") for number in range(20))
    forecaster = Forecaster(CATALOGUE)
    forecaster.preview(farm_of(batches=batches))
    forecaster.preview(farm_of(batches=(*batches[:9], *batches[10:])))
    forecaster.preview(farm_of(batches=(*batches, batch_of("NEW"))))
    assert rows == [20, 0, 2]
