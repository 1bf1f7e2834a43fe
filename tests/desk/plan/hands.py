"""What a hand does in the tests of the page: click, and type over what stands in a field."""

from PySide6.QtCore import Qt


def click(qtbot, widget):
    qtbot.mouseClick(widget, Qt.MouseButton.LeftButton)


def typed(qtbot, form, field, text):
    line = form.editor(field).focusProxy()
    line.setFocus()
    line.selectAll()
    qtbot.keyClick(line, Qt.Key.Key_Delete)
    qtbot.keyClicks(line, text)
    return line
