"""Puts the ruler and the three lanes together and gives the window one widget to talk to.

Only assembles and passes on; must know nothing of storage, forecasts or what a move does to a farm.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import date
from typing import Final

from PySide6.QtCore import QEvent, QPoint, QPointF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleAnnouncementEvent,
    QAccessibleEvent,
    QFocusEvent,
    QHideEvent,
    QKeyEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QScrollBar, QSplitter, QVBoxLayout, QWidget

from planner.desk.lanes import words
from planner.desk.lanes.bed_hands import BedHands
from planner.desk.lanes.canvas import Canvas, Frame
from planner.desk.lanes.canvases import BalanceCanvas, BedsCanvas, FishCanvas
from planner.desk.lanes.folding import fold_lanes, least_height
from planner.desk.lanes.grid import Calendar
from planner.desk.lanes.hand import Hand
from planner.desk.lanes.interaction import Mover
from planner.desk.lanes.keys import LaneKeys
from planner.desk.lanes.kit import Kit
from planner.desk.lanes.lane_bar import BalanceBar, LaneBar, band_key, fish_key, stage_key
from planner.desk.lanes.pointer_label import PointerLabel
from planner.desk.lanes.ruler_strip import RulerStrip
from planner.desk.lanes.scene import BalanceScene, Scene
from planner.desk.lanes.time_control import TimeControl
from planner.desk.lanes.time_scale import Span
from planner.desk.theme import Theme
from planner.farm.fields import NO_ID, Id

_WHEEL_CLICK: Final = 120
_WHEEL_PX: Final = 72
_EDGE_PX: Final = 28.0
_EDGE_STEP_PX: Final = 18
_EDGE_MS: Final = 30
_HANDLE_PX: Final = 6
_CURSOR_OVER_HANDLE: Final = Qt.CursorShape.SizeHorCursor
_FISH_SHARE: Final = 0.22
_BALANCE_SHARE: Final = 0.42


class LanesView(QWidget):
    """One ruler of weeks with the lanes of fish and feed, beds, and balance."""

    selected = Signal(list)
    opened = Signal(str)
    span_changed = Signal(object)
    menu_asked = Signal(list, QPoint)

    def __init__(self, theme: Theme, mover: Mover, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._kit = Kit(theme, self.font())
        self._calendar = Calendar()
        self.scene = Scene(start=date(2000, 1, 1).toordinal(), end=date(2000, 1, 2).toordinal())
        self._loop: Id = NO_ID
        self._span: Span | None = None
        self._own_split = False
        self._placed = False
        self.scroll_bar = QScrollBar(Qt.Orientation.Horizontal, self)
        self.scroll_bar.setAutoFillBackground(True)  # else the whole window below is painted with every step
        self.time = TimeControl(self.scroll_bar, self)
        self._build(mover)
        self._connect()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(words.view_name())
        self.setAccessibleDescription(words.view_help())
        self._restyle()

    # ---- for the window

    def set_scene(self, scene: Scene) -> None:
        """Show another scene; days and zoom stay, at first the plan's start is shown."""
        self.scene = scene
        self._calendar = replace(self._calendar, from_sunday=scene.from_sunday, months=scene.months)
        self.time.set_bounds(scene.start, scene.end)
        self.fish.set_feeds(scene.feeds)
        self.hands.set_scene(scene)
        self._show_balance()
        self._share_height()
        if not self._placed:
            self._placed = True
            self.time.to_start()
        self._describe()

    def set_today(self, today: date | None) -> None:
        """Mark another day as today, or none."""
        day = today.toordinal() if today is not None else None
        if day != self._calendar.today:
            self._calendar = replace(self._calendar, today=day)
            self._spread()

    def set_selected(self, ids: Iterable[str]) -> None:
        """Mark batches as selected, without saying so back."""
        self.hands.set_chosen(ids)
        self._describe()

    def set_theme(self, theme: Theme) -> None:
        """Draw in another theme."""
        self._theme = theme
        self._restyle()

    def set_loop(self, loop: Id) -> None:
        """Show the balance of another loop."""
        self._loop = loop
        self._show_balance()

    def set_element(self, element: str) -> None:
        """Show one element of the balance in full, or all with an empty word."""
        self.balance.set_element(element)
        self.balance_bar.choose_element(element)

    def go_to(self, day: date) -> None:
        """Show a date."""
        self.time.go_to(day.toordinal())

    def show_current(self) -> None:
        """Scroll so that the current bar is seen."""
        self._keys.show_current()

    def zoom_in(self) -> None:
        """Make days wider, around the current bar if it is in sight."""
        self._keys.zoom_in()

    def zoom_out(self) -> None:
        """Make days narrower, around the current bar if it is in sight."""
        self._keys.zoom_out()

    def fit(self) -> None:
        """Show the whole plan."""
        self.time.fit()

    @property
    def span(self) -> Span:
        """The days that are at least partly seen."""
        return self.time.span

    @property
    def current_summary(self) -> str:
        """The current bar in a sentence; empty when there is none."""
        return self.hands.summary()

    # ---- building

    def _build(self, mover: Mover) -> None:
        frame = self._frame()
        fish_title, beds_title, balance_title = words.lane_titles()
        self.ruler = RulerStrip(frame, self)
        self.split = QSplitter(Qt.Orientation.Vertical, self)
        self.split.setChildrenCollapsible(False)
        self.split.setHandleWidth(_HANDLE_PX)
        self.fish = FishCanvas(frame, self)
        self.beds = BedsCanvas(frame, self)
        self.balance = BalanceCanvas(frame, self)
        self._fish_bar = LaneBar(fish_title, self._kit, self)
        self._beds_bar = LaneBar(beds_title, self._kit, self)
        self.balance_bar = BalanceBar(balance_title, self._kit, self)
        self.hands = BedHands(self.beds, mover, self)
        self._keys = LaneKeys(self.beds, self.hands, self.time, self)
        self.label = PointerLabel(self)
        self._edge_timer = QTimer(self)
        self._edge_timer.setInterval(_EDGE_MS)
        self._edge = QPoint()
        for title, bar, canvas in self._lanes():
            canvas.setAccessibleName(title)
            self.split.addWidget(_stacked(bar, canvas, self.split))
        self.split.setStretchFactor(1, 1)
        self.split.splitterMoved.connect(self._split_by_hand)
        _fill(self, self.ruler, self.split, self.scroll_bar)

    def _lanes(self) -> tuple[tuple[str, LaneBar, Canvas], ...]:
        titles = words.lane_titles()
        bars = (self._fish_bar, self._beds_bar, self.balance_bar)
        return tuple(zip(titles, bars, (self.fish, self.beds, self.balance), strict=True))

    def _connect(self) -> None:
        self.time.changed.connect(self._spread)
        self.ruler.dragged.connect(self.time.scroll_px)
        self.ruler.wheeled.connect(self._wheel_sideways)
        for canvas in (self.fish, self.balance):
            canvas.wheeled.connect(self._wheel_sideways)
            canvas.pressed.connect(self._take_focus)
        self.beds.wheeled.connect(self._wheel_beds)
        self.beds.resized.connect(self._resized)
        self.beds.pressed.connect(self._take_focus)
        self.beds.pressed.connect(self.hands.press)
        self.beds.moved.connect(self._beds_moved)
        self.beds.released.connect(self._beds_released)
        self.beds.double_clicked.connect(self.hands.double_click)
        self.beds.menu_wanted.connect(self._menu_at)
        self._keys.menu_wanted.connect(self._ask_menu)
        self.hands.selected.connect(self.selected)
        self.hands.opened.connect(self.opened)
        self.hands.cursor_moved.connect(self._describe)
        self.hands.said.connect(self._announce)
        self.hands.balance_previewed.connect(self._preview_balance)
        self.hands.label_wanted.connect(self._show_label)
        self.hands.label_unwanted.connect(self.label.hide)
        self._edge_timer.timeout.connect(self._scroll_at_edge)
        self.balance_bar.loop_chosen.connect(self.set_loop)
        self.balance_bar.element_chosen.connect(self.balance.set_element)

    def _frame(self) -> Frame:
        return Frame(scale=self.time.scale, kit=self._kit, calendar=self._calendar)

    def _restyle(self) -> None:
        self._kit = Kit(self._theme, self.font())
        keys = (fish_key(self._kit), stage_key(self._kit), band_key(self._kit))
        for (_, bar, _), key in zip(self._lanes(), keys, strict=True):
            bar.set_key(self._kit, key)
        self.label.set_theme(self._theme)
        self._resized()

    def _resized(self) -> None:
        self.time.set_room(self._kit.names_px, self.beds.viewport().width() - self._kit.names_px)

    def _spread(self) -> None:
        """Show all lanes the same days."""
        frame = self._frame()
        self.ruler.set_frame(frame)
        for _, _, canvas in self._lanes():
            canvas.set_frame(frame)
        if self.time.span != self._span:
            self._span = self.time.span
            self.span_changed.emit(self._span)

    def _show_balance(self) -> None:
        balance = self.scene.balance_of(self._loop)
        self.balance.set_balance(balance)
        self.balance_bar.set_loops(self.scene.balances, balance.loop if balance else NO_ID)

    def _preview_balance(self, preview: BalanceScene | None) -> None:
        """Show what a move makes of the balance, and of which loop it is."""
        self.balance.set_preview(preview)
        if self.balance.shown is not None:
            self.balance_bar.choose_loop(self.balance.shown.loop)

    def _split_by_hand(self) -> None:
        self._own_split = True

    def _share_height(self) -> None:
        """Give fish and balance what they need within limits, the beds all the rest, unless a hand has."""
        if self._own_split:
            return
        whole = self.split.height() - 2 * self.split.handleWidth()
        bar = self._beds_bar.sizeHint().height()
        fish = min(round(self.fish.content_height()) + bar, round(whole * _FISH_SHARE))
        balance = min(round(self.balance.content_height()) + bar, round(whole * _BALANCE_SHARE))
        self.split.setSizes([fish, whole - fish - balance, balance])

    # ---- mouse and wheel

    def _take_focus(self, hand: Hand) -> None:  # noqa: ARG002
        self.label.hide()
        self.setFocus(Qt.FocusReason.MouseFocusReason)

    def _beds_moved(self, hand: Hand) -> None:
        self.hands.move(hand)
        if not (hand.left_held or self.hands.dragging):
            shape = _CURSOR_OVER_HANDLE if self.hands.over_handle(hand) else Qt.CursorShape.ArrowCursor
            self.beds.viewport().setCursor(shape)
        if self.hands.dragging:
            self._edge = self._beyond(hand.at)
            if self._edge.isNull():
                self._edge_timer.stop()
            elif not self._edge_timer.isActive():
                self._edge_timer.start()

    def _beyond(self, at: QPointF) -> QPoint:
        """Return which way to scroll while the pointer is near an edge of the beds lane."""
        rect = self.beds.rect_f().adjusted(self._kit.names_px, 0, 0, 0)
        across = -1 if at.x() < rect.left() + _EDGE_PX else 1 if at.x() > rect.right() - _EDGE_PX else 0
        down = -1 if at.y() < rect.top() + _EDGE_PX / 2 else 1 if at.y() > rect.bottom() - _EDGE_PX / 2 else 0
        return QPoint(across, down)

    def _scroll_at_edge(self) -> None:
        if not self.hands.dragging:
            self._edge_timer.stop()
            return
        if self._edge.x():
            self.time.scroll_px(self._edge.x() * _EDGE_STEP_PX)
        bar = self.beds.verticalScrollBar()
        bar.setValue(bar.value() + self._edge.y() * _EDGE_STEP_PX)
        self.hands.follow_again()

    def _beds_released(self, hand: Hand) -> None:
        self._edge_timer.stop()
        self.hands.release(hand)

    def _menu_at(self, hand: Hand) -> None:
        self.hands.choose_at(hand.at)
        self._ask_menu(hand.on_screen)

    def _ask_menu(self, at: QPoint) -> None:
        self.menu_asked.emit(sorted(self.hands.chosen), at)

    def _wheel_beds(self, hand: Hand) -> None:
        turned = hand.turned
        if hand.control or hand.shift or abs(turned.x()) > abs(turned.y()):
            self._wheel_sideways(hand)
            return
        bar = self.beds.verticalScrollBar()
        bar.setValue(bar.value() - turned.y() * _WHEEL_PX // _WHEEL_CLICK)
        self.hands.follow_again()

    def _wheel_sideways(self, hand: Hand) -> None:
        amount = hand.turned.y() or hand.turned.x()
        if hand.control and amount:
            self.time.zoom(closer=amount > 0, around_x=max(hand.at.x(), self._kit.names_px))
        else:
            self.time.scroll_px(-amount * _WHEEL_PX // _WHEEL_CLICK)
        self.hands.follow_again()

    def _show_label(self, text: str, at: QPointF, allowed: bool) -> None:
        point = self.beds.viewport().mapTo(self, at.toPoint())
        self.label.show_at(text, point, allowed=allowed)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let a key act, or pass it on."""
        self.label.hide()
        if not self._keys.press(event):
            event.ignore()

    # ---- spoken

    def _describe(self) -> None:
        text = self.hands.summary() or words.view_help()
        if text != self.accessibleDescription():
            self.setAccessibleDescription(text)
            QAccessible.updateAccessibility(QAccessibleEvent(self, QAccessible.Event.DescriptionChanged))

    def _announce(self, text: str) -> None:
        self._describe()
        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, text))

    # ---- Qt

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.hands.set_focused(focused=True)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.hands.cancel()
        self.hands.set_focused(focused=False)

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self.hands.cancel()

    def minimumSizeHint(self) -> QSize:
        return QSize(super().minimumSizeHint().width(), least_height(self.ruler, self.split, self.scroll_bar))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        fold_lanes(self.split, self.height() - self.ruler.sizeHint().height() - self.scroll_bar.height())
        self._share_height()
        self._resized()

    def changeEvent(self, event: QEvent) -> None:
        """Measure again when the typeface changes."""
        super().changeEvent(event)
        if event.type() is QEvent.Type.FontChange:
            self._restyle()


def _stacked(bar: QWidget, canvas: QWidget, parent: QWidget) -> QWidget:
    pane = QWidget(parent)
    _fill(pane, bar, canvas)
    return pane


def _fill(owner: QWidget, *parts: QWidget) -> None:
    column = QVBoxLayout(owner)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(0)
    for part in parts:
        column.addWidget(part)
