"""What leaves the program for a trip: checklist, sheet, calendar file, water table, waypoints.

Nothing imported here needs Qt; the printed page is `planner.handouts.sheet_pdf`.
"""

from planner.handouts.calendar import calendar_file
from planner.handouts.checklist import Item, Section, checklist
from planner.handouts.facts import TripFacts, trip_facts
from planner.handouts.sheet import TripSheet, trip_sheet
from planner.handouts.water_table import water_csv
from planner.handouts.waypoints import no_positions, waypoints_gpx

__all__ = [
    "Item",
    "Section",
    "TripFacts",
    "TripSheet",
    "calendar_file",
    "checklist",
    "no_positions",
    "trip_facts",
    "trip_sheet",
    "water_csv",
    "waypoints_gpx",
]
