"""Days to pixels and back, steps of zoom, and what a ruler counts."""

import itertools
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.desk.lanes.time_scale import (
    FIRST_DAY,
    LAST_DAY,
    ZOOM_STEPS,
    Span,
    TimeScale,
    Unit,
    first_of,
    fitting,
    narrower,
    next_of,
    rows_for,
    units_in,
    week_number,
    week_start_of,
    wider,
)

DAYS = st.integers(date(2000, 1, 1).toordinal(), date(2090, 1, 1).toordinal())
PX = st.floats(ZOOM_STEPS[0], ZOOM_STEPS[-1])
LEFT = st.floats(0, 500)
SCALES = st.builds(TimeScale, origin=st.floats(730_000, 760_000), px_per_day=PX, left=LEFT)


@given(scale=SCALES, day=DAYS)
def test_that_a_day_comes_back_from_its_x(scale, day):
    assert scale.day_at(scale.x_of(day)) == pytest.approx(day, abs=1e-5)
    assert scale.whole_day_at(scale.x_of(day + 0.5)) == day


@given(scale=SCALES, day=DAYS)
def test_that_later_days_lie_further_right(scale, day):
    assert scale.x_of(day) < scale.x_of(day + 1)


@given(scale=SCALES, x=st.floats(0, 3000), px=PX)
def test_that_zooming_keeps_the_day_under_the_pointer(scale, x, px):
    assert scale.zoomed(px, around_x=x).day_at(x) == pytest.approx(scale.day_at(x), abs=1e-5)


@given(scale=SCALES, pixels=st.integers(-5000, 5000))
def test_that_scrolling_there_and_back_shows_the_same_days(scale, pixels):
    back = scale.scrolled(pixels).scrolled(-pixels)
    assert back.origin == pytest.approx(scale.origin, abs=1e-6)
    assert scale.scrolled(pixels).x_of(0) == pytest.approx(scale.x_of(0) - pixels, abs=1e-2)


@given(scale=SCALES, width=st.floats(10, 3000))
def test_that_the_span_covers_the_width_and_no_more(scale, width):
    span = scale.span(width)
    assert scale.x_of(span.start) <= scale.left + 1e-3
    assert scale.x_of(span.end) >= scale.left + width - 1e-3
    assert scale.x_of(span.end - 1) < scale.left + width + 1e-3


def test_that_an_x_far_outside_still_gives_a_date_a_farm_may_name():
    scale = TimeScale(origin=float(FIRST_DAY), px_per_day=0.45)
    assert scale.date_at(-1e9).toordinal() == FIRST_DAY
    assert scale.date_at(1e9).toordinal() == LAST_DAY


@given(day=DAYS, from_sunday=st.booleans())
def test_that_a_week_begins_on_its_first_weekday_and_holds_the_day(day, from_sunday):
    start = week_start_of(day, from_sunday=from_sunday)
    assert date.fromordinal(start).isoweekday() == (7 if from_sunday else 1)
    assert start <= day < start + 7


@given(day=DAYS)
def test_that_a_week_from_monday_has_its_iso_number(day):
    start = week_start_of(day)
    assert week_number(start) == date.fromordinal(day).isocalendar().week


@given(day=DAYS)
def test_that_a_week_from_sunday_has_the_number_of_the_monday_in_it(day):
    start = week_start_of(day, from_sunday=True)
    assert week_number(start, from_sunday=True) == date.fromordinal(start + 1).isocalendar().week


@given(unit=st.sampled_from(Unit), day=DAYS, length=st.integers(1, 900), from_sunday=st.booleans())
def test_that_units_follow_each_other_without_gap_and_cover_a_span(unit, day, length, from_sunday):
    found = list(units_in(unit, Span(start=day, end=day + length), from_sunday=from_sunday))
    assert found[0].start <= day
    assert found[-1].end >= day + length
    assert all(one.end == other.start for one, other in itertools.pairwise(found))


@pytest.mark.parametrize(
    ("unit", "first", "following"),
    [
        (Unit.DAY, date(2028, 2, 29), date(2028, 3, 1)),
        (Unit.WEEK, date(2028, 2, 28), date(2028, 3, 6)),
        (Unit.MONTH, date(2028, 2, 1), date(2028, 3, 1)),
        (Unit.QUARTER, date(2028, 1, 1), date(2028, 4, 1)),
        (Unit.YEAR, date(2028, 1, 1), date(2029, 1, 1)),
    ],
)
def test_that_a_leap_day_lies_in_its_units(unit, first, following):
    start = first_of(unit, date(2028, 2, 29).toordinal())
    assert date.fromordinal(start) == first
    assert date.fromordinal(next_of(unit, start)) == following


def test_that_nothing_is_counted_beyond_the_dates_a_farm_may_name():
    days = list(units_in(Unit.DAY, Span(start=FIRST_DAY - 50, end=FIRST_DAY + 2)))
    assert days[0].start == FIRST_DAY
    assert list(units_in(Unit.YEAR, Span(start=FIRST_DAY - 900, end=FIRST_DAY - 800))) == []


def test_that_zoom_steps_go_up_and_down_and_stop_at_the_ends():
    for narrow, wide in itertools.pairwise(ZOOM_STEPS):
        assert wider(narrow) == wide
        assert narrower(wide) == narrow
    assert wider(ZOOM_STEPS[-1]) == ZOOM_STEPS[-1]
    assert narrower(ZOOM_STEPS[0]) == ZOOM_STEPS[0]


def test_that_five_years_fit_a_window_at_the_narrowest_step():
    five_years = date(2031, 1, 1) - date(2026, 1, 1)
    assert five_years / timedelta(days=1) * ZOOM_STEPS[0] < 900


@given(days=st.integers(1, 4000), width=st.floats(100, 3000))
def test_that_a_fitted_day_is_never_outside_the_zoom_steps(days, width):
    px = fitting(days, width)
    assert ZOOM_STEPS[0] <= px <= ZOOM_STEPS[-1]
    if ZOOM_STEPS[0] < px < ZOOM_STEPS[-1]:
        assert px * days == pytest.approx(width)


def test_that_finer_units_are_counted_as_days_get_wider():
    order = [Unit.DAY, Unit.WEEK, Unit.MONTH, Unit.QUARTER, Unit.YEAR]
    seen = [order.index(rows_for(px).lower) for px in ZOOM_STEPS]
    assert seen == sorted(seen, reverse=True)
    assert rows_for(ZOOM_STEPS[-1]).lower is Unit.DAY
    assert rows_for(7.0).middle is Unit.WEEK
