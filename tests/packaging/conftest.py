"""Lets the tests import the set-up scripts, which are no part of the package."""

from __future__ import annotations

import sys
from pathlib import Path

sys.path.append(str(Path(__file__).parents[2] / "packaging"))
