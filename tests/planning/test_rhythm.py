"""Days of work, rules of calendars, codes and seeds."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.codes import Codes
from planner.farm.faults import FarmFaultError
from planner.planning.rhythm import MOST_DAYS, WorkDays, rule_days
from planner.planning.seeding import LossRule, SeedRule, plants_of, seeding_for

JANUARY, DECEMBER = date(2027, 1, 1), date(2027, 12, 31)
SHARES = st.floats(0.05, 1.0)


def test_that_a_rule_falls_on_its_days_within_the_span():
    found = rule_days("RRULE:FREQ=WEEKLY;BYDAY=TH", from_on=date(2027, 3, 1), until_on=date(2027, 11, 30))
    assert found[0] == date(2027, 3, 4)
    assert found[-1] == date(2027, 11, 25)
    assert {day.weekday() for day in found} == {3}
    assert len(found) == 39


def test_that_a_rule_without_a_day_counts_from_the_first():
    assert rule_days("freq=daily;interval=10;count=3", from_on=JANUARY, until_on=DECEMBER) == tuple(
        JANUARY + timedelta(days=days) for days in (0, 10, 20)
    )


@pytest.mark.parametrize(
    "rule",
    [
        "",
        "every thursday",
        "FREQ=HOURLY",
        "FREQ=WEEKLY;BYDAY=XX",
        "FREQ=WEEKLY\nDTSTART:20270101",
        "BYDAY=TH",
        "FREQ=WEEKLY;INTERVAL=0",
        "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=31;X=1",
    ],
)
def test_that_a_rule_that_cannot_be_read_is_named(rule):
    with pytest.raises(FarmFaultError, match="rule is"):
        rule_days(rule, from_on=JANUARY, until_on=DECEMBER)


def test_that_a_rule_on_too_many_days_is_refused():
    with pytest.raises(FarmFaultError, match=str(MOST_DAYS)):
        rule_days("FREQ=DAILY", from_on=JANUARY, until_on=date(2060, 1, 1))


def test_that_a_week_needs_a_day_of_work():
    with pytest.raises(FarmFaultError, match="at least one day"):
        WorkDays(closed_weekdays=frozenset(range(7)))


@given(
    closed=st.frozensets(st.integers(0, 6), max_size=6),
    holidays=st.frozensets(st.dates(JANUARY, DECEMBER), max_size=5),
    on=st.dates(JANUARY, DECEMBER),
)
def test_that_the_day_of_work_before_is_the_last_open_one(closed, holidays, on):
    work = WorkDays(closed_weekdays=closed, closed_on=holidays)
    found = work.on_or_before(on, at_most_days=60)
    assert found is not None
    assert work.is_open(found)
    assert not any(work.is_open(found + timedelta(days=n)) for n in range(1, (on - found).days + 1))


def test_that_no_day_of_work_in_reach_is_none():
    work = WorkDays(closed_on=frozenset(JANUARY + timedelta(days=n) for n in range(9)))
    assert work.on_or_before(date(2027, 1, 8), at_most_days=7) is None


def test_that_codes_count_up_past_the_alphabet():
    codes = Codes(())
    given_out = [codes.give("LTB", date(2027, 1, 4)) for _ in range(28)]
    assert given_out[0] == "LTB-27W01-A"
    assert given_out[-1] == "LTB-27W01-AB"
    assert len(set(given_out)) == 28
    assert codes.give("LTB", date(2027, 1, 1)) == "LTB-26W53-A"


@given(
    plants=st.integers(1, 5000),
    germination=SHARES,
    survival=SHARES,
    per_pot=st.integers(1, 12),
    per_tray=st.integers(0, 300),
    fill=st.booleans(),
)
def test_that_seeds_fill_whole_pots_and_are_enough(plants, germination, survival, per_pot, per_tray, fill):
    rule = SeedRule(
        germination=germination, survival=survival, per_pot=per_pot, per_tray=per_tray, fill_trays=fill
    )
    found = seeding_for(plants, rule)
    assert found.seeds == found.pots * per_pot == found.seeds_needed + found.spare_seeds
    assert found.seeds * germination * survival >= plants * (1 - 1e-9)
    assert plants_of(found.seeds, rule) >= plants
    if per_tray:
        assert found.pots + found.spare_cells == found.trays * per_tray
        assert found.spare_cells < per_tray
        assert not (fill and found.spare_cells)


def test_that_the_allowance_rule_is_told_and_gives_its_own_number():
    rule = SeedRule(germination=0.8, survival=0.9, rule=LossRule.ADD, allowance=1.2)
    found = seeding_for(100, rule)
    assert (found.seeds, found.rule.rule) == (150, LossRule.ADD)
    assert plants_of(150, rule) == 100
