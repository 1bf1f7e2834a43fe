"""Which acts of a farm are whose, where several people work on it at a time."""

from __future__ import annotations

from typing import Final

from planner.store.acts import KEPT_ACTS, ActEntry, ActState, By

ELSEWHERE: Final = "elsewhere"
"""Initiator of a notice about what somebody else did."""

_SAID_AT_MOST: Final = 3


def last_done(acts: tuple[ActEntry, ...], who: str | None) -> ActEntry | None:
    """Return the last act that stands, of one person or, when `who` is None, of anybody."""
    return next((each for each in reversed(acts) if each.state is ActState.DONE and _is_of(each, who)), None)


def first_undone(acts: tuple[ActEntry, ...], who: str | None) -> ActEntry | None:
    """Return the act that was undone last, of one person or, when `who` is None, of anybody."""
    return next((each for each in acts if each.state is ActState.UNDONE and _is_of(each, who)), None)


def _is_of(entry: ActEntry, who: str | None) -> bool:
    return who is None or entry.who == who


def acts_after(acts: tuple[ActEntry, ...], title: str, by: By) -> tuple[ActEntry, ...]:
    """Return the acts after a new one: as the store keeps them."""
    kept = tuple(each for each in acts if each.state is ActState.DONE or (by.shared and each.who != by.who))
    seq = kept[-1].seq + 1 if kept else 1
    entry = ActEntry(seq=seq, title=title, at=by.at, state=ActState.DONE, who=by.who)
    return (*kept, entry)[-KEPT_ACTS:]


def news_title(known: tuple[ActEntry, ...], now: tuple[ActEntry, ...]) -> str:
    """Return what others did in words: the names of the last few acts that are new or turned."""
    before = {(each.seq, each.title, each.at, each.state) for each in known}
    new = [each for each in now if (each.seq, each.title, each.at, each.state) not in before]
    said = [f"{each.who}: {each.title}" if each.who else each.title for each in new]
    return "; ".join(said[-_SAID_AT_MOST:])
