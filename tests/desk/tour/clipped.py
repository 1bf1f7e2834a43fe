"""Finds text that a widget has too little room for.

What can be scrolled to is not cut: only what lies wholly within a widget that is seen or could be scrolled
into sight counts. A table's cells are left to the table, which can be made wider and scrolled; the words
over its columns are not, for nobody guesses what a column is.
"""

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QTextDocument
from PySide6.QtWidgets import (
    QAbstractButton,
    QCheckBox,
    QComboBox,
    QHeaderView,
    QLabel,
    QTabBar,
    QWidget,
)

_ROUNDING = 1


def clipped(owner):
    """Return a line for every text below a widget that is cut."""
    found = []
    for widget in owner.findChildren(QWidget):
        if not widget.isVisible() or widget.window() is not owner.window():
            continue
        words = _trouble(widget)
        if words:
            found.append(f"{type(widget).__name__} in {type(widget.parent()).__name__}: {words}")
    return found


def _trouble(widget):
    if isinstance(widget, QLabel):
        return _label(widget)
    if isinstance(widget, QAbstractButton):
        return _button(widget)
    if isinstance(widget, QTabBar):
        return _tabs(widget)
    if isinstance(widget, QHeaderView) and widget.orientation() is Qt.Orientation.Horizontal:
        return _header(widget)
    return _beyond_parent(widget) if isinstance(widget, QComboBox) else ""


def _label(label):
    if not label.text().strip() or not label.pixmap().isNull():
        return ""
    room = label.contentsRect().size() - QSize(2 * label.margin(), 2 * label.margin())
    return _wrapped(label, room) if label.wordWrap() else _one_line(label, room)


def _wrapped(label, room):
    wanted = label.heightForWidth(label.width())
    if wanted > label.height() + _ROUNDING:
        return f"{label.text()[:60]!r} takes {wanted} px in height and has {label.height()}"
    widest = _widest_word(label)
    if widest > room.width() + _ROUNDING:
        return f"a word of {label.text()[:60]!r} takes {widest} px in width and has {room.width()}"
    return ""


def _one_line(label, room):
    wanted = label.sizeHint()
    if wanted.width() > label.width() + _ROUNDING:
        return f"{label.text()[:60]!r} takes {wanted.width()} px in width and has {label.width()}"
    if label.fontMetrics().height() > room.height() + _ROUNDING:
        return f"{label.text()[:60]!r} takes {wanted.height()} px in height and has {label.height()}"
    return _beyond_parent(label)


def _widest_word(label):
    text = label.text()
    if label.textFormat() is not Qt.TextFormat.PlainText and "<" in text:
        document = QTextDocument()
        document.setHtml(text)
        text = document.toPlainText()
    words = text.replace("/", " ").replace("-", " ").split()
    return max((label.fontMetrics().horizontalAdvance(word) for word in words), default=0)


def _button(button):
    if not button.text() or _shows_picture_only(button):
        return ""
    if isinstance(button, QCheckBox):
        return _beyond_parent(button)
    text = button.text().replace("&&", "\0").replace("&", "").replace("\0", "&")
    wanted = max(button.fontMetrics().horizontalAdvance(line) for line in text.split("\n"))
    if wanted > button.width() - 2 * _ROUNDING:
        return f"{text!r} takes {wanted} px in width and has {button.width()}"
    if button.fontMetrics().height() > button.height():
        return f"{text!r} takes {button.fontMetrics().height()} px in height and has {button.height()}"
    return _beyond_parent(button)


def _shows_picture_only(button):
    style = getattr(button, "toolButtonStyle", None)
    only = style is not None and style() is Qt.ToolButtonStyle.ToolButtonIconOnly
    return only and not button.icon().isNull()


def _tabs(bar):
    cut = [
        bar.tabText(at)
        for at in range(bar.count())
        if bar.isTabVisible(at)
        and bar.fontMetrics().horizontalAdvance(bar.tabText(at).replace("&", "")) > bar.tabRect(at).width()
    ]
    return f"tabs {cut} are cut" if cut else ""


def _header(header):
    if header.isHidden() or header.model() is None:
        return ""
    cut = []
    for at in range(header.count()):
        wanted = header.sectionSizeFromContents(at).width()
        if not header.isSectionHidden(at) and wanted > header.sectionSize(at) + _ROUNDING:
            text = header.model().headerData(at, Qt.Orientation.Horizontal)
            cut.append(f"{text!r} takes {wanted} px and has {header.sectionSize(at)}")
    return "; ".join(cut)


def _beyond_parent(widget):
    """Tell of a widget that lies partly outside its parent, where nobody can scroll to it."""
    parent = widget.parentWidget()
    if parent is None or parent.rect().adjusted(-1, -1, 1, 1).contains(widget.geometry()):
        return ""
    return f"{getattr(widget, 'text', str)()!r} at {widget.geometry().getRect()} in {parent.size().toTuple()}"
