"""Lets the lanes of feed and balance be asked why: the right button offers the numbers of the week under it.

With keys the same numbers are asked in the side panel, which shows them while nothing is chosen.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from PySide6.QtCore import QObject

from planner.desk.asking import Asking
from planner.desk.behind import Behind
from planner.desk.lanes.hand import Hand
from planner.desk.lanes.lanes_view import LanesView
from planner.desk.pages import Fact
from planner.desk.say import tr
from planner.desk.why.drawn import WhyMenu
from planner.desk.words import number_words, with_unit
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.forecast.why.values import Subject, SubjectKind

_G_PER_KG = 1000.0


class LaneAsking(QObject):
    """Listens to the right button on two of the lanes."""

    def __init__(self, lanes: LanesView, asking: Asking) -> None:
        super().__init__(lanes)
        self._lanes, self._asking = lanes, asking
        lanes.fish.menu_wanted.connect(self._on_fish)
        lanes.balance.menu_wanted.connect(self._on_balance)

    def _week(self, behind: Behind, hand: Hand) -> int | None:
        """Return the week under the hand, None over the names and outside the plan."""
        scale = self._lanes.time.scale
        if hand.at.x() < scale.left:
            return None
        on = date.fromordinal(scale.whole_day_at(hand.at.x()))
        return behind.outlook.week_of(on) if behind.outlook.covers(on) else None

    def _on_fish(self, hand: Hand) -> None:
        behind = self._asking.behind
        week = self._week(behind, hand) if behind is not None else None
        if behind is not None and week is not None:
            WhyMenu(self._lanes.fish, fish_facts(behind, week)).popup(hand.on_screen)

    def _on_balance(self, hand: Hand) -> None:
        behind, shown = self._asking.behind, self._lanes.balance.shown
        week = self._week(behind, hand) if behind is not None else None
        if behind is not None and week is not None and shown is not None:
            WhyMenu(self._lanes.balance, balance_facts(behind, shown.loop, week)).popup(hand.on_screen)


def balance_facts(behind: Behind, loop: Id, week: int) -> tuple[Fact, ...]:
    """Return what can be asked of a loop in a week: feed, areas and every element."""
    from planner.desk.week_facts import loop_section

    return loop_section(behind, loop, "", week).facts


def fish_facts(behind: Behind, week: int) -> tuple[Fact, ...]:
    """Return what can be asked of all fish in a week: feed of each loop, feed and mass of each group."""
    return tuple(_of_fish(behind, week))


def _of_fish(behind: Behind, week: int) -> Iterator[Fact]:
    from planner.desk.week_facts import feed_fact

    first = week * DAYS_PER_WEEK
    for loop in behind.outlook.forecast.loops:
        yield feed_fact(loop.name, loop.loop, behind.outlook.verdicts[loop.loop][week])
        for group in loop.groups:
            if group.count[first] <= 0:
                continue
            grams = float(group.feed_g[first : first + DAYS_PER_WEEK].mean())
            said = tr("{grams} g a day", grams=number_words(grams, digits=0))
            ask = Subject(kind=SubjectKind.GROUP_FEED, about=group.group, week=week)
            yield Fact(label=group.name, value=said, ask=ask)
            mass = float(group.biomass_g[first]) / _G_PER_KG
            ask = Subject(kind=SubjectKind.GROUP_MASS, about=group.group, day=first)
            yield Fact(label=group.name, value=with_unit(mass, "kg", digits=1), ask=ask)
