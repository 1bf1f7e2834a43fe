"""Look-ups on scenes: bars of a span, bars under a point, neighbours for the arrow keys."""

from hypothesis import given
from hypothesis import strategies as st

from planner.desk.lanes.packing import Held
from planner.desk.lanes.rows_layout import laid_out
from planner.desk.lanes.scene import Curve, RowKey, array
from planner.desk.lanes.scene_index import SceneIndex, Way, first_spot, neighbour, spot_at
from planner.desk.lanes.season_band import month_words, seasons_words
from planner.farm.crops import Phase
from planner.farm.fields import Id
from planner.forecast.months import Month, Rain, Warmth
from tests.desk.lanes.demo import START, big_scene, demo_scene, empty_scene, make_bar, make_row

LINE, HEAD = 24.0, 28.0


def layout_of(scene, folded=frozenset()):
    return laid_out(scene.groups, folded=folded, line_px=LINE, head_px=HEAD)


@given(
    sowings=st.lists(st.tuples(st.integers(0, 700), st.integers(0, 7)), max_size=30),
    start=st.integers(-50, 800),
    length=st.integers(1, 300),
)
def test_that_the_bars_of_a_span_are_found_without_missing_one(sowings, start, length):
    bars = [
        make_bar(code=str(at), crop=crop, sow=START + sow, phase=Phase.BED, bed="b", unit=1, plants=3)
        for at, (sow, crop) in enumerate(sowings)
    ]
    row = make_row("b", 1, "Raft 1", [Held(bar=bar, first=1, share=0.1) for bar in bars])
    low, high = START + start, START + start + length
    found = set(row.seen(low, high))
    touching = {bar for bar in row.bars if bar.start < high and bar.end > low}
    assert touching <= found
    assert all(bar.start < high for bar in found)


def test_that_every_bar_of_a_farm_is_found_in_its_middle():
    for scene in (demo_scene(), big_scene(rows=20, batches=400, beds=4)):
        layout = layout_of(scene)
        for strip in layout.strips:
            for bar in strip.row.bars if strip.row else ():
                top, height = layout.bar_y(strip, bar)
                spot = spot_at(layout, top + height / 2, (bar.start + bar.end) / 2)
                assert spot is not None
                assert spot.bar == bar


def test_that_nothing_is_found_beside_a_bar_on_a_heading_or_outside():
    layout = layout_of(demo_scene())
    assert spot_at(layout, 5.0, START + 100) is None
    assert spot_at(layout, -5.0, START + 100) is None
    assert spot_at(layout, layout.height + 1, START + 100) is None
    assert spot_at(layout, layout.strips[3].top + 9, START - 4000) is None


def test_that_strips_lie_under_each_other_and_are_found_by_height():
    layout = layout_of(demo_scene())
    for one, other in zip(layout.strips, layout.strips[1:], strict=False):
        assert one.bottom == other.top
    for strip in layout.strips:
        assert layout.strip_at(strip.top + 1) is strip
    assert list(layout.between(0, layout.height)) == list(layout.strips)
    assert layout_of(empty_scene()).height == 0


def test_that_folding_a_bed_leaves_its_heading_only():
    scene = demo_scene()
    bed = scene.groups[1].bed
    open_, folded = layout_of(scene), layout_of(scene, frozenset({bed}))
    assert len(open_.strips) - len(folded.strips) == len(scene.groups[1].rows)
    assert folded.strip_of(scene.groups[1].rows[0].key) is None
    assert any(strip.group.bed == bed for strip in folded.strips)


def test_that_arrows_lead_through_a_row_and_back():
    layout = layout_of(demo_scene())
    spot = first_spot(layout, START)
    spot = neighbour(layout, spot, Way.DOWN)
    later = neighbour(layout, spot, Way.LATER)
    assert later.row == spot.row
    assert later.bar.start > spot.bar.start
    assert neighbour(layout, later, Way.EARLIER) == spot


def test_that_arrows_lead_down_to_every_row_that_has_bars():
    layout = layout_of(demo_scene())
    spot = first_spot(layout, START + 100)
    rows = {spot.row}
    while (following := neighbour(layout, spot, Way.DOWN)) is not None:
        spot = following
        rows.add(spot.row)
    assert rows == {strip.row.key for strip in layout.strips if strip.row and strip.row.bars}
    assert neighbour(layout, spot, Way.DOWN) is None


def test_that_arrows_pass_over_what_is_folded():
    scene = demo_scene()
    layout = layout_of(scene, frozenset({scene.groups[1].bed}))
    spot = neighbour(layout, first_spot(layout, START + 100), Way.DOWN)
    assert spot.row.bed == scene.groups[2].bed


def test_that_a_bar_is_found_again_after_it_has_moved_to_another_row():
    scene = demo_scene()
    bar = scene.groups[1].rows[0].bars[0]
    index = SceneIndex(scene)
    gone = bar.over(RowKey(bed=Id("elsewhere"), unit=9))
    assert index.again(gone).bar == bar
    assert index.again(None) is None


def test_that_rows_below_and_above_are_places_nearest_first():
    scene = demo_scene()
    index = SceneIndex(scene)
    rows = [row.key for group in scene.groups for row in group.rows if row.unit]
    assert index.rows_from(rows[2], 1) == tuple(rows[3:])
    assert index.rows_from(rows[2], -1) == tuple(reversed(rows[:2]))
    assert index.rows_from(RowKey(bed=Id("none"), unit=1), 1) == ()


@given(
    start=st.integers(-40, 40), step=st.integers(1, 9), count=st.integers(0, 20), day=st.integers(-60, 260)
)
def test_that_a_curve_holds_each_value_for_its_days(start, step, count, day):
    curve = Curve(start=start, step=step, values=array("d", range(count)))
    inside = start <= day < start + step * count
    assert curve.at(day) == ((day - start) // step if inside else None)
    assert list(curve.seen(day, day + 1)) == ([(day - start) // step] if inside else [])
    assert list(curve.seen(start, curve.end)) == list(range(count))


def test_that_few_and_many_batches_are_found_alike():
    scene = demo_scene()
    index = SceneIndex(scene)
    for bar in scene.bars():
        spots = index.spots(bar.batch)
        assert bar in [spot.bar for spot in spots]
        assert {spot.bar.batch for spot in spots} == {bar.batch}
    assert index.spots(Id("nobody")) == ()


def test_that_rain_is_said_with_the_other_words_of_a_month():
    assert month_words(Month(warmth=Warmth.COOL, rain=Rain.DRY)) == "cool, dry"
    said = seasons_words((Month(rain=Rain.WET), Month(), *(Month(rain=Rain.DRY),) * 10))
    assert "wet: Jan" in said
    assert "dry: Mar" in said
