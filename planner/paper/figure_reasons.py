"""Words for the formulas and notes of fish, sums over batches, dates and places."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from planner.forecast.why.formulas import Formula
from planner.forecast.why.values import NoteKind

FIGURE_WORDS: Final[Mapping[Formula, str]] = {
    Formula.FISH_COUNT: "stocked and added, less the dead that were counted, those expected, and harvests",
    Formula.EXPECTED_DEATHS: "fish on an average day, times the share that dies in a day, times days",
    Formula.ALL_LEFT: "all that are left from the day before, and what changed that morning",
    Formula.GAIN_BY_FEED: "feed over feed conversion",
    Formula.GAIN_BY_APPETITE: "feed over feed conversion, at most what the fish can eat for their growth",
    Formula.WEIGHT: "as last weighed or stocked, and grown since; fish that were added change the mean",
    Formula.GROWTH_OF_DAYS: "days, times the growth of a day",
    Formula.READY: "the first day on which the fish are as heavy as for the harvest",
    Formula.FEED_FALL: "one less feed now over feed before, in percent",
    Formula.MEAN_OF_DAYS: "what some days take, over the days",
    Formula.KG_OF_DAYS: "feed a day, times days",
}

FIGURE_NOTES: Final[Mapping[NoteKind, str]] = {
    NoteKind.NOT_STOCKED_YET: "stocked on {on} only",
    NoteKind.MORE_THAN_LEFT: "{many} dead are entered, more than were left",
    NoteKind.ALL_HARVESTED: "the harvest takes all that are left",
    NoteKind.WEIGHED_ON: "counted from {on} on",
    NoteKind.SINCE_PLAN_BEGAN: "they are that heavy when the plan begins; what went before is not looked at",
    NoteKind.FEED_BACK: "feed is back where it was on {on}, after {weeks} weeks",
    NoteKind.FEED_NOT_BACK: "feed does not come back to where it was within the plan",
    NoteKind.FISH_TAKEN: "{fish} fish are harvested on {on}",
    NoteKind.OPENED_BY_HARVEST: "{fish} fish of {about} harvested on {on}: the feed has not got over it yet",
    NoteKind.NOTHING_BEFORE: "there is no feed in the weeks before to compare with",
}
