"""What hands do in the beds lane: choose bars, drag them, move them by keys.

Turns mouse and keys into a `Drag`, a cursor and signals; must know nothing of painting or storage.
"""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QObject, QPointF, Signal

from planner.desk.lanes import many_words, words
from planner.desk.lanes.band_hands import BandHands
from planner.desk.lanes.banding import BandState
from planner.desk.lanes.canvases import BedsCanvas, Held
from planner.desk.lanes.hand import Hand
from planner.desk.lanes.interaction import Drag, Mover, Step, step_by_days, step_to_rows
from planner.desk.lanes.scene import Bar, RowKey, Scene
from planner.desk.lanes.scene_index import SceneIndex, Spot, Way, first_spot, neighbour
from planner.desk.lanes.window_hands import WindowHands
from planner.farm.fields import Id


class BedHands(QObject):
    """Selection, cursor and drag over one beds canvas."""

    selected = Signal(list)
    opened = Signal(str)
    cursor_moved = Signal()
    balance_previewed = Signal(object)
    label_wanted = Signal(str, QPointF, bool)
    label_unwanted = Signal()
    said = Signal(str)

    def __init__(self, canvas: BedsCanvas, mover: Mover, parent: QObject) -> None:
        super().__init__(parent)
        self._canvas = canvas
        self._mover = mover
        self._drag = Drag(mover)
        self._band = BandHands(canvas)
        self.window = WindowHands(canvas, mover, self)
        self.window.balance_previewed.connect(self.balance_previewed)
        self.window.label_wanted.connect(self.label_wanted)
        self._index = SceneIndex(Scene(start=0, end=1))
        self._chosen: frozenset[Id] = frozenset()
        self._cursor: Spot | None = None
        self._focused = False
        self._pointer: Hand | None = None
        self._lone: Spot | None = None

    @property
    def chosen(self) -> frozenset[Id]:
        """Ids of the selected batches."""
        return self._chosen

    @property
    def cursor(self) -> Spot | None:
        """The bar that the keys act on."""
        return self._cursor

    @property
    def dragging(self) -> bool:
        """Tell whether a bar is being dragged, its window stretched, or a band drawn."""
        return self._drag.active or self._band.active or self.window.active

    def set_scene(self, scene: Scene) -> None:
        """Take other bars; the cursor stays on its bar, a drag ends."""
        self.cancel()
        self._index = SceneIndex(scene)
        self._canvas.set_groups(scene.groups, self._index)
        self._cursor = self._index.again(self._cursor.bar if self._cursor else None)
        self._show()

    def set_chosen(self, ids: Iterable[str]) -> None:
        """Mark batches as selected; the cursor goes to the first of them that it can."""
        chosen = frozenset(Id(each) for each in ids)
        if chosen == self._chosen:
            return
        self._chosen = chosen
        if self._cursor is None or self._cursor.bar.batch not in chosen:
            spots = (spot for batch in sorted(chosen) for spot in self._index.spots(batch))
            self._cursor = next(spots, self._cursor)
        self._show()

    def set_focused(self, *, focused: bool) -> None:
        """Show or hide the frame of the cursor."""
        self._focused = focused
        self._show()

    def summary(self) -> str:
        """Return the bar under the cursor in a sentence; empty when there is none."""
        if self._cursor is None:
            return ""
        found = self._index.row(self._cursor.row)
        place = words.row_title(found[0].name, found[1].name) if found else ""
        return words.bar_summary(self._cursor.bar, place)

    def _show(self) -> None:
        self._canvas.set_marks(self._chosen, self._cursor, focused=self._focused)

    # ---- mouse

    def press(self, hand: Hand) -> None:
        """Choose what is pressed, or fold a bed, and be ready for a drag."""
        at = hand.at
        if not hand.left:
            return
        if self._fold_at(at):
            return
        spot = self._canvas.spot_at(at)
        if spot is None:
            self._band.press(at, self._chosen, adding=hand.shift or hand.control)
            return
        if self.window.over_handle(spot, at):
            self._choose(spot, adding=False)
            self.window.press(spot, at)
            return
        self._lone = spot if self._is_one_of_many(spot) and not hand.control else None
        if self._lone is None:
            self._choose(spot, adding=hand.control)
        else:
            self._cursor = self._lone
        self._drag.press(spot.bar, spot.row, x=at.x(), y=at.y(), day=self._day_at(at))

    def _is_one_of_many(self, spot: Spot) -> bool:
        return len(self._chosen) > 1 and spot.bar.batch in self._chosen

    def _fold_at(self, at: QPointF) -> bool:
        strip = self._canvas.layout_now.strip_at(at.y() + self._canvas.down_px)
        if strip is None or strip.row is not None:
            return False
        self.fold(strip.group.bed, folded=strip.group.bed not in self._canvas.folded)
        return True

    def fold(self, bed: Id, *, folded: bool) -> None:
        """Show only the heading of a bed, or all of it."""
        self._canvas.fold(bed, folded=folded)

    def choose_at(self, at: QPointF) -> None:
        """Select the bar at a point, unless it is selected already."""
        spot = self._canvas.spot_at(at)
        if spot is not None and spot.bar.batch not in self._chosen:
            self._choose(spot, adding=False)

    def _choose(self, spot: Spot | None, *, adding: bool) -> None:
        if spot is None:
            chosen = self._chosen if adding else frozenset()
        elif adding:
            chosen = self._chosen ^ {spot.bar.batch}
        else:
            chosen = frozenset({spot.bar.batch})
        self._cursor = spot or self._cursor
        changed, self._chosen = chosen != self._chosen, chosen
        self._show()
        if spot is not None:
            self.cursor_moved.emit()
        if changed:
            self.selected.emit(sorted(chosen))

    def over_handle(self, hand: Hand) -> bool:
        """Tell whether a press where the pointer is would take a bar by its window of picking."""
        return self.window.over_handle(self._canvas.spot_at(hand.at), hand.at)

    def move(self, hand: Hand) -> None:
        """Follow the pointer with the pressed bar."""
        if hand.left_held:
            self._follow(hand)

    def follow_again(self) -> None:
        """Look again what lies under the pointer, after the lanes have been scrolled."""
        if self.dragging and self._pointer is not None:
            self._follow(self._pointer)

    def _draw_band(self, at: QPointF) -> None:
        chosen = self._band.follow(at)
        if chosen is not None:
            self._chosen = chosen
            self._show()
            self.label_wanted.emit(many_words.many_chosen(len(chosen)), at, True)

    def _end_band(self, *, kept: bool) -> bool:
        """Let the band go, keeping what it chose, or choosing again what was chosen before it."""
        was = self._band.end()
        if was is BandState.IDLE:
            return False
        self.label_unwanted.emit()
        if not kept:
            self._chosen = self._band.before
        elif was is BandState.PRESSED:
            self._choose(None, adding=self._band.adding)
        elif self._chosen != self._band.before:
            self.choose_many(self._chosen)
        self._show()
        return was is BandState.DRAWN

    def choose_many(self, batches: frozenset[Id]) -> None:
        """Choose these and say how many they are; the cursor goes to the first of them that it can."""
        self._chosen = frozenset()
        self.set_chosen(batches)
        self.selected.emit(sorted(batches))
        self.said.emit(many_words.many_chosen(len(batches)))

    def choose_in_sight(self) -> None:
        """Choose every batch that is at least partly seen."""
        self.choose_many(self._band.in_sight())

    def _follow(self, hand: Hand) -> None:
        self._pointer = hand
        at = hand.at
        if self._band.pressed:
            self._draw_band(at)
            return
        if self.window.pressed:
            self.window.follow(at, self._index)
            return
        strip = self._canvas.layout_now.strip_at(at.y() + self._canvas.down_px)
        row = strip.row.key if strip is not None and strip.row is not None else None
        changed = self._drag.move(
            x=at.x(), y=at.y(), day=self._day_at(at), row=row, keep_row=hand.shift or self._lone is not None
        )
        if changed:
            self._show_drag()
        if self._drag.active:
            self._show_label(at)

    def _day_at(self, at: QPointF) -> float:
        return self._canvas.frame_state.scale.day_at(at.x())

    def _allowed(self) -> bool:
        return self._drag.preview is not None and self._drag.preview.allowed

    def _show_drag(self) -> None:
        bar, preview = self._drag.bar, self._drag.preview
        if bar is None:
            return
        if self._drag.refused:
            self._canvas.set_held(Held(ghosts=(), bars=(bar,), allowed=False))
            return
        shown = preview.bars if preview is not None else ()
        held = Held(
            ghosts=tuple(
                spot
                for batch in sorted(self._chosen | {bar.batch} if self._lone else {bar.batch})
                for spot in self._index.spots(batch)
            ),
            bars=shown or (self._held_bar(bar),),
            allowed=self._allowed(),
        )
        self._canvas.set_held(held)
        self.balance_previewed.emit(preview.balance if preview is not None and preview.allowed else None)

    def _held_bar(self, bar: Bar) -> Bar:
        """Return the bar as it hangs under the hand."""
        return bar.shifted(self._drag.days).over(self._drag.row or bar.row_key)

    def _show_label(self, at: QPointF) -> None:
        bar, row = self._drag.bar, self._drag.row
        if bar is None or row is None:
            return
        if self._drag.refused:
            self.label_wanted.emit(words.locked_refusal(bar), at, False)
            return
        preview = self._drag.preview
        if preview is None:
            self.label_wanted.emit(words.unplaced_refusal(), at, False)
        elif not preview.allowed:
            self.label_wanted.emit(preview.reason or words.cannot_go(), at, False)
        else:
            held = next((each for each in preview.bars if each.run == bar.run), None) or self._held_bar(bar)
            self.label_wanted.emit(self._moved_words(held, row), at, True)

    def _moved_words(self, held: Bar, row: RowKey) -> str:
        found = self._index.row(row)
        place = words.row_title(found[0].name, found[1].name) if found and self._drag.changes_row else ""
        return words.moved(held, self._drag.days, place)

    def release(self, hand: Hand) -> None:
        """Let go of a dragged bar; one request goes out when it may stand where it is."""
        if not hand.left or self._end_band(kept=True) or self._end_window(kept=True):
            return
        bar, lone, dragged = self._drag.bar, self._lone, self._drag.active
        self._lone = None
        moved = self._drag.release()
        self._end_drag()
        if lone is not None and not dragged:
            self._choose(lone, adding=False)
        if moved and bar is not None:
            self._say_moved(bar)

    def cancel(self) -> bool:
        """Put a dragged bar back, or choose again what a band began with; return whether there was one."""
        if self._end_band(kept=False) or self._end_window(kept=False):
            return True
        was = self._drag.cancel()
        if was:
            self._end_drag()
        return was

    def _end_window(self, *, kept: bool) -> bool:
        """Let a window go that is in the hand; return whether there was one."""
        if not self.window.pressed:
            return False
        bar = self._cursor.bar if self._cursor is not None else None
        done = self.window.release() if kept else self.window.cancel()
        self._end_drag()
        if done and kept and bar is not None:
            self._say_moved(bar)
        return kept or done

    def stretch_by_days(self, days: int) -> None:
        """Pick the batch under the cursor so many days longer."""
        if self._cursor is not None and self._free(self._cursor.bar):
            bar = self._cursor.bar
            bars = (bar, *(spot.bar for spot in self._index.spots(bar.batch)))
            self._report(bar, self.window.stretch_by(bars, days))

    def _end_drag(self) -> None:
        self._pointer = None
        self._canvas.set_held(None)
        self.balance_previewed.emit(None)
        self.label_unwanted.emit()

    def double_click(self, hand: Hand) -> None:
        """Open the bar under the pointer."""
        spot = self._canvas.spot_at(hand.at)
        if spot is not None and hand.left:
            self.opened.emit(spot.bar.batch)

    # ---- keys

    def go(self, way: Way, day: int, *, adding: bool = False) -> None:
        """Move the cursor to the next bar, choosing it alone or `adding` it to what is chosen.

        `day` says where to begin when there is no cursor.
        """
        layout = self._canvas.layout_now
        hidden = self._cursor is None or self._cursor.row not in layout.position_of
        spot = (
            first_spot(layout, day)
            if hidden or self._cursor is None
            else neighbour(layout, self._cursor, way)
        )
        if spot is None:
            return
        if adding and spot.bar.batch in self._chosen:
            self._cursor = spot
            self._show()
            self.cursor_moved.emit()
        else:
            self._choose(spot, adding=adding)
        self.said.emit(self.summary())

    def go_to_spot(self, spot: Spot) -> None:
        """Move the cursor to a bar and select its batch."""
        self._choose(spot, adding=False)

    def open_current(self) -> None:
        """Open the batch under the cursor."""
        if self._cursor is not None:
            self.opened.emit(self._cursor.bar.batch)

    def move_by_days(self, days: int) -> None:
        """Move the batch under the cursor by days."""
        if self._cursor is not None and self._free(self._cursor.bar):
            bar = self._cursor.bar
            self._report(bar, step_by_days(self._mover, bar, days))

    def move_by_units(self, step: int) -> None:
        """Move the bar under the cursor to the next unit below (1) or above (-1) where it fits."""
        if self._cursor is None or not self._free(self._cursor.bar):
            return
        bar = self._cursor.bar
        rows = self._index.rows_from(self._cursor.row, step)
        if not rows:
            self._refuse(bar, words.no_other_unit(bar))
            return
        self._report(bar, step_to_rows(self._mover, bar, rows))

    def _free(self, bar: Bar) -> bool:
        if bar.locked:
            self._refuse(bar, words.locked_refusal(bar))
        return not bar.locked

    def _report(self, bar: Bar, step: Step) -> None:
        if step.moved:
            self.label_unwanted.emit()
            self._say_moved(bar)
        else:
            self._refuse(bar, step.reason or words.cannot_go())

    def _refuse(self, bar: Bar, reason: str) -> None:
        spot = self._index.again(bar)
        box = self._canvas.rect_of(spot) if spot is not None else None
        at = QPointF(box.left(), box.bottom()) if box is not None else QPointF()
        self.label_wanted.emit(reason, at, False)
        self.said.emit(reason)

    def _say_moved(self, bar: Bar) -> None:
        self.cursor_moved.emit()
        self.said.emit(words.moved_done(bar.code, self.summary()))
