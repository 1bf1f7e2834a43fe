"""The languages of the desk, and the translator that reads the files of Qt Linguist as they are.

Read in only when another language than English is wanted, and before the window is built: every text is
looked up once, when it is first shown. A text without a translation is shown in English, never blank.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QCoreApplication, QLocale, QTranslator

from planner.desk.say import CONTEXT, REVIEWED
from planner.paper.linguist import key_of, messages, ts_path

LANGUAGES: Final = {"en": "English", "fil": "Filipino", "es": "Español"}
"""By their code in ISO 639; each named in itself."""
_CONTEXTS: Final = (CONTEXT, "Lanes")
"""What Qt calls the two hands our texts come from; what Qt itself says is left to Qt."""


class Words(QTranslator):
    """Looks texts of the desk up in one language."""

    def __init__(self, language: str, parent: QCoreApplication) -> None:
        super().__init__(parent)
        known = messages(ts_path(language))
        self._said = {text: said for text, (said, _) in known.items() if said}
        self._reviewed = {text: said for text, (said, by_person) in known.items() if said and by_person}

    def isEmpty(self) -> bool:
        """Tell whether there is nothing to look up."""
        return not self._said

    def translate(
        self,
        context: str,
        sourceText: str,
        disambiguation: str | None = None,
        n: int = -1,  # noqa: ARG002 - the signature is Qt's
    ) -> str | None:
        """Return a text in the language; None, which means as it is, when there is no translation."""
        if context == REVIEWED:
            return self._reviewed.get(sourceText)
        # Qt takes an empty text for a translation, and shows nothing.
        return self._said.get(key_of(sourceText, disambiguation or "")) if context in _CONTEXTS else None


def speak(language: str, application: QCoreApplication) -> None:
    """Say everything in a language from now on, with its numbers and dates; English needs nothing."""
    if language not in LANGUAGES or language == "en":
        return
    QLocale.setDefault(QLocale(language))
    application.installTranslator(Words(language, application))
