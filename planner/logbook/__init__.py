"""The log: what every trap gave, kept whole and read back from any of its forms."""

from __future__ import annotations

from planner.logbook.backups import Backup
from planner.logbook.bin import Binned
from planner.logbook.book import Logbook, default_logbook
from planner.logbook.entries import Crab, Haul, Promise, Trap, TrapEvent, Trip, TripOutcome
from planner.logbook.errors import (
    LogbookDamaged,
    LogbookError,
    LogbookInUse,
    LogbookNewer,
    LogError,
)
from planner.logbook.export import export_table, table_text
from planner.logbook.journal import Change
from planner.logbook.log import Log, TripKey
from planner.logbook.log_file import read_log
from planner.logbook.reading import Zones
from planner.logbook.rescuing import Rescue, rescue
from planner.logbook.zones import book_zone

__all__ = [
    "Backup",
    "Binned",
    "Change",
    "Crab",
    "Haul",
    "Log",
    "LogError",
    "Logbook",
    "LogbookDamaged",
    "LogbookError",
    "LogbookInUse",
    "LogbookNewer",
    "Promise",
    "Rescue",
    "Trap",
    "TrapEvent",
    "Trip",
    "TripKey",
    "TripOutcome",
    "Zones",
    "book_zone",
    "default_logbook",
    "export_table",
    "read_log",
    "rescue",
    "table_text",
]
