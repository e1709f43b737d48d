"""The languages of the program by name, and setting one.

A language is a file of Qt's translation system in `resources/languages`: `es.ts`, edited by people,
and `es.qm`, made from it by `packaging/languages.py`. English is in the code.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QLibraryInfo, QLocale, QTranslator

from planner.assets import resource
from planner.ui.language_choice import ENGLISH, codes
from planner.words import Language, speak, spoken

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication

CONTEXT = "Fullshell"
# Two texts that a language file gives and the program never says: text and sense.
ITS_NAME = ("English", "the name of this language")
PERCENT = ("%", "after a number")


def languages() -> dict[str, str]:
    """Return the languages there are: their code and the name that their readers call them."""
    return {code: _name(code) for code in codes()}


def use(code: str) -> None:
    """Speak a language from now on. Texts made before stay as they are."""
    if code == ENGLISH:
        speak(None)
        return
    look_up = _look_up(code)
    habits = _habits(code)
    speak(
        Language(
            code=code,
            look_up=look_up,
            decimal=habits.decimalPoint(),
            group=habits.groupSeparator(),
            percent=look_up(*PERCENT) or PERCENT[0],
        )
    )


def dress(app: QApplication) -> None:
    """Let Qt's own texts and its fields of numbers and dates follow the language in use."""
    habits = _habits(spoken())
    QLocale.setDefault(habits)
    app.setLayoutDirection(habits.textDirection())
    own = QTranslator(app)
    folder = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    if own.load(f"qtbase_{spoken()}", folder):
        app.installTranslator(own)


def _name(code: str) -> str:
    """Return what a language calls itself, also where its file does not say."""
    if code == ENGLISH:
        return ITS_NAME[0]
    return _look_up(code)(*ITS_NAME) or QLocale(code).nativeLanguageName() or code


def _habits(code: str) -> QLocale:
    """Return how numbers are written: as in the user's country where it speaks the language."""
    system = QLocale.system()
    return system if system.name().partition("_")[0] == code else QLocale(code)


def _look_up(code: str) -> Callable[[str, str], str]:
    texts = QTranslator()
    texts.load(str(resource("languages", f"{code}.qm")))
    return lambda text, sense: texts.translate(CONTEXT, text, sense) or ""
