"""How a farm changes: sets of single changes that can be applied, and turned round to undo them."""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass

from planner.farm.farm import SETTINGS_KIND, Farm, Settings, Thing, kind_of, replace_things, things
from planner.farm.fields import Id


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """One thing put in (`before` is None), taken out (`after` is None), or altered.

    `index` is where a thing taken out stood among its kind, so that undo puts it back there;
    None puts a new thing last.
    """

    before: Thing | None = None
    after: Thing | None = None
    index: int | None = None

    def __post_init__(self) -> None:
        """Refuse a change of nothing, of one thing into another, or of kind."""
        if self.before is None and self.after is None:
            raise ValueError("a change needs a before or an after")
        if (
            self.before is not None
            and self.after is not None
            and (self.before.id != self.after.id or type(self.before) is not type(self.after))
        ):
            raise ValueError("before and after of a change must be the same thing")

    @property
    def thing(self) -> Thing:
        """The thing after the change, or before it when it is taken out."""
        found = self.after if self.after is not None else self.before
        assert found is not None
        return found

    @property
    def word(self) -> str:
        """Word of the kind that is changed."""
        return kind_of(self.thing).word

    @property
    def id(self) -> Id:
        """Id of the thing that is changed."""
        return self.thing.id

    def turned(self) -> Change:
        """Return the change that takes this one back."""
        return Change(before=self.after, after=self.before, index=self.index)


@dataclass(frozen=True, slots=True, kw_only=True)
class ChangeSet:
    """What one act of the user changes, in order, under a title in the user's words."""

    title: str
    changes: tuple[Change, ...]

    def turned(self) -> ChangeSet:
        """Return the set that takes this one back, last change first."""
        return ChangeSet(title=self.title, changes=tuple(c.turned() for c in reversed(self.changes)))

    def ids(self, word: str) -> frozenset[Id]:
        """Return the ids of all things of one kind that the set touches."""
        return frozenset(change.id for change in self.changes if change.word == word)

    @property
    def words(self) -> frozenset[str]:
        """Words of the kinds that the set touches."""
        return frozenset(change.word for change in self.changes)


def with_places(farm: Farm, changes: tuple[Change, ...]) -> tuple[Change, ...]:
    """Return the changes with `index` filled in for everything they take out of `farm`.

    Positions are those at the moment each change is applied, one after the other.
    """
    order: dict[str, list[Id]] = {}
    filled = []
    for change in changes:
        ids = order.setdefault(change.word, [thing.id for thing in things(farm, change.word)])
        if change.before is None:
            position = len(ids) if change.index is None else change.index
            ids.insert(position, change.id)
            filled.append(Change(after=change.after, index=position))
        elif change.after is None:
            position = ids.index(change.id)
            del ids[position]
            filled.append(Change(before=change.before, index=position))
        else:
            filled.append(change)
    return tuple(filled)


def applied(farm: Farm, change_set: ChangeSet) -> Farm:
    """Return the farm after a set of changes.

    Raises `KeyError` when a thing to be altered or taken out is not there as `before` says.
    """
    by_word: dict[str, list[Change]] = {}
    for change in change_set.changes:
        by_word.setdefault(change.word, []).append(change)
    for word, changes in by_word.items():
        if word == SETTINGS_KIND.word:
            farm = _settings_replaced(farm, changes)
        else:
            farm = replace_things(farm, word, _applied_to(things(farm, word), changes))
    return farm


def _settings_replaced(farm: Farm, changes: list[Change]) -> Farm:
    after = changes[-1].after
    if not isinstance(after, Settings):
        raise KeyError("the settings of a farm cannot be taken out")
    return dataclasses.replace(farm, settings=after)


def _applied_to(many: tuple[Thing, ...], changes: list[Change]) -> tuple[Thing, ...]:
    now = list(many)
    where = {thing.id: position for position, thing in enumerate(now)}
    for change in changes:
        if change.before is None:
            if change.id in where:
                raise KeyError(f"{change.word} {change.id} is there already")
            position = len(now) if change.index is None else min(change.index, len(now))
            now.insert(position, change.thing)
            where = _moved(where, now, position)
            continue
        position = where[change.id]
        if now[position] != change.before:
            raise KeyError(f"{change.word} {change.id} is not as the change expects it")
        if change.after is None:
            del now[position]
            where = _moved(where, now, position)
        else:
            now[position] = change.after
    return tuple(now)


def _moved(where: dict[Id, int], now: list[Thing], position: int) -> dict[Id, int]:
    """Return the positions again, cheaply when only the end of the list has changed."""
    if position >= len(now) - 1 and len(where) == len(now) - 1:
        where[now[-1].id] = len(now) - 1
        return where
    return {thing.id: at for at, thing in enumerate(now)}
