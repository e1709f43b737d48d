"""The log's own words as the reader's language has them; the log keeps the English ones."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from planner.words import say

IN_WORDS: Final[Mapping[str, str]] = {
    # of a crab
    "male": say("male"),
    "immature female": say("immature female"),
    "mature female": say("mature female"),
    "point to point": say("point to point"),
    "inside the points": say("inside the points"),
    "buster": say("buster"),
    "soft": say("soft"),
    "papershell": say("papershell"),
    "buckram": say("buckram"),
    "hard": say("hard"),
    "none": say("none", sense="no peeler sign"),
    "white": say("white"),
    "pink": say("pink"),
    "red": say("red"),
    "cream": say("cream"),
    "yellowed": say("yellowed"),
    "rusty": say("rusty"),
    "dark": say("dark", sense="abdomen of a crab"),
    "light": say("light"),
    "filling": say("filling"),
    "full": say("full"),
    # what befell a trap
    "bought": say("bought"),
    "built": say("built"),
    "repaired": say("repaired"),
    "changed": say("changed"),
    "lost": say("lost"),
    "found": say("found"),
    "retired": say("retired"),
}
