"""What a grower does with the lay of the farm: sites, loops, tanks, filters and beds.

Something that others stand on is removed only together with them, and only when that is asked for.
"""

from __future__ import annotations

from planner.actions.changing import addition, alteration, found, removal
from planner.actions.checking import stranded_faults
from planner.farm.changes import ChangeSet, applied
from planner.farm.farm import Farm
from planner.farm.faults import FarmFaultError
from planner.farm.fields import Id
from planner.farm.site import Bed, Filter, Loop, Site, Tank

Part = Site | Loop | Tank | Filter | Bed


def add_site(site: Site) -> ChangeSet:
    """Add a site."""
    return _added(site)


def change_site(farm: Farm, site: Site) -> ChangeSet:
    """Put the changed site in place of the one with its id."""
    return _changed(farm, site)


def remove_site(farm: Farm, site_id: Id, *, with_dependants: bool = False) -> ChangeSet:
    """Remove a site; raises `FarmFaultError` naming what stands on it unless that is to go too."""
    return _removed(farm, found(farm, "site", site_id), with_dependants=with_dependants)


def add_loop(loop: Loop) -> ChangeSet:
    """Add a loop of water."""
    return _added(loop)


def change_loop(farm: Farm, loop: Loop) -> ChangeSet:
    """Put the changed loop in place of the one with its id."""
    return _changed(farm, loop)


def remove_loop(farm: Farm, loop_id: Id, *, with_dependants: bool = False) -> ChangeSet:
    """Remove a loop; raises `FarmFaultError` naming what is in it unless that is to go too."""
    return _removed(farm, found(farm, "loop", loop_id), with_dependants=with_dependants)


def add_tank(tank: Tank) -> ChangeSet:
    """Add a fish tank."""
    return _added(tank)


def change_tank(farm: Farm, tank: Tank) -> ChangeSet:
    """Put the changed tank in place of the one with its id."""
    return _changed(farm, tank)


def remove_tank(farm: Farm, tank_id: Id, *, with_dependants: bool = False) -> ChangeSet:
    """Remove a tank; raises `FarmFaultError` naming the fish in it unless they are to go too."""
    return _removed(farm, found(farm, "tank", tank_id), with_dependants=with_dependants)


def add_filter(treatment: Filter) -> ChangeSet:
    """Add a filter."""
    return _added(treatment)


def change_filter(farm: Farm, treatment: Filter) -> ChangeSet:
    """Put the changed filter in place of the one with its id."""
    return _changed(farm, treatment)


def remove_filter(farm: Farm, filter_id: Id) -> ChangeSet:
    """Remove a filter."""
    return _removed(farm, found(farm, "filter", filter_id), with_dependants=False)


def add_bed(bed: Bed) -> ChangeSet:
    """Add a bed."""
    return _added(bed)


def change_bed(farm: Farm, bed: Bed) -> ChangeSet:
    """Put the changed bed in place of the one with its id.

    Raises `FarmFaultError` naming the batches whose places would no longer be there.
    """
    change_set = _changed(farm, bed)
    stranded = stranded_faults(applied(farm, change_set), bed.id)
    if stranded:
        raise FarmFaultError(stranded)
    return change_set


def remove_bed(farm: Farm, bed_id: Id, *, with_dependants: bool = False) -> ChangeSet:
    """Remove a bed; raises `FarmFaultError` naming the batches there unless they are to lose their places.

    Batches themselves stay.
    """
    return _removed(farm, found(farm, "bed", bed_id), with_dependants=with_dependants)


def _added(part: Part) -> ChangeSet:
    return addition(f"Add {part.name}", part)


def _changed(farm: Farm, part: Part) -> ChangeSet:
    return alteration(farm, part, title=f"Change {part.name}")


def _removed(farm: Farm, part: Part, *, with_dependants: bool) -> ChangeSet:
    return removal(farm, part, title=f"Remove {part.name}", with_dependants=with_dependants)
