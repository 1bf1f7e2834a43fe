"""Scenarios as values: a name and the change sets that lead from the base to it. The base is never touched.

Must know nothing of forecasts.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from typing import Final

from planner.farm.changes import Change, ChangeSet, applied, with_places
from planner.farm.checks import where_of
from planner.farm.farm import KINDS, SETTINGS_KIND, Farm, by_id, things
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.farm.ids import id_from

MOST: Final = 3
"""Scenarios beside the base."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Scenario:
    """A name, and what is changed, in order."""

    name: str
    change_sets: tuple[ChangeSet, ...] = ()

    def farm(self, base: Farm) -> Farm:
        """Return the changed farm; raises `KeyError` when the base is no longer as the changes expect it."""
        for change_set in self.change_sets:
            base = applied(base, change_set)
        return base

    def with_change(self, change_set: ChangeSet) -> Scenario:
        """Return the scenario with one more change."""
        return replace(self, change_sets=(*self.change_sets, change_set))


@dataclass(frozen=True, slots=True, kw_only=True)
class Scenarios:
    """The scenarios that are kept beside a base, in the order they were made."""

    kept: tuple[Scenario, ...] = ()

    def with_scenario(self, scenario: Scenario) -> Scenarios:
        """Return the scenarios with one more, or with the one of that name replaced.

        Raises `FarmFaultError` for a name that is empty, and for one more than there may be.
        """
        if not scenario.name.strip():
            raise FarmFaultError((_fault("name", "", "a scenario needs a name."),))
        names = [one.name for one in self.kept]
        if scenario.name in names:
            kept = list(self.kept)
            kept[names.index(scenario.name)] = scenario
            return Scenarios(kept=tuple(kept))
        if len(self.kept) >= MOST:
            words = f"{MOST} scenarios are kept beside the farm already: {', '.join(names)}."
            raise FarmFaultError((_fault("scenario", scenario.name, words, str(MOST)),))
        return Scenarios(kept=(*self.kept, scenario))

    def without(self, name: str) -> Scenarios:
        """Return the scenarios with one dropped; dropping what is not there changes nothing."""
        return Scenarios(kept=tuple(one for one in self.kept if one.name != name))

    def named(self, name: str) -> Scenario:
        """Return one scenario; raises `KeyError` when there is none of that name."""
        for one in self.kept:
            if one.name == name:
                return one
        raise KeyError(name)


def _fault(field: str, value: str, message: str, limit: str = "") -> Fault:
    kind = FaultKind.TOO_LARGE if limit else FaultKind.MISSING
    return Fault(
        kind=kind,
        where="scenarios",
        field=field,
        value=value,
        limit=limit,
        message=message,
        remedy="Adopt or drop one of them first." if limit else "Give it one.",
    )


def adopted(base: Farm, scenario: Scenario) -> ChangeSet:
    """Return the one act that makes the base what the scenario is, to be undone as one.

    Things that end as they began are left out.
    """
    return ChangeSet(title=f"Adopt {scenario.name}", changes=changes_between(base, scenario.farm(base)))


def scenario_of(name: str, base: Farm, other: Farm) -> Scenario:
    """Return the scenario that makes one farm of another, told apart by the ids of their things."""
    changes = changes_between(base, other)
    return Scenario(name=name, change_sets=(ChangeSet(title=name, changes=changes),) if changes else ())


def changes_between(base: Farm, other: Farm) -> tuple[Change, ...]:
    """Return the changes from one farm to another: out, dependants first; altered; in, owners first.

    Things come out in the order of `other` where what is new stands last there.
    """
    gone: list[Change] = []
    altered: list[Change] = []
    added: list[Change] = []
    for kind in (SETTINGS_KIND, *KINDS):
        before, after = by_id(things(base, kind.word)), by_id(things(other, kind.word))
        if kind is SETTINGS_KIND:
            # A farm has one of these, so they are the same thing whatever they are called inside.
            after = {base.settings.id: replace(other.settings, id=base.settings.id)}
        lost = [Change(before=thing) for key, thing in before.items() if key not in after]
        gone[:0] = reversed(lost)
        altered += [
            Change(before=thing, after=after[key])
            for key, thing in before.items()
            if key in after and after[key] != thing
        ]
        added += [Change(after=thing) for key, thing in after.items() if key not in before]
    return with_places(base, (*gone, *altered, *added))


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """One thing that a scenario adds, takes out or alters: the word for its kind, and which of its fields."""

    kind: str
    where: str
    what: str
    fields: tuple[tuple[str, str, str], ...] = ()


def differences(changes: tuple[Change, ...]) -> tuple[Difference, ...]:
    """Return what changes do, thing by thing: field, value before, value after."""
    found = []
    for change in changes:
        what = "taken out" if change.after is None else "added" if change.before is None else "altered"
        found.append(
            Difference(kind=change.word, where=where_of(change.thing), what=what, fields=_fields(change))
        )
    return tuple(found)


def _fields(change: Change) -> tuple[tuple[str, str, str], ...]:
    before, after = change.before, change.after
    if before is None or after is None:
        return ()
    names = [name for name in type(before).__dataclass_fields__ if name != "id"]
    return tuple(
        (name, _said(getattr(before, name)), _said(getattr(after, name)))
        for name in names
        if getattr(before, name) != getattr(after, name)
    )


def _said(value: object) -> str:
    if isinstance(value, date):
        return value.isoformat()
    return "" if value is None else str(getattr(value, "value", value))


def group_lost(farm: Farm, group: Id, *, on: date) -> ChangeSet:
    """Return the change in which all fish of a group are dead or gone from a day on."""
    lost: FishGroup = by_id(farm.fish_groups)[group]
    ends = [event for event in farm.fish_events if event.group == group and event.on >= on]
    event = FishEvent(
        id=id_from("scenario", "lost", group, on.isoformat()),
        group=group,
        on=on,
        kind=FishEventKind.DEATHS,
        count=lost.count,
    )
    changes = (*(Change(before=one) for one in reversed(ends)), Change(after=event))
    return ChangeSet(title=f"Lose {lost.name}, {on.isoformat()}", changes=with_places(farm, changes))
