"""A season plan as words, rows and charts: how good it is, week by week beside today's, what differs.

Must know nothing of widgets.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from datetime import date
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.plan.chart import Chart, Form, Strand
from planner.desk.plan.season_work import CropCourse, LoopCourse, SeasonFound
from planner.desk.plan.whys import line_asks
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.words import NONE, choice_words, day_words, number_words, short_day_words, week_words
from planner.desk.words import middle_of_week as middle
from planner.farm.crops import Batch, TargetUnit
from planner.farm.farm import Farm
from planner.farm.species import ELEMENTS
from planner.forecast.why.values import Subject, SubjectKind
from planner.planning.placement import Refusal
from planner.planning.season_plan.job import PlanProgress, PlanStep
from planner.planning.season_plan.plan import NOTHING_PLANNED, PlanStatus, SeasonPlan
from planner.planning.season_plan.proposal import Difference, DifferenceKind

_PERCENT: Final = 100.0
_NEAR: Final = 0.005
_TODAY_COLOUR, _PROPOSED_COLOUR, _SUPPLY_COLOUR = 2, 0, 5

STEP_WORDS: Final = {
    PlanStep.READING: "Reading the season…",
    PlanStep.BOUNDING: "Proving how good a plan can be at most…",
    PlanStep.SEARCHING: "Searching for a better plan…",
    PlanStep.EXACT: "Searching exactly…",
    PlanStep.DONE: "Placing the sowings…",
}
STATUS_WORDS: Final = {
    PlanStatus.BEST: "No plan can be better: this is proven.",
    PlanStatus.GOOD: "",
    PlanStatus.STOPPED: "You stopped the search; this is the best so far.",
    PlanStatus.NO_TARGETS: "No target asks for anything in these weeks, so there is nothing to plan.",
    PlanStatus.NO_BEDS: "There is no bed to grow in, so nothing can be planned.",
    PlanStatus.NOTHING_GROWS: "Nothing that is wanted can be sown in these weeks and be picked before "
    "they end.",
}
DIFFERENCE_WORDS: Final = {
    DifferenceKind.ADDED: "new",
    DifferenceKind.REMOVED: "goes",
    DifferenceKind.CHANGED: "changes",
}


def step_words(step: PlanProgress) -> str:
    """Return what is being done, with how good the best so far is."""
    words = tr(STEP_WORDS[step.label])
    return words if step.gap is None else f"{words} {gap_words(step.gap)}"


def gap_words(gap: float) -> str:
    """Return how near to the best possible a plan is.

    >>> gap_words(0.0081)
    'Within 0.8 % of the best possible.'
    """
    percent = gap * _PERCENT
    digits = 1 if percent < 10 else 0
    if 0 < percent < 0.05:
        return tr("Within 0.1 % of the best possible.")
    return tr("Within {percent} % of the best possible.", percent=number_words(percent, digits=digits))


def headline(plan: SeasonPlan) -> str:
    """Return how good a plan is, in one line."""
    if plan.status in NOTHING_PLANNED:
        return tr(STATUS_WORDS[plan.status])
    return gap_words(plan.gap)


def judged_lines(plan: SeasonPlan) -> Iterator[str]:
    """Yield what a plan's worth is made of, beside the rhythm a grower would write by hand."""
    worth = plan.model.worth
    if plan.status in NOTHING_PLANNED or not worth:
        return
    status = STATUS_WORDS[plan.status]
    if status:
        yield tr(status)
    imbalance = float(plan.parts.short.sum() + plan.parts.idle.sum())
    yield tr(
        "Of all that is wanted {missed} % is missed, {wasted} % is more than wanted, and balance costs "
        "{balance} %.",
        missed=_percent(plan.parts.missed / worth),
        wasted=_percent(plan.parts.wasted / worth),
        balance=_percent(imbalance / worth),
    )
    yield tr(
        "Worth {plan} of 100; the same amount sown every week is worth {hand}, and no plan more than "
        "{bound}.",
        plan=_percent(plan.objective / worth),
        hand=_percent(plan.by_hand / worth),
        bound=_percent(plan.bound / worth),
    )


def _percent(share: float) -> str:
    return number_words(share * _PERCENT, digits=1)


def note_lines(found: SeasonFound, farm: Farm, catalogue: Catalogue) -> Iterator[str]:
    """Yield what the grower should know of a plan."""
    plan, names = found.plan, [loop.name for loop in farm.loops]
    for loop, element in plan.unsupplied:
        yield tr(
            "Nothing brings {element} to {loop}, so it is left out of the balance.",
            element=element.capitalize(),
            loop=names[loop],
        )
    for slow in plan.too_slow:
        yield tr(
            "{crop} would not be ready in time in {kind} when sown in {weeks} of the weeks; it is not sown "
            "then.",
            crop=catalogue.crops[slow.crop].name,
            kind=choice_words(plan.model.grounds[slow.ground].kind).lower(),
            weeks=len(slow.weeks),
        )
    for refusal in found.proposed.refusals:
        yield _refusal(refusal)


def _refusal(refusal: Refusal) -> str:
    return tr(
        "No room in {bed}: {needed} places needed, {free} free.",
        bed=refusal.bed,
        needed=refusal.needed,
        free=refusal.free,
    )


# --- week by week --------------------------------------------------------------------------------------


def week_columns() -> tuple[Column, ...]:
    """Return the columns of the table of weeks."""
    return (
        Column(title=tr("Week")),
        Column(title=tr("Crop")),
        Column(title=tr("Wanted"), numeric=True),
        Column(title=tr("Today"), numeric=True, tip=tr("What today's plan brings, fit for sale")),
        Column(title=tr("Proposal"), numeric=True, tip=tr("What the proposal brings, fit for sale")),
        Column(title=tr("Meets"), numeric=True, tip=tr("The proposal against what is wanted")),
    )


def week_rows(found: SeasonFound, crop: int, catalogue: Catalogue) -> tuple[Row, ...]:
    """Return a row for each week of one crop, or with -1 of all crops."""
    starts = [week.start_on for week in found.plan.weeks]
    courses = found.crops if crop < 0 else (found.crops[crop],)
    return tuple(
        _week_row(starts[week], course, week, catalogue.crops[course.crop].name)
        for week in range(len(starts))
        for course in courses
        if course.wanted[week] or course.today[week] or course.proposed[week]
    )


def _week_row(start: date, course: CropCourse, week: int, name: str) -> Row:
    wanted, today, comes = course.wanted[week], course.today[week], course.proposed[week]
    meets = NONE if wanted <= 0 else tr("{percent} %", percent=number_words(comes / wanted * 100, digits=0))
    return Row(
        id=f"{start.isoformat()} {course.crop} {course.unit.value}",
        texts=(
            week_words(middle(start)),
            name,
            amount_words(wanted, course.unit),
            amount_words(today, course.unit),
            amount_words(comes, course.unit),
            meets,
        ),
        sort=(start, name.casefold(), wanted, today, comes, comes / wanted if wanted > 0 else -1.0),
    )


def amount_words(amount: float, unit: TargetUnit) -> str:
    """Return an amount of a crop with what it counts."""
    if abs(amount) < _NEAR:
        return NONE
    digits = 0 if unit is TargetUnit.HEADS else 1
    return f"{number_words(amount, digits=digits)} {choice_words(unit)}"


# --- differences ---------------------------------------------------------------------------------------


def difference_columns() -> tuple[Column, ...]:
    """Return the columns of the table of differences."""
    return (
        Column(title=tr("What")),
        Column(title=tr("Batch")),
        Column(title=tr("Crop")),
        Column(title=tr("Today")),
        Column(title=tr("Proposal")),
    )


def difference_rows(differences: tuple[Difference, ...], catalogue: Catalogue) -> tuple[Row, ...]:
    """Return a row for each batch that a plan adds, takes out or changes."""
    return tuple(_difference_row(each, catalogue) for each in differences)


def _difference_row(each: Difference, catalogue: Catalogue) -> Row:
    what, crop = tr(DIFFERENCE_WORDS[each.kind]), catalogue.crops[each.crop].name
    day = (each.after or each.before).sow_on if each.after or each.before else date.min  # type: ignore[union-attr]
    return Row(
        id=f"{each.kind.value} {each.code}",
        texts=(what, each.code, crop, sowing_words(each.before), sowing_words(each.after)),
        sort=(what, each.code, crop.casefold(), day, day),
    )


def sowing_words(batch: Batch | None) -> str:
    """Return a sowing, such as "24 plants, Mon 11 Jan"."""
    if batch is None:
        return NONE
    return tr("{plants} plants, {day}", plants=number_words(batch.plants), day=short_day_words(batch.sow_on))


def difference_words(found: SeasonFound) -> str:
    """Return how many batches differ."""
    counts = Counter(each.kind for each in found.proposed.differences)
    if not counts:
        return tr("No batch differs from today's plan.")
    return tr(
        "{added} new sowings, {changed} changed, {removed} go, {same} stay as they are.",
        added=counts[DifferenceKind.ADDED],
        changed=counts[DifferenceKind.CHANGED],
        removed=counts[DifferenceKind.REMOVED],
        same=found.proposed.unchanged,
    )


def adopt_words(found: SeasonFound) -> str:
    """Return what adopting a plan is called in the menu of undo."""
    model = found.plan.model
    return tr("Adopt the season plan from {day}", day=day_words(model.ruler.week_start(model.first_week)))


# --- charts --------------------------------------------------------------------------------------------


def _weeks(found: SeasonFound) -> tuple[str, ...]:
    return tuple(week_words(middle(week.start_on)) for week in found.plan.weeks)


def crop_chart(found: SeasonFound, crop: int, catalogue: Catalogue) -> Chart:
    """Return the harvest of a crop against its target."""
    course = found.crops[crop]
    return Chart(
        title=tr("Harvest of {crop}", crop=catalogue.crops[course.crop].name),
        unit=tr("{unit} a week", unit=choice_words(course.unit)),
        weeks=_weeks(found),
        strands=(
            Strand(
                label=tr("proposal"),
                values=course.proposed,
                form=Form.BARS,
                colour=_PROPOSED_COLOUR,
                asks=line_asks(found.plan, crop, "harvest", found.whys),
            ),
            Strand(
                label=tr("today"),
                values=course.today,
                form=Form.DASHED,
                colour=_TODAY_COLOUR,
                asks=line_asks(found.plan, crop, "today", found.whys),
            ),
            Strand(
                label=tr("wanted"),
                values=course.wanted,
                form=Form.STEPS,
                colour=0,
                asks=line_asks(found.plan, crop, "wanted", found.whys),
            ),
        ),
    )


def balance_chart(found: SeasonFound, loop: int, element: int) -> Chart:
    """Return supply of an element against demand as it is and as proposed."""
    course: LoopCourse = found.loops[loop]
    return Chart(
        title=tr("{element} in {loop}", element=ELEMENTS[element].capitalize(), loop=course.name),
        unit=tr("g a week"),
        weeks=_weeks(found),
        strands=(
            Strand(
                label=tr("demand, proposal"),
                values=course.proposed[element],
                form=Form.BARS,
                colour=_PROPOSED_COLOUR,
            ),
            Strand(
                label=tr("demand, today"),
                values=course.today[element],
                form=Form.DASHED,
                colour=_TODAY_COLOUR,
                asks=tuple(
                    Subject(
                        kind=SubjectKind.DEMAND,
                        about=course.loop,
                        week=found.plan.model.first_week + week,
                        element=element,
                    )
                    for week in range(len(course.today[element]))
                ),
            ),
            Strand(label=tr("supply"), values=course.supply[element], form=Form.LINE, colour=_SUPPLY_COLOUR),
        ),
    )
