"""Charts of the feed: of a way of stocking beside today's, and around a harvest.

Pure: must know nothing of widgets.
"""

from __future__ import annotations

from typing import Final

from planner.desk.plan.chart import Chart, Form, Strand
from planner.desk.plan.stocking_rows import share_words
from planner.desk.plan.stocking_work import HarvestsFound, WaysFound
from planner.desk.say import tr
from planner.desk.words import middle_of_week, week_words
from planner.forecast.values import Ruler
from planner.forecast.why.values import Subject, SubjectKind

_FORMS: Final = (Form.LINE, Form.DASHED, Form.STEPS)
_COLOURS: Final = (5, 6, 0)


def week_names(ruler: Ruler) -> tuple[str, ...]:
    """Return the names of all weeks of a ruler."""
    return tuple(week_words(middle_of_week(ruler.week_start(week))) for week in range(ruler.weeks))


def feed_chart(found: WaysFound, number: int, ruler: Ruler) -> Chart:
    """Return the feed of a way beside today's and the band that the beds need, within the plan."""
    return Chart(
        title=tr("Feed within the plan"),
        unit=tr("g a day"),
        weeks=week_names(ruler),
        strands=(
            Strand(label=tr("this way"), values=found.feeds[number], form=Form.BARS, colour=0),
            Strand(
                label=tr("today"),
                values=found.today,
                form=Form.DASHED,
                colour=2,
                asks=tuple(
                    Subject(kind=SubjectKind.FEED_MEAN, about=found.loop, week=week)
                    for week in range(ruler.weeks)
                ),
            ),
            Strand(label=tr("band, low"), values=found.low, form=Form.STEPS, colour=0),
            Strand(label=tr("band, high"), values=found.high, form=Form.LINE, colour=5),
        ),
    )


def harvest_chart(found: HarvestsFound, ruler: Ruler) -> Chart:
    """Return the feed of every way to take a harvest, in the weeks around it."""
    first_on = min((on for one in found.options for on, _ in one.takes), default=ruler.start_on)
    first = max(ruler.week_of(first_on) - 6, 0)
    weeks = slice(first, min(first + 32, ruler.weeks))
    return Chart(
        title=tr("Feed around the harvest"),
        unit=tr("g a day"),
        weeks=week_names(ruler)[weeks],
        strands=tuple(
            Strand(
                label=share_words(one.share),
                values=feed[weeks],
                form=_FORMS[number % len(_FORMS)],
                colour=_COLOURS[number % len(_COLOURS)],
            )
            for number, (one, feed) in enumerate(zip(found.options, found.feeds, strict=True))
        ),
    )
