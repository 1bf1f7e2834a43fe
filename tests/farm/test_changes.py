"""Whatever is changed can be taken back: any sets of changes, undone, give the farm that was there."""

import dataclasses
from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.changes import Change, ChangeSet, applied, with_places
from planner.farm.farm import KINDS, SETTINGS_KIND, Farm, Settings, kind_named, replace_things, things
from planner.farm.ids import new_id
from planner.farm.site import Site, Tank
from tests.strategies import farms

OLD = Settings(id=new_id(), name="F", plan_from=date(2026, 3, 2))


def a_site(name: str) -> Site:
    return Site(id=new_id(), name=name)


def a_farm(*names: str) -> Farm:
    return Farm(settings=OLD, sites=tuple(a_site(name) for name in names))


def names_of(farm: Farm) -> str:
    return "".join(site.name for site in farm.sites)


def put(thing: Any, *, index: int | None = None) -> Change:
    return Change(after=thing, index=index)


@st.composite
def edits(draw: st.DrawFn, farm: Farm) -> ChangeSet:
    """Draw takings-out, puttings-in and alterations of things of any kind, one after the other."""
    now = farm
    changes = []
    for _ in range(draw(st.integers(1, 6))):
        word = draw(st.sampled_from([kind.word for kind in KINDS]))
        many = things(now, word)
        if not many:
            continue
        thing = draw(st.sampled_from(many))
        sort = draw(st.sampled_from(("out", "alter", "in")))
        if sort == "out":
            change = Change(before=thing)
        elif sort == "alter":
            field = "notes" if hasattr(thing, "notes") else "unit"
            value: Any = draw(st.text(max_size=5)) if field == "notes" else draw(st.integers(1, 9))
            change = Change(before=thing, after=dataclasses.replace(thing, **{field: value}))
        else:
            index = draw(st.none() | st.integers(0, len(many)))
            change = Change(after=dataclasses.replace(thing, id=new_id()), index=index)
        changes.append(change)
        now = applied(now, ChangeSet(title="", changes=(change,)))
    return ChangeSet(title="Edit", changes=with_places(farm, tuple(changes)))


@given(farms(), st.data())
def test_that_any_changes_turned_round_give_the_farm_back_and_done_again_the_changed_one(
    farm: Farm, data: st.DataObject
) -> None:
    change_set = data.draw(edits(farm))
    changed = applied(farm, change_set)
    back = applied(changed, change_set.turned())
    assert back == farm
    assert applied(back, change_set) == changed


@given(farms(), st.data())
def test_that_many_sets_are_undone_one_by_one(farm: Farm, data: st.DataObject) -> None:
    done, now = [], farm
    for _ in range(data.draw(st.integers(1, 4))):
        change_set = data.draw(edits(now))
        now = applied(now, change_set)
        done.append(change_set)
    for change_set in reversed(done):
        now = applied(now, change_set.turned())
    assert now == farm


def test_that_what_is_taken_out_comes_back_to_its_place() -> None:
    farm = a_farm("a", "b", "c")
    change_set = ChangeSet(title="", changes=with_places(farm, (Change(before=farm.sites[1]),)))
    assert names_of(applied(farm, change_set)) == "ac"
    assert names_of(applied(applied(farm, change_set), change_set.turned())) == "abc"


def test_that_places_are_those_at_the_moment_of_each_change() -> None:
    farm = a_farm("a", "b", "c")
    both = (Change(before=farm.sites[0]), Change(before=farm.sites[1]))
    change_set = ChangeSet(title="", changes=with_places(farm, both))
    assert [change.index for change in change_set.changes] == [0, 0]
    assert applied(applied(farm, change_set), change_set.turned()) == farm


def test_that_a_new_thing_goes_last_or_where_it_is_put() -> None:
    farm = a_farm("a", "b")
    assert names_of(applied(farm, ChangeSet(title="", changes=(put(a_site("x")),)))) == "abx"
    assert names_of(applied(farm, ChangeSet(title="", changes=(put(a_site("x"), index=1),)))) == "axb"
    assert names_of(applied(farm, ChangeSet(title="", changes=(put(a_site("x"), index=99),)))) == "abx"


def test_that_settings_are_replaced_but_never_taken_out() -> None:
    farm = a_farm()
    new = dataclasses.replace(OLD, name="G")
    assert applied(farm, ChangeSet(title="", changes=(Change(before=OLD, after=new),))).settings == new
    with pytest.raises(KeyError, match="settings"):
        applied(farm, ChangeSet(title="", changes=(Change(before=OLD),)))


def test_that_a_thing_is_not_put_in_twice() -> None:
    farm = a_farm("a")
    with pytest.raises(KeyError, match="there already"):
        applied(farm, ChangeSet(title="", changes=(put(farm.sites[0]),)))


def test_that_a_change_of_something_else_is_refused() -> None:
    farm = a_farm("a")
    other = dataclasses.replace(farm.sites[0], name="z")
    with pytest.raises(KeyError, match="not as the change expects"):
        applied(farm, ChangeSet(title="", changes=(Change(before=other),)))


def test_that_a_change_of_what_is_not_there_is_refused() -> None:
    with pytest.raises(KeyError):
        applied(a_farm("a"), ChangeSet(title="", changes=(Change(before=a_site("a")),)))


def test_that_a_change_must_have_a_thing_and_keep_it_the_same() -> None:
    site = a_site("a")
    tank = Tank(id=site.id, name="t", loop=new_id(), volume_l=100)
    with pytest.raises(ValueError, match="before or an after"):
        Change()
    with pytest.raises(ValueError, match="same thing"):
        Change(before=site, after=a_site("b"))
    with pytest.raises(ValueError, match="same thing"):
        Change(before=site, after=tank)


def test_that_a_set_tells_what_it_touches() -> None:
    site = a_site("a")
    change_set = ChangeSet(title="", changes=(put(site), Change(before=OLD, after=OLD)))
    assert change_set.words == {"site", "settings"}
    assert change_set.ids("site") == {site.id}
    assert change_set.ids("tank") == frozenset()


@given(farms())
def test_that_replacing_things_of_a_kind_leaves_the_others(farm: Farm) -> None:
    for kind in KINDS:
        bare = replace_things(farm, kind.word, ())
        assert things(bare, kind.word) == ()
        assert replace_things(bare, kind.word, things(farm, kind.word)) == farm
    assert things(farm, SETTINGS_KIND.word) == (farm.settings,)
    assert kind_named("bed").owner.__name__ == "Bed"
