"""Keeps what each act moved and why, and puts it into words: nothing that is worked out changes silently.

Compares the outlook before an act with that after it. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final

from planner.desk.outlook import Outlook
from planner.desk.pages import Fact, Page, Section, Shifted
from planner.desk.say import tr
from planner.desk.words import field_words, kind_words, number_words, short_day_words
from planner.farm.changes import ChangeSet
from planner.farm.farm import Farm, by_id
from planner.forecast.why.values import Subject, SubjectKind
from planner.planning.moved import Cause, Dated, Milestone, MovedBecause, moved_because

_MOST_LISTED: Final = 400
"""So many batches are listed one by one; a page of more would take longer than the act itself."""

_MOST_NAMED: Final = 5


@dataclass(frozen=True, slots=True, kw_only=True)
class Move:
    """A batch whose first pick, or the day its places are free, is another than before, and why."""

    because: MovedBecause
    code: str
    old_on: date
    new_on: date

    @property
    def days(self) -> int:
        """By how many days it is later."""
        return (self.new_on - self.old_on).days


class Moves:
    """What the last act moved."""

    def __init__(self) -> None:
        self.latest: tuple[Move, ...] = ()
        self.title = ""

    def forget(self) -> None:
        """Begin with another farm."""
        self.latest, self.title = (), ""

    def note(self, before: Outlook | None, after: Outlook, act: ChangeSet) -> tuple[Move, ...]:
        """Keep what an act moved, also when it is taken back or done again, and return it."""
        self.title = act.title
        self.latest = (
            moves_between(before.forecast, after.forecast, after.farm, act) if before is not None else ()
        )
        return self.latest


def moves_between(before: Dated, after: Dated, farm: Farm, act: ChangeSet) -> tuple[Move, ...]:
    """Return the batches that an act moved, furthest first; what came or went is not one.

    `farm` is the farm after the act.
    """
    found = moved_because(before, after, act)
    if not found:
        return ()
    known = by_id(farm.batches)
    moves = [
        Move(
            because=each,
            code=known[each.moved.batch].code,
            old_on=each.moved.old_on,
            new_on=each.moved.new_on,
        )
        for each in found
        if each.moved.old_on is not None and each.moved.new_on is not None and each.moved.batch in known
    ]
    return tuple(sorted(moves, key=_furthest_first))


def named_words(moves: Sequence[Move]) -> str:
    """Return what an act moved and why: the furthest by name, the others by their number."""
    named = [f"{move.code} {change_words(move)}" for move in moves[:_MOST_NAMED]]
    rest = len(moves) - len(named)
    if rest > 0:
        named.append(tr("and {rest} more", rest=number_words(rest, digits=0)))
    causes = dict.fromkeys(cause_words(move.because) for move in moves)
    why = tr("Why: {causes}", causes="; ".join(causes))
    return "\n".join((tr("Moved: {moves}", moves="; ".join(named)), why))


def _furthest_first(move: Move) -> tuple[int, str]:
    return -abs(move.days), move.code


def change_words(move: Move) -> str:
    """Return the old day and the new one, such as "Wed 3 Mar → Wed 10 Mar"."""
    return f"{short_day_words(move.old_on)} → {short_day_words(move.new_on)}"


def days_words(move: Move) -> str:
    """Return by how much a batch moved, such as "7 days later"."""
    days = abs(move.days)
    many = tr("1 day") if days == 1 else tr("{days} days", days=days)
    return tr("{many} later", many=many) if move.days > 0 else tr("{many} earlier", many=many)


def cause_words(because: MovedBecause) -> str:
    """Return why a batch moved."""
    cause, by = because.cause, because.by
    if cause is Cause.ALTERED:
        fields = ", ".join(field_words(name) for name in by)
        return tr("changed on it: {fields}", fields=fields)
    if cause is Cause.LOGGED:
        return tr("the log says so: {codes}", codes=", ".join(by))
    if cause is Cause.OTHER:
        kinds = ", ".join(kind_words(word) for word in by)
        return tr("along with what was changed: {kinds}", kinds=kinds)
    return tr(_CAUSES[cause])


_CAUSES: Final = {
    Cause.ADDED: "it is new",
    Cause.REMOVED: "it is taken out",
    Cause.PLACES: "it stands in other places, with other light or room",
    Cause.WARMTH: "the warmth that was read",
    Cause.GROUND: "the season, water or bed it stands in was changed",
    Cause.FIGURES: "a figure of your own in the catalogue",
}


def strip_words(moves: Sequence[Move]) -> str:
    """Return what an act moved, in one line."""
    if len(moves) == 1 and moves[0].because.moved.milestone is Milestone.CLEARED:
        (move,) = moves
        return tr(
            "Places of {code} free: {change}, {days}",
            code=move.code,
            change=change_words(move),
            days=days_words(move),
        )
    if len(moves) == 1:
        (move,) = moves
        return tr(
            "First pick of {code}: {change}, {days}",
            code=move.code,
            change=change_words(move),
            days=days_words(move),
        )
    furthest = moves[0]
    return tr(
        "{many} batches have other dates; furthest {code}, {days}",
        many=number_words(len(moves), digits=0),
        code=furthest.code,
        days=days_words(furthest),
    )


def moves_page(title: str, moves: Sequence[Move]) -> Page:
    """Return the page that names every batch that an act moved, old and new day, and why."""
    listed = moves[:_MOST_LISTED]
    rest = len(moves) - len(listed)
    more = (_others(moves[_MOST_LISTED:]),) if rest > 0 else ()
    sections = [
        Section(
            title=tr(words),
            facts=tuple(_fact(move) for move in listed if move.because.moved.milestone is milestone),
        )
        for milestone, words in _MILESTONES.items()
    ]
    return Page(
        title=tr("What moved, and why"),
        subtitle=title,
        sections=(*(each for each in sections if each.facts), Section(title="", warnings=more)),
    )


def _others(moves: Sequence[Move]) -> Fact:
    """Return how many batches are not named, to be asked which."""
    from planner.desk.why.entered import counted

    words = tr("{rest} more batches moved less far.", rest=number_words(len(moves), digits=0))
    return Fact(label="", value=words, ask=counted("batches moved", (move.code for move in moves), "batches"))


_MILESTONES: Final = {
    Milestone.FIRST_PICK: "First pick",
    Milestone.CLEARED: "Places free again",
}


def _new_day(move: Move) -> Subject:
    moved = move.because.moved
    first = moved.milestone is Milestone.FIRST_PICK
    return Subject(kind=SubjectKind.FIRST_PICK if first else SubjectKind.FREED, about=moved.batch)


def _fact(move: Move) -> Fact:
    return Fact(
        label=move.code,
        value=change_words(move),
        note=f"{days_words(move)} · {cause_words(move.because)}",
        ask=Shifted(title="days moved", ask=_new_day(move), old_on=move.old_on, new_on=move.new_on),
    )
