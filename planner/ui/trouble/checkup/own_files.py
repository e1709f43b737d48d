"""What ships with the program: its modules and the files it reads, held to each other."""

from __future__ import annotations

import ast
import tomllib
from collections.abc import Iterator
from pathlib import Path
from typing import Final

from planner.assets import demo_log, demo_place, guide, resource, sample_sites

_MODULES: Final = Path(__file__).parents[3]  # the package `planner`
# Imported by the name that the window calls a view by, which no line of code spells out.
_VIEWS: Final = ("dates", "load", "hauls", "evidence", "places")


def broken_modules(package: Path = _MODULES) -> list[str]:
    """Return the modules that are no Python, that are missing, or lack what others ask them for.

    Nothing is run: a module that breaks must not take the doctor along. In a bundle the modules
    are in one file that does not start when it is damaged, and none is found here.
    """
    trees: dict[str, ast.Module] = {}
    broken: set[str] = set()
    packages: set[str] = set()
    for path in sorted(package.rglob("*.py")):
        parts = path.relative_to(package.parent).with_suffix("").parts
        name = ".".join(parts)
        if parts[-1] == "__init__":
            name = ".".join(parts[:-1])
            packages.add(name)
        try:
            trees[name] = ast.parse(path.read_bytes())
        except (SyntaxError, ValueError, OSError):
            broken.add(name)
    asked = {(f"{package.name}.ui.{view}", "view") for view in _VIEWS if trees}
    for tree in trees.values():
        asked.update(_asked_for(tree, package.name))
    given = {*broken, *trees}
    for name, tree in trees.items():
        given.update(f"{name}.{each}" for each in _names_in(tree))
    lacking = {
        f"{module}.{name}" if module in packages else module
        for module, name in asked
        if module not in broken and f"{module}.{name}" not in given
    }
    return [f"{name.replace('.', '/')}.py" for name in sorted(broken | lacking)]


def unreadable_files() -> Iterator[str]:
    """Name the files that are missing or empty."""
    for wanted in (
        demo_place(),
        demo_log(),
        guide("guide.md"),
        resource("deck", "tally-page.html"),
    ):
        if not wanted.is_file():
            yield wanted.name
    for folder, pattern in (
        (resource("species"), "*.toml"),
        (resource("tables"), "*.toml"),
        (resource("languages"), "*.qm"),
        (resource("icon"), "*.svg"),
        (sample_sites(), "*.toml"),
    ):
        if not any(folder.glob(pattern)):
            yield f"{folder.name}/{pattern}"
    for folder in (resource(), guide(), sample_sites()):
        yield from (path.name for path in sorted(folder.rglob("*")) if not _holds_something(path))


def unusable_files() -> Iterator[str]:
    """Name the files that the program's own readers refuse; only where its modules are sound."""
    for path in sorted(resource("tables").glob("*.toml")):
        try:
            tomllib.loads(path.read_text(encoding="utf-8"))
        except (OSError, ValueError):
            yield path.name
    for path in sorted(resource("species").glob("*.toml")):
        if not _is_profile(path.stem):
            yield path.name
    for path in sorted(sample_sites().glob("*.toml")):
        if not _is_place(path):
            yield path.name


def _holds_something(path: Path) -> bool:
    return not path.is_file() or path.stat().st_size > 0


def _is_profile(species: str) -> bool:
    import numpy as np

    from planner.molt import profile
    from planner.molt.unknowns import unknowns

    drawn = unknowns(2, np.random.default_rng(0))
    try:
        profile.judging(species)
        for read in (profile.parameters_of, profile.swings_of, profile.signs_of):
            read(species, drawn)
    except (OSError, ValueError, KeyError, TypeError):
        return False
    return True


def _is_place(path: Path) -> bool:
    from planner.errors import PlannerError
    from planner.sites import load_site

    try:
        load_site(path)
    except PlannerError:
        return False
    return True


def _asked_for(tree: ast.Module, package: str) -> Iterator[tuple[str, str]]:
    """Yield module and name of everything that is imported from the package."""
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom) and (node.module or "").split(".")[0] == package:
            yield from ((node.module or "", each.name) for each in node.names)


def _names_in(tree: ast.Module) -> Iterator[str]:
    for node in ast.walk(tree):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef):
            yield node.name
        elif isinstance(node, ast.Name) and isinstance(node.ctx, ast.Store):
            yield node.id
        elif isinstance(node, ast.alias):
            yield node.asname or node.name
