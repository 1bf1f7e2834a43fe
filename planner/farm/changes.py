"""How a farm changes: sets of single changes that can be applied, and turned round to undo them."""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass
from itertools import compress, count, repeat
from operator import is_
from typing import Final

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
        if change.word not in order:
            order[change.word] = [thing.id for thing in things(farm, change.word)]
        ids = order[change.word]
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
    if changes[0].before not in (None, farm.settings):
        raise KeyError("the settings are not as the change expects them")
    after = changes[-1].after
    if not isinstance(after, Settings):
        raise KeyError("the settings of a farm cannot be taken out")
    return dataclasses.replace(farm, settings=after)


def _applied_to(many: tuple[Thing, ...], changes: list[Change]) -> tuple[Thing, ...]:
    line = _Line(many)
    for change in changes:
        if change.before is None:
            line.put_in(change)
        else:
            line.replace(change)
    return tuple(line.now)


class _Line:
    """The things of one kind while changes are applied; finds them without going through all each time.

    A drag applies a few changes to tens of thousands of things at every move of the mouse, so the first
    few are looked for one by one, and tables are only made for what needs them.
    """

    def __init__(self, many: tuple[Thing, ...]) -> None:
        self.now = list(many)
        self._ids: set[Id] | None = None
        self._where: dict[Id, int] | None = None
        self._looked_for = 0

    def put_in(self, change: Change) -> None:
        if self._ids is None:
            self._ids = {thing.id for thing in self.now}
        if change.id in self._ids:
            raise KeyError(f"{change.word} {change.id} is there already")
        last = len(self.now)
        position = last if change.index is None else min(change.index, last)
        self.now.insert(position, change.thing)
        self._ids.add(change.id)
        if position < last:
            self._where = None
        elif self._where is not None:
            self._where[change.id] = position

    def replace(self, change: Change) -> None:
        position = self._position(change)
        if self.now[position] != change.before:
            raise KeyError(f"{change.word} {change.id} is not as the change expects it")
        if change.after is None:
            del self.now[position]
            if self._ids is not None:
                self._ids.remove(change.id)
            self._where = None
        else:
            self.now[position] = change.after

    def _position(self, change: Change) -> int:
        """Return where the thing stands: where the change says, or as looked up."""
        said = change.index
        if said is not None and said < len(self.now) and self.now[said].id == change.id:
            return said
        self._looked_for += 1
        if self._where is None and self._looked_for <= _FEW:
            very_same = compress(count(), map(is_, self.now, repeat(change.before)))
            position = next(very_same, None)
            if position is not None:
                return position
        if self._where is None:
            self._where = {thing.id: at for at, thing in enumerate(self.now)}
        return self._where[change.id]


_FEW: Final = 4
"""So many things are looked for one by one before a table of all is made."""
