"""How full the crabs should be: molt and refill, season and water, moon, and what trips taught."""

from planner.molt.evidence_types import Evidence
from planner.molt.filling import Filling, days_to_fill, last_trip_text
from planner.molt.forecast_types import Forecast, Why
from planner.molt.forecasting import forecast
from planner.molt.weighing import evidence

__all__ = [
    "Evidence",
    "Filling",
    "Forecast",
    "Why",
    "days_to_fill",
    "evidence",
    "forecast",
    "last_trip_text",
]
