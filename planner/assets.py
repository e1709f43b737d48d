"""Where files are: those that ship, in a checkout or a wheel, and the user's own."""

from __future__ import annotations

import os
from pathlib import Path

_PACKAGE = Path(__file__).parent
# A wheel carries the folders inside the package; a checkout has them beside it.
_ROOT = _PACKAGE / "shipped" if (_PACKAGE / "shipped").is_dir() else _PACKAGE.parent
# Stands for the folder of a user who has no home: nothing is in it and nothing can be put there.
_NOWHERE = Path(os.devnull, "fullshell")


def resource(*parts: str) -> Path:
    """Return the path of a file in `resources/`."""
    return _ROOT.joinpath("resources", *parts)


def sample_sites() -> Path:
    """Return the folder of sample place files."""
    return _ROOT / "sample_sites"


def demo_place() -> Path:
    """Return the place file of the invented demo place."""
    return sample_sites() / "sedge-hollow.toml"


def demo_log() -> Path:
    """Return the haul table of the invented demo log."""
    return resource("demo", "sedge-hollow-hauls.csv")


def guide(*parts: str) -> Path:
    """Return the path of a file in `docs/`: a page of the guide, or a picture."""
    return _ROOT.joinpath("docs", *parts)


def user_folder() -> Path:
    """Return the folder of this user's data; the variable FULLSHELL_HOME moves it."""
    moved = os.environ.get("FULLSHELL_HOME")
    if moved:
        return Path(os.path.expanduser(moved))
    import platformdirs

    try:
        return platformdirs.user_data_path("fullshell", appauthor=False)
    except RuntimeError:  # a user whom the system does not know, as in a container
        return _NOWHERE


def log_folder() -> Path:
    """Return the folder where faults are written down; the variable FULLSHELL_HOME moves it."""
    if os.environ.get("FULLSHELL_HOME"):
        return user_folder() / "faults"
    import platformdirs

    try:
        return platformdirs.user_log_path("fullshell", appauthor=False)
    except RuntimeError:
        return _NOWHERE
