"""The guide to the place file is true: its examples load, and it leaves no key out."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from pydantic import BaseModel

from planner.sites import file_model, load_site, water_tables

GUIDE = Path(__file__).parents[2] / "docs" / "place-file.md"
TABLES = [
    table
    for module in (file_model, water_tables)
    for table in vars(module).values()
    if isinstance(table, type)
    and issubclass(table, BaseModel)
    and table.__module__ == module.__name__
]


def test_examples_load(tmp_path):
    """Whoever copies an example from the guide has a place."""
    whole, offsets = re.findall(r"```toml\n(.*?)```", GUIDE.read_text(encoding="utf-8"), re.S)
    (tmp_path / "otter-bight.toml").write_text(whole, encoding="utf-8")
    (tmp_path / "heron-slough.toml").write_text(offsets, encoding="utf-8")
    assert load_site(tmp_path / "otter-bight.toml").spots
    assert load_site(tmp_path / "heron-slough.toml").water.offsets


@pytest.mark.parametrize("table", TABLES, ids=lambda table: table.__name__)
def test_every_key_is_in_the_guide(table):
    """A key that nobody can read about is a key that nobody uses."""
    text = GUIDE.read_text(encoding="utf-8")
    for name, field in table.model_fields.items():
        assert re.search(rf"\b{field.alias or name}\b", text), name
