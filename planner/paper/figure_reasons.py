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
    Formula.GAIN_OF_DAYS: "gain a day, times days",
    Formula.ONE_EACH: "one for each of them",
    Formula.IN_KG: "grams, in kilograms",
    Formula.PLACES_FREE: "all places, less those that are held",
    Formula.AREA_OF_DAYS: "area of the batch, times the days of the week on which it stands there",
    Formula.BATCH_AREA: "area of the places held, and of the plants that have none yet",
    Formula.AREA_OF_PLACES: "places, times the area of one in this bed",
    Formula.ROOM_OF_PLANT: "a square metre over the plants on it",
    Formula.YIELD: "what a plant gives, at the size it reaches",
    Formula.HEADS: "plants that live in the bed, in whole plants",
    Formula.FIRST_PICK_LATE: "days to the first pick, less those by the book",
    Formula.STAGE_LATE: "days of the stage, less those by the book",
    Formula.BAND: "supply over demand, held against where it counts as short, thin and ample",
    Formula.MISSING: "no sum: something entered is missing or does not fit",
    Formula.UNPLACED: "plants, less those that have a place in a bed",
    Formula.ASSUMED_BEST: "the best temperature of the fish, where that of the water is not known",
    Formula.BEYOND: "water colder or warmer than the fish can do with",
    Formula.EATEN: "feed that the gain took, over the feed that is given, in percent",
    Formula.SIZE_REACHED: "size that is reached when a stage has lasted as long as it may",
    Formula.NOT_CLEARED: "no sum: treated fish are not eaten until the day on which they are cleared",
    Formula.PROTEIN_FED: "protein that is fed, over the feed",
    Formula.PROTEIN_OF_GROUP: "feed, times its protein",
    Formula.AS_PRINTED: "as printed",
    Formula.RATE_AT: "as printed, carried to the warmth of the water",
    Formula.LEFT_WITH_WATER: "what is left on an average day after plants took theirs, times the share "
    "that leaves, times days",
    Formula.LEAVING_SHARE: "what leaves with the water that make-up replaces, and what falls out of it",
    Formula.FALLING_OUT: "what a day takes when half is gone after the half-life",
    Formula.LEAFY_SHARE: "leafy crops over all that is planted",
    Formula.REFERENCE: "the reference, where nothing is fed",
    Formula.BEYOND_SUPPLY: "what crops want in a mean week ahead, less what is supplied",
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
    NoteKind.NOTHING_DUE: "nothing is due then",
    NoteKind.BED_EMPTY: "nothing stands there on that day",
    NoteKind.HELD_TWICE: "{many} places are held by two batches at once",
    NoteKind.HELD_UNTIL: "held from {from} until the day before {until}",
    NoteKind.IN_PHASE: "{phase} places, held until the day before {until}",
    NoteKind.NO_PLACES: "it has no places yet",
    NoteKind.NO_NURSERY: "the farm has no nursery",
    NoteKind.NO_FISH_HARVEST: "no fish are harvested then",
    NoteKind.SLOWED_BY: "slowed most by: {cause}",
    NoteKind.QUICKER: "quicker than by the book",
    NoteKind.UNDER_LAYER: "{bed} gets {share} of the light under the roof",
    NoteKind.UNDER_LAMPS: "lamps add {mol} mol/m²/d in {bed}",
    NoteKind.FLAG_SPAN: "from {from} to {until}",
    NoteKind.NOT_ENTERED: "not entered: {what}",
    NoteKind.NOT_SUITED: "{crop} is grown in {suited} beds; {bed} is a {kind} bed",
    NoteKind.SHORT_OF: "short are {elements}; the lowest is {element}",
    NoteKind.NEVER_ABOVE: "never feed more than the fish eat: what is left spoils the water",
    NoteKind.TREATED_ON: "treated with a medicine on {on}; no day is entered on which the fish are cleared",
    NoteKind.BARRED: "treated on {on}, cleared: {cleared}; "
    "the harvest of {harvest} comes too early. Ask the veterinarian how long to wait",
    NoteKind.WATER_NOT_KNOWN: "the warmth of the water is not known: the rate is taken as printed",
    NoteKind.MEAN_BY_DAY: "the mean of what each day needs; the rate is that of the week as a whole",
}
