"""Who is told about an act, and what they are told; listeners are never kept alive by it."""

from __future__ import annotations

import inspect
import weakref
from collections.abc import Callable
from dataclasses import dataclass

from planner.farm.changes import ChangeSet
from planner.store.acts import ActKind


@dataclass(frozen=True, slots=True, kw_only=True)
class Notice:
    """One act, once it is kept: what changed (turned, when undone), and who asked for it."""

    change_set: ChangeSet
    kind: ActKind = ActKind.DO
    initiator: str = ""


Listener = Callable[[Notice], None]
_Reference = Callable[[], Listener | None]


class Listeners:
    """Those who want to know; a bound method is forgotten along with its object."""

    def __init__(self) -> None:
        self._references: list[_Reference] = []
        self.telling = False

    def add(self, listener: Listener) -> None:
        """Tell `listener` from now on."""
        self._references.append(_reference(listener))

    def remove(self, listener: Listener) -> None:
        """Tell `listener` no longer."""
        self._references = [known for known in self._references if known() not in (None, listener)]

    def tell(self, notice: Notice) -> None:
        """Tell everybody once; when some of them fail, the others are still told before it is raised."""
        failed: list[Exception] = []
        self.telling = True
        try:
            for reference in tuple(self._references):
                failed.extend(_told(reference(), notice))
        finally:
            self.telling = False
        self._references = [known for known in self._references if known() is not None]
        if failed:
            raise failed[0]


def _reference(listener: Listener) -> _Reference:
    if inspect.ismethod(listener):
        return weakref.WeakMethod(listener)
    return _Kept(listener)


class _Kept:
    """A plain function, which has nobody to outlive."""

    def __init__(self, listener: Listener) -> None:
        self._listener = listener

    def __call__(self) -> Listener:
        return self._listener


def _told(listener: Listener | None, notice: Notice) -> list[Exception]:
    """Tell one listener and return how it failed, if it did."""
    if listener is not None:
        try:
            listener(notice)
        except Exception as error:  # noqa: BLE001 - raised again once everybody has been told
            return [error]
    return []
