"""How full the crabs should be: molt and refill, season and water temperature, moon."""

from planner.molt.evidence_types import Evidence
from planner.molt.forecast_types import Forecast, Why
from planner.molt.forecasting import forecast
from planner.molt.weighing import evidence

__all__ = ["Evidence", "Forecast", "Why", "evidence", "forecast"]
