"""What can be asked of places of a bed: how far a batch is, how long it stays, since when free, what comes.

Must know nothing of Qt or pixels.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta
from typing import Final

from planner.desk.beds.stays import FIRST_OF, Span, Stay, Stays
from planner.desk.beds.words import along_words, batch_of, free_words, next_words, until_words
from planner.desk.pages import Fact, Shifted
from planner.desk.say import tr
from planner.farm.crops import Phase, Stage
from planner.forecast.why.values import Subject, SubjectKind

_LAST_OF: Final = {
    Phase.NURSERY: Stage.NURSERY,
    Phase.SPACING: Stage.SPACING,
    Phase.BED: Stage.CLEARING,
}


def along_asked(stays: Stays, stay: Stay, day: int) -> Subject:
    """Return what is asked of how far a batch is on a day."""
    stage = stays.along(stay, day).stage
    return Subject(kind=SubjectKind.STAGE_DAY, about=stay.run.batch, stage=stage, day=day)


def until_asked(stay: Stay) -> Subject:
    """Return what is asked of the last day a batch stays."""
    return Subject(kind=SubjectKind.STAGE_LAST, about=stay.run.batch, stage=_LAST_OF[stay.run.phase])


def free_asked(stays: Stays, span: Span, day: int) -> Shifted | None:
    """Return what is asked of the days that places are free; None where nothing stood there or does now."""
    if span.now is not None or span.before is None:
        return None
    since = stays.date_of(span.before.end)
    until = stays.date_of(day) + timedelta(days=1)
    return Shifted(title="days free", ask=until_asked(span.before), old_on=since, new_on=until)


def next_asked(stay: Stay) -> Subject:
    """Return what is asked of the day a batch comes."""
    return Subject(kind=SubjectKind.STAGE_FIRST, about=stay.run.batch, stage=FIRST_OF[stay.run.phase])


def span_facts(stays: Stays, span: Span, day: int) -> tuple[Fact, ...]:
    """Return everything that can be asked of some places on a day."""
    return tuple(_facts(stays, span, day))


def _facts(stays: Stays, span: Span, day: int) -> Iterator[Fact]:
    now, then = span.now, span.next
    if now is not None:
        code = batch_of(stays, now).code
        along = along_words(stays.along(now, day))
        yield Fact(label=code, value=along, ask=along_asked(stays, now, day))
        yield Fact(label=tr("Held until"), value=until_words(stays, now), ask=until_asked(now))
    free = free_asked(stays, span, day)
    if free is not None:
        yield Fact(label=tr("Free"), value=free_words(stays, span, day), ask=free)
    if then is not None:
        yield Fact(label=tr("Next"), value=next_words(stays, span), ask=next_asked(then))
