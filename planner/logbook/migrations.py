"""The logbook file's schema, as numbered steps that are only ever added to.

Each step is one transaction together with its number in `user_version`. The journal keeps
rows by column name, so a step that adds a column with a default leaves undo intact.
"""

from __future__ import annotations

import sqlite3
from typing import Final

# "FSHL": how a logbook is told from any other SQLite file.
APPLICATION_ID: Final = 0x4653484C

_FIRST: Final = (
    """
    CREATE TABLE trips (
        id INTEGER PRIMARY KEY,
        name TEXT NOT NULL CHECK (name <> ''),
        place TEXT NOT NULL CHECK (place <> ''),
        crew INTEGER CHECK (crew >= 0),
        weather TEXT NOT NULL DEFAULT '',
        water_c REAL,
        notes TEXT NOT NULL DEFAULT '',
        UNIQUE (name, place)
    ) STRICT
    """,
    # Times are ISO 8601 in UTC; NULL means not recorded, which is not zero.
    """
    CREATE TABLE hauls (
        id INTEGER PRIMARY KEY,
        trip_id INTEGER NOT NULL REFERENCES trips (id),
        spot TEXT NOT NULL DEFAULT '',
        trap TEXT NOT NULL DEFAULT '',
        design TEXT NOT NULL DEFAULT '',
        bait TEXT NOT NULL DEFAULT '',
        set_at TEXT,
        hauled_at TEXT,
        depth_m REAL,
        keepers INTEGER CHECK (keepers >= 0),
        shorts INTEGER CHECK (shorts >= 0),
        females INTEGER CHECK (females >= 0),
        sponge INTEGER CHECK (sponge >= 0),
        other TEXT NOT NULL DEFAULT '',
        judged INTEGER CHECK (judged >= 0),
        light INTEGER CHECK (light >= 0),
        water_c REAL,
        notes TEXT NOT NULL DEFAULT '',
        extra TEXT NOT NULL DEFAULT '{}',
        CHECK (light IS NULL OR light <= judged)
    ) STRICT
    """,
    "CREATE INDEX hauls_of_trip ON hauls (trip_id)",
    # What was changed, newest last; those with undone = 1 can be redone.
    """
    CREATE TABLE changes (
        id INTEGER PRIMARY KEY,
        name TEXT NOT NULL,
        trips TEXT NOT NULL,
        undone INTEGER NOT NULL DEFAULT 0 CHECK (undone IN (0, 1))
    ) STRICT
    """,
    # A row before and after a change, as JSON; NULL where it did not exist.
    """
    CREATE TABLE changed_rows (
        id INTEGER PRIMARY KEY,
        change_id INTEGER NOT NULL REFERENCES changes (id) ON DELETE CASCADE,
        in_table TEXT NOT NULL,
        row_id INTEGER NOT NULL,
        before TEXT,
        after TEXT
    ) STRICT
    """,
    "CREATE INDEX rows_of_change ON changed_rows (change_id)",
)

# Kitchen counts, single crabs, traps with a history, the bin, and rows that keep their id.
_SECOND: Final = (
    "ALTER TABLE trips ADD COLUMN kitchen_picked INTEGER CHECK (kitchen_picked >= 0)",
    "ALTER TABLE trips ADD COLUMN kitchen_light INTEGER"
    " CHECK (kitchen_light >= 0 AND kitchen_light <= kitchen_picked)",
    "ALTER TABLE trips ADD COLUMN kitchen_asked INTEGER NOT NULL DEFAULT 0"
    " CHECK (kitchen_asked IN (0, 1))",
    # Where a haul stands in its trip; alike in the order of entry.
    "ALTER TABLE hauls ADD COLUMN position INTEGER NOT NULL DEFAULT 0",
    # Empty text and NULL mean not recorded.
    """
    CREATE TABLE crabs (
        id INTEGER PRIMARY KEY,
        haul_id INTEGER NOT NULL REFERENCES hauls (id),
        sex TEXT NOT NULL DEFAULT '',
        width_mm REAL,
        width_by TEXT NOT NULL DEFAULT '',
        weight_g REAL,
        shell TEXT NOT NULL DEFAULT '',
        peeler_sign TEXT NOT NULL DEFAULT '',
        abdomen TEXT NOT NULL DEFAULT '',
        grade TEXT NOT NULL DEFAULT '',
        meat_g REAL,
        notes TEXT NOT NULL DEFAULT ''
    ) STRICT
    """,
    "CREATE INDEX crabs_of_haul ON crabs (haul_id)",
    """
    CREATE TABLE traps (
        id INTEGER PRIMARY KEY,
        label TEXT NOT NULL UNIQUE CHECK (label <> ''),
        design TEXT NOT NULL DEFAULT '',
        notes TEXT NOT NULL DEFAULT ''
    ) STRICT
    """,
    # Days are local dates, year-month-day.
    """
    CREATE TABLE trap_events (
        id INTEGER PRIMARY KEY,
        trap_id INTEGER NOT NULL REFERENCES traps (id),
        kind TEXT NOT NULL,
        on_day TEXT NOT NULL,
        notes TEXT NOT NULL DEFAULT ''
    ) STRICT
    """,
    "CREATE INDEX events_of_trap ON trap_events (trap_id)",
    # What was deleted, until the user empties the bin; the rows as JSON, by table.
    """
    CREATE TABLE binned (
        id INTEGER PRIMARY KEY,
        name TEXT NOT NULL,
        binned_at TEXT NOT NULL,
        hauls INTEGER NOT NULL,
        content TEXT NOT NULL
    ) STRICT
    """,
)

# What the plan of a trip forecast, as JSON; empty for a trip begun without a plan.
_THIRD: Final = ("ALTER TABLE trips ADD COLUMN promise TEXT NOT NULL DEFAULT ''",)

MIGRATIONS: Final[tuple[tuple[str, ...], ...]] = (_FIRST, _SECOND, _THIRD)


def latest_version() -> int:
    """Return the number of the schema that this version of the program writes."""
    return len(MIGRATIONS)


def migrate(connection: sqlite3.Connection, version: int) -> None:
    """Take a file from the schema `version` to the latest, each step whole or not at all."""
    for number, statements in enumerate(MIGRATIONS[version:], start=version + 1):
        connection.execute("BEGIN IMMEDIATE")
        try:
            for statement in statements:
                connection.execute(statement)
            connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
            connection.execute(f"PRAGMA user_version = {number}")
            connection.execute("COMMIT")
        except BaseException:
            if connection.in_transaction:
                connection.execute("ROLLBACK")
            raise
