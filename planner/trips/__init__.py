"""Set-and-haul plans: hard limits, expected full keepers, reasons; and past trips alike."""

from planner.trips.candidates import LIMIT_WORDS
from planner.trips.choosing import Wishes
from planner.trips.explaining import Comparison, compare_plans, explain_day, nothing_fits
from planner.trips.outlook import Outlook, outlook
from planner.trips.plan import Plan, PlanSet, soonest_as_good
from planner.trips.planning import Search, plan_trips
from planner.trips.similar import SimilarTrip, similar_trips

__all__ = [
    "LIMIT_WORDS",
    "Comparison",
    "Outlook",
    "Plan",
    "PlanSet",
    "Search",
    "SimilarTrip",
    "Wishes",
    "compare_plans",
    "explain_day",
    "nothing_fits",
    "outlook",
    "plan_trips",
    "similar_trips",
    "soonest_as_good",
]
