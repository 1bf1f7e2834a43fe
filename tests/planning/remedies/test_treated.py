"""Fish that were treated with a medicine are not advised to be harvested before they are cleared."""

import dataclasses

from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.forecast.values import FlagKind
from planner.planning.remedies.ask import remedies
from tests.planning.remedies.cases import flag_of, full_farm

_HARVESTS = {FishEventKind.HARVEST}


def harvests(found):
    return [
        change.after
        for remedy in found
        for change in remedy.change_set.changes
        if isinstance(change.after, FishEvent) and change.after.kind in _HARVESTS
    ]


def test_that_treated_fish_are_not_advised_to_be_harvested(means):
    farm = full_farm()
    flag = flag_of(farm, means.forecaster, FlagKind.DENSITY)
    assert harvests(remedies(farm, means.forecaster, flag))
    treated = tuple(
        FishEvent(
            id=id_from("treated", group.id),
            group=group.id,
            on=group.stocked_on,
            kind=FishEventKind.TREATED,
        )
        for group in farm.fish_groups
    )
    barred = dataclasses.replace(farm, fish_events=(*farm.fish_events, *treated))
    assert harvests(remedies(barred, means.forecaster, flag)) == []
