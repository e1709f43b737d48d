"""Which language is wanted; no Qt here but where the system's own can be told no other way."""

from __future__ import annotations

import os
import re
import sys

from planner.assets import resource
from planner.ui.settings import read_settings

ENGLISH = "en"


def codes() -> list[str]:
    """Return the codes of the languages there are, English first."""
    return [ENGLISH, *sorted(each.stem for each in resource("languages").glob("*.qm"))]


def wanted() -> str:
    """Return the language to use: FULLSHELL_LANGUAGE, else the setting, else the system's."""
    there = codes()
    for code in (os.environ.get("FULLSHELL_LANGUAGE", ""), read_settings().language, _system()):
        if code in there:
            return code
    return ENGLISH


def _system() -> str:
    if sys.platform in ("win32", "darwin"):
        try:
            from PySide6.QtCore import QLocale
        except ImportError:
            return ENGLISH
        return QLocale.system().name().partition("_")[0]
    # By the rule of POSIX: the first of these that is set decides.
    names = (os.environ.get(name, "") for name in ("LC_ALL", "LC_MESSAGES", "LANG"))
    # As in "es_MX.UTF-8": language, country, letters, and after an @ what sort of it.
    return re.split(r"[_.@]", next(filter(None, names), ENGLISH))[0]
