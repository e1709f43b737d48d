"""How full the crabs should be: molt and refill, season and water temperature, moon."""

from planner.molt.forecast_types import Forecast, Why
from planner.molt.forecasting import forecast

__all__ = ["Forecast", "Why", "forecast"]
