"""Import every module that must work without Qt; run by check.py where Qt is not installed."""

from __future__ import annotations

import importlib
import pkgutil
import sys
import tomllib
from importlib.util import find_spec
from pathlib import Path

QT = ("PySide6", "pyqtgraph")


def core_packages(pyproject: str) -> list[str]:
    """Return the modules that the import contract keeps free of Qt."""
    contracts = tomllib.loads(pyproject)["tool"]["importlinter"]["contracts"]
    return next(
        contract["source_modules"]
        for contract in contracts
        if set(QT) <= set(contract.get("forbidden_modules", ()))
    )


def main() -> int:
    """Import them all; a module that fails ends the run with its own traceback."""
    found = [name for name in QT if find_spec(name)]
    if found:
        print(f"this environment has {' and '.join(found)} and so proves nothing")
        return 1
    pyproject = Path(__file__).parent.parent / "pyproject.toml"
    names = core_packages(pyproject.read_text(encoding="utf-8"))
    for name in names:
        module = importlib.import_module(name)
        for below in pkgutil.walk_packages(getattr(module, "__path__", ()), f"{name}."):
            importlib.import_module(below.name)
    ours = sorted(name for name in sys.modules if name.split(".")[0] == "planner")
    print(f"{len(ours)} modules of the core work without Qt, from {Path(module.__file__ or '')}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
