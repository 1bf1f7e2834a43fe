"""Remedies in the words of the desk: what to do, what it changes, what to look out for.

The engine hands over kinds and figures; sentences are made here. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from datetime import date
from typing import Any, Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.say import tr
from planner.desk.words import day_words, number_words
from planner.farm.changes import ChangeSet
from planner.farm.farm import DAYS_PER_WEEK
from planner.forecast.values import FlagKind
from planner.planning.remedies.values import Remedy, RemedyKind, SideEffect

_PERCENT: Final = 100.0
_G_PER_KG: Final = 1000.0
_MOST_NAMED: Final = 3
_SHOWN_SHARE: Final = 0.005
_SHOWN_KG: Final = 0.05
_GRAMS_OF: Final = "g of "

SIDE_EFFECT_WORDS: Final[Mapping[SideEffect, str]] = {
    SideEffect.LATER_HARVEST: "the harvest comes later",
    SideEffect.SMALLER_HARVEST: "less is harvested",
    SideEffect.OLDER_SEEDLINGS: "seedlings get older and may stretch",
    SideEffect.NURSERY_HELD_LONGER: "nursery cells are held longer",
    SideEffect.MORE_FEED: "more feed is used",
    SideEffect.NOT_ON_SHELF: "not on your shelf yet: it has to be bought",
    SideEffect.RAISES_PH: "it raises the pH",
    SideEffect.TEST_FIRST: "test the water first",
    SideEffect.SALT_BUILDS_UP: "salt builds up in the water",
    SideEffect.NOT_ON_HARVEST_DAY: "not on a day of harvest",
    SideEffect.YIELD_OF_SOLIDS_UNSURE: "how much the solids give is not sure",
    SideEffect.NO_REST_OF_PURGE: "the fish that stay are not purged: days off feed would undo it",
    SideEffect.MORE_FISH_LATER: "tanks are fuller later",
    SideEffect.LIGHTER_FISH: "fish are lighter when harvested",
    SideEffect.FINGERLINGS_NEEDED: "fingerlings must be had on that day",
    SideEffect.LESS_FEED: "less feed, so less food for the plants",
    SideEffect.MORE_WEEKS_SHORT_ELSEWHERE: "other weeks become short instead",
}


class _Details(dict[str, Any]):
    """The details of a remedy; what is not said is empty."""

    def __missing__(self, key: str) -> str:
        return ""

    def weeks(self) -> str:
        """Return how long, such as "2 weeks" or "4 days"."""
        return weeks_words(abs(float(self["weeks"] or 0.0)))

    def whole(self, name: str) -> str:
        return number_words(float(self[name] or 0.0), digits=0)

    def day(self, name: str) -> str:
        text = str(self[name])
        return day_words(date.fromisoformat(text)) if text else ""

    def batches(self) -> str:
        """Return the batches by their codes, the first few of them."""
        codes = str(self["batches"]).split()
        if len(codes) <= _MOST_NAMED:
            return ", ".join(codes)
        named = ", ".join(codes[: _MOST_NAMED - 1])
        return tr("{named} and {rest} more", named=named, rest=len(codes) - _MOST_NAMED + 1)


def weeks_words(weeks: float) -> str:
    """Return a time that is given in weeks: weeks where they are whole, else days."""
    days = round(weeks * DAYS_PER_WEEK)
    if days % DAYS_PER_WEEK:
        return tr("1 day") if days == 1 else tr("{days} days", days=days)
    return tr("1 week") if days == DAYS_PER_WEEK else tr("{weeks} weeks", weeks=days // DAYS_PER_WEEK)


def remedy_words(remedy: Remedy, catalogue: Catalogue) -> str:
    """Return what a remedy does, as an instruction."""
    made = _WORDS[remedy.kind]
    return made(_Details(remedy.details), catalogue)


def act_of(remedy: Remedy, catalogue: Catalogue) -> ChangeSet:
    """Return the change of a remedy under its words, for they name the act in the menu of undo."""
    return ChangeSet(title=remedy_words(remedy, catalogue), changes=remedy.change_set.changes)


def _shift(details: _Details, _: Catalogue) -> str:
    later = float(details["weeks"] or 0.0) >= 0
    words = tr("Sow {batches} {weeks} later") if later else tr("Sow {batches} {weeks} earlier")
    return words.format(batches=details.batches(), weeks=details.weeks())


def _hold(details: _Details, _: Catalogue) -> str:
    return tr(
        "Hold {batches} in the nursery {weeks} longer", batches=details.batches(), weeks=details.weeks()
    )


def _thin(details: _Details, _: Catalogue) -> str:
    return tr(
        "Sow {plants} plants fewer of {batches}", plants=details.whole("plants"), batches=details.batches()
    )


def _other_bed(details: _Details, _: Catalogue) -> str:
    return tr("Place {batches} in {bed}", batches=details.batches(), bed=details["bed"])


def _leave_out(details: _Details, _: Catalogue) -> str:
    return tr("Do not sow {batches}", batches=details.batches())


def _appetite(details: _Details, _: Catalogue) -> str:
    return tr("Feed {group} what it eats, no more", group=details["group"])


def _liquor(details: _Details, _: Catalogue) -> str:
    return tr(
        "Return the liquor of solids batch {solids} on {on}", solids=details["solids"], on=details.day("on")
    )


def _dose(details: _Details, catalogue: Catalogue) -> str:
    given = [
        tr("{grams} g of {name}", grams=_grams(float(grams)), name=_product(key, catalogue))
        for key, grams in details.items()
        if key.startswith(_GRAMS_OF)
    ]
    daily = float(details["every_days"] or 1.0) == 1.0
    words = tr("Give {what} every day from {on}") if daily else tr("Give {what} every week from {on}")
    return words.format(what=", ".join(given), on=details.day("on"))


def _product(key: str, catalogue: Catalogue) -> str:
    supplement = catalogue.supplements.get(key.removeprefix(_GRAMS_OF))
    return supplement.name if supplement else key.removeprefix(_GRAMS_OF)


def _grams(value: float) -> str:
    return number_words(value, digits=0 if value >= 10 else 1)


def _harvest_part(details: _Details, _: Catalogue) -> str:
    if details["rest_on"]:
        return tr(
            "Harvest {fish} of {group} first, the rest on {on}",
            fish=details.whole("fish"),
            group=details["group"],
            on=details.day("rest_on"),
        )
    return tr(
        "Harvest {fish} of {group} on {on}",
        fish=details.whole("fish"),
        group=details["group"],
        on=details.day("on"),
    )


def _harvest_earlier(details: _Details, _: Catalogue) -> str:
    return tr("Harvest {group} {weeks} earlier", group=details["group"], weeks=details.weeks())


def _stock_earlier(details: _Details, _: Catalogue) -> str:
    return tr("Stock {group} {weeks} earlier", group=details["group"], weeks=details.weeks())


def _stock_later(details: _Details, _: Catalogue) -> str:
    return tr("Stock {group} {weeks} later", group=details["group"], weeks=details.weeks())


def _stock_fewer(details: _Details, _: Catalogue) -> str:
    return tr("Stock {fish} fish fewer in {group}", fish=details.whole("fish"), group=details["group"])


def _stock_more(details: _Details, _: Catalogue) -> str:
    return tr(
        "Stock {fish} more fish like {like} on {on}",
        fish=details.whole("fish"),
        like=details["like"],
        on=details.day("on"),
    )


_WORDS: Final[Mapping[RemedyKind, Callable[[_Details, Catalogue], str]]] = {
    RemedyKind.SHIFT_SOWINGS: _shift,
    RemedyKind.HOLD_TRANSPLANTS: _hold,
    RemedyKind.THIN_SOWINGS: _thin,
    RemedyKind.OTHER_BED: _other_bed,
    RemedyKind.LEAVE_OUT: _leave_out,
    RemedyKind.FEED_APPETITE: _appetite,
    RemedyKind.RETURN_LIQUOR: _liquor,
    RemedyKind.DOSE_SUPPLEMENT: _dose,
    RemedyKind.DOSE_BASE: _dose,
    RemedyKind.HARVEST_PART: _harvest_part,
    RemedyKind.HARVEST_EARLIER: _harvest_earlier,
    RemedyKind.STOCK_EARLIER: _stock_earlier,
    RemedyKind.STOCK_LATER: _stock_later,
    RemedyKind.STOCK_FEWER: _stock_fewer,
    RemedyKind.STOCK_MORE: _stock_more,
}


def percent_words(share: float) -> str:
    """Return a share in whole percent."""
    return tr("{percent} %", percent=number_words(share * _PERCENT, digits=0))


def effect_lines(remedy: Remedy, flag: FlagKind) -> Iterator[str]:
    """Yield what a remedy changes, figure by figure, before and after; what stays is left out."""
    before, after = remedy.before, remedy.after
    if flag in {FlagKind.SHORT_SUPPLY, FlagKind.FEED_FALLS}:
        yield from _supply_lines(remedy)
    if abs(after.fall_share - before.fall_share) > _SHOWN_SHARE and flag is FlagKind.FEED_FALLS:
        yield tr(
            "the feed falls by {before} → {after}",
            before=percent_words(before.fall_share),
            after=percent_words(after.fall_share),
        )
    if before.unplaced_plants != after.unplaced_plants:
        yield tr(
            "plants without a place {before} → {after}",
            before=number_words(before.unplaced_plants),
            after=number_words(after.unplaced_plants),
        )
    if abs(after.peak_kg_per_m3 - before.peak_kg_per_m3) > _SHOWN_KG:
        yield tr(
            "fullest tank {before} → {after} kg/m³",
            before=number_words(before.peak_kg_per_m3, digits=1),
            after=number_words(after.peak_kg_per_m3, digits=1),
        )
    yield _harvest_line(remedy)


def _supply_lines(remedy: Remedy) -> Iterator[str]:
    before, after = remedy.before, remedy.after
    if before.limiting is not None and after.limiting is not None:
        was, now = before.lowest_ratio[before.limiting], after.lowest_ratio[after.limiting]
        assert was is not None
        assert now is not None
        yield tr(
            "least supply {before} of {was} → {after} of {now}",
            before=percent_words(was),
            was=before.limiting_symbol,
            after=percent_words(now),
            now=after.limiting_symbol,
        )
    if before.weeks_short != after.weeks_short:
        yield tr("weeks short {before} → {after}", before=before.weeks_short, after=after.weeks_short)
    if before.feed_ratio_g_per_m2_d is not None and after.feed_ratio_g_per_m2_d is not None:
        was, now = round(before.feed_ratio_g_per_m2_d), round(after.feed_ratio_g_per_m2_d)
        if was != now:
            yield tr("feed {before} → {after} g/m²/d", before=number_words(was), after=number_words(now))


def _harvest_line(remedy: Remedy) -> str:
    kg = remedy.harvest_change_g / _G_PER_KG
    if abs(kg) < _SHOWN_KG:
        return tr("harvest of crops unchanged")
    amount = number_words(abs(kg), digits=1)
    if kg > 0:
        return tr("{kg} kg more of crops over the plan", kg=amount)
    return tr("{kg} kg less of crops over the plan", kg=amount)


def side_effect_words(remedy: Remedy) -> str:
    """Return what to look out for, empty when there is nothing."""
    if not remedy.side_effects:
        return ""
    said = "; ".join(tr(SIDE_EFFECT_WORDS[effect]) for effect in remedy.side_effects)
    return tr("Look out: {said}.", said=said)


def verdict_words(remedy: Remedy) -> str:
    """Return how far a remedy goes."""
    if remedy.repairs:
        return tr("repairs it")
    if remedy.severity_before <= 0:
        return tr("eases it")
    share = 1.0 - remedy.severity_after / remedy.severity_before
    return tr("takes away {share} of it", share=percent_words(share))
