"""The words of the trade as this program uses them: a table, translated where it is shown."""

from __future__ import annotations

from typing import Final

GLOSSARY: Final[tuple[tuple[str, str], ...]] = (
    ("Aquaponics", "Fish and plants raised on the same water; bacteria turn fish waste into plant food."),
    ("Balance", "What the fish feed supplies of an element, set against what the crops take up, by week."),
    ("Band", "How supply stands to demand in a week: short, thin, met or ample."),
    ("Batch", "Plants sown together, from the seed to the cleared place."),
    ("Bed", "Rafts, a gravel bed or nursery trays that lie together."),
    ("Clearing", "Days for taking out roots and cleaning; the place is held until they are over."),
    ("Feed conversion (FCR)", "Grams of feed given for each gram the fish gain."),
    ("Feed-rate ratio", "Grams of feed a day for each square metre of planted bed."),
    ("Fish group", "Fish stocked together in one tank."),
    ("Germination", "From sowing until most seedlings are up."),
    ("Gravel bed", "A bed of stones that holds roots, bacteria and some solids."),
    ("Growth coefficient (TGC)", "How fast a fish grows for the warmth of its water."),
    ("Limiting element", "The element of which least is supplied for what is wanted."),
    ("Locked", "A batch that no plan may move."),
    ("Loop of water", "Fish tanks, filters and beds that share one body of water."),
    ("Make-up water", "Water added for what evaporates, splashes or is drained."),
    ("Middle spacing", "A distance between the nursery and the final one, so that less bed stands empty."),
    ("Mineralisation", "Breakdown of fish solids that sets plant food free."),
    ("Nitrification", "Ammonia turned to nitrite and nitrate by bacteria; it makes acid."),
    ("Nursery", "Where seedlings stand until they are moved to a bed."),
    ("Picking", "From the first harvest of a batch to the last."),
    ("Place", "A hole of a raft, a spot of a gravel bed or a cell of a tray; it holds one plant at a time."),
    ("Plan mark", "Eight letters that change whenever anything in the plan changes; printed on every sheet."),
    ("Proposal", "Something worked out that changes nothing until you adopt it, in one act."),
    ("Raft", "A floating board with holes for plants."),
    ("Repair", "A change of the plan that makes a flagged week better, tried on a forecast first."),
    ("Scenario", "The farm with some changes, held beside it to compare; the farm stays as it is."),
    ("Seed lot", "One packet or delivery of seed, with its own share that germinates."),
    ("Succession", "Sowings one after the other, so that there is something to pick every week."),
    ("Week", "ISO 8601: weeks begin on Monday, and W01 holds the year's first Thursday."),
    ("Weekly target", "So much of a crop wanted each week, from one date to another."),
)

ABOUT: Final = (
    "Raftweek plans small coupled aquaponic loops: what to sow, move and pick each week, so that the "
    "harvest is steady and what the crops take up stays matched to what the fish are fed."
)

PLANNING_AID: Final = (
    "The numbers are planning aids. Test the water, look at the fish. No yield is promised, and nothing "
    "here is medical, legal or engineering advice."
)

PRIVACY: Final = (
    "What you enter stays on this computer, in the file you see in the status bar. What the weeks showed "
    "last is kept beside it in the folder for temporary files of your user, so that the next start is quick."
)
