"""Shows a grower who has just begun the three numbers of the plan, what repairs it, and how to print it."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPushButton, QWidget

from planner.desk.behind import Behind
from planner.desk.conduct import Conduct
from planner.desk.doors.asked import FEED, SOW, first_facts
from planner.desk.doors.figures import AHEAD_WEEKS, Carried, first_figures
from planner.desk.fitting import open_sized
from planner.desk.pages import Fact
from planner.desk.plan.kit import Card, Scrolling, Words, button, column, heading
from planner.desk.plan.remedy_list import RemedyList, repairable_flags
from planner.desk.rations import feed_words
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import number_words

_SHOWN_FLAGS = 1
_WIDTH, _HEIGHT = 860, 560


class FirstDialog(QDialog):
    """Sow this week, feed this week, and the area the fish can carry, with repairs where it does not fit."""

    print_wanted = Signal()
    why_wanted = Signal(object, int)

    def __init__(self, behind: Behind, conduct: Conduct, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Your plan is drafted"))
        self._theme = theme
        whole = column(self, theme, margin=theme.metrics.wide)
        inside = QWidget(self)
        lines = column(inside, theme, margin=0)
        whole.addWidget(Scrolling(inside, theme, self), 1)
        self._cards = QHBoxLayout()
        self.said: dict[str, Words] = {}
        self.asks: dict[str, QPushButton] = {}
        self._facts: dict[str, tuple[Fact, ...]] = {}
        lines.addLayout(self._cards)
        self.told = Words("", theme, self, ink="good")
        self.told.hide()
        self.verdict = Words("", theme, self)
        for part in (self.told, self.verdict):
            lines.addWidget(part)
        self.repairs = RemedyList(theme, conduct, self)
        lines.addWidget(self.repairs, 1)
        foot = QHBoxLayout()
        self.print = button(tr("Print the calendar…"), self, tip=tr("The seeding calendar, as it is printed"))
        self.stop = button(tr("To the plan"), self)
        foot.addStretch(1)
        foot.addWidget(self.print)
        foot.addWidget(self.stop)
        whole.addLayout(foot)
        self.print.clicked.connect(self._on_print)
        self.stop.clicked.connect(self.accept)
        self.repairs.applied.connect(self._on_applied)
        self.finished.connect(self._on_finished)
        self.show_behind(behind)
        flags = self.repairs.isVisibleTo(self)
        open_sized(self, QSize(_WIDTH, _HEIGHT if flags else self.sizeHint().height()))
        self.print.setDefault(True)

    def show_behind(self, behind: Behind) -> None:
        """Show the figures of a farm as it stands, and look for repairs of what is flagged first."""
        figures = first_figures(behind)
        self._facts = first_facts(behind)
        sown = "\n".join(
            tr("{seeds} seeds of {crop}", seeds=number_words(each.seeds, digits=0), crop=each.crop)
            for each in figures.sowings
        )
        self._say(SOW, tr("Sow this week"), sown or tr("Nothing this week"))
        feed = tr("about {grams} g a day", grams=feed_words(figures.feed_g_per_day))
        self._say(FEED, tr("Feed this week"), feed)
        for carried in figures.carried:
            self._say(carried.loop, tr("Your fish can carry"), _carried_words(carried))
        flags = repairable_flags(behind)[:_SHOWN_FLAGS]
        fits = all(each.fits for each in figures.carried)
        self.verdict.say(_verdict_words(fits=fits, flagged=bool(flags)))
        self.repairs.setVisible(bool(flags))
        if flags:
            self.repairs.ask_flags(behind, flags)
        else:
            self.repairs.give_up()

    def _say(self, key: str, title: str, words: str) -> None:
        """Show a figure on its card, which is made when there is none yet."""
        if key in self.said:
            self.said[key].say(words)
            self.asks[key].setEnabled(bool(self._facts.get(key)))
            return
        card = Card(self._theme, self)
        card.lines.addWidget(Words(title, self._theme, card, ink="muted"))
        self.said[key] = heading(words, self._theme, card, large=True)
        card.lines.addWidget(self.said[key])
        card.lines.addStretch(1)
        ask = self.asks[key] = button(tr("Why?"), card)
        ask.setAccessibleName(tr("Why: {figure}", figure=title))
        ask.setEnabled(bool(self._facts.get(key)))
        ask.setAutoDefault(False)
        ask.clicked.connect(self._on_why)
        card.lines.addWidget(ask, 0, Qt.AlignmentFlag.AlignLeft)
        self._cards.addWidget(card, 1)

    def _on_why(self, _checked: bool) -> None:
        for key, ask in self.asks.items():
            if ask is self.sender() and self._facts.get(key):
                self.why_wanted.emit(self._facts[key], 0)

    def _on_print(self, _checked: bool) -> None:
        self.accept()
        self.print_wanted.emit()

    def _on_applied(self, words: str) -> None:
        self.told.say(tr("Done: {words}. Undo takes it back.", words=words))

    def _on_finished(self, _result: int) -> None:
        self.repairs.give_up()


def _span(span: tuple[float, float]) -> str:
    low, high = (number_words(end, digits=1) for end in span)
    return tr("{low} to {high} m²", low=low, high=high)


def _carried_words(carried: Carried) -> str:
    return tr(
        "{now} now,\n{then} in {weeks} weeks",
        now=_span(carried.now_m2),
        then=_span(carried.then_m2),
        weeks=AHEAD_WEEKS,
    )


def _verdict_words(*, fits: bool, flagged: bool) -> str:
    if not flagged:
        return tr("What is planted fits what the fish can carry, as far as the published bands tell.")
    if fits:
        return tr("The planted area fits the feed, but something is flagged. This would repair it first:")
    return tr("More is planted than the feed carries. This would repair it; nothing is done unasked:")
