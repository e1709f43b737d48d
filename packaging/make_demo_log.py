"""Writes the invented demo log, resources/demo/sedge-hollow-hauls.csv, by simulating crabs.

Two seasons at the invented place Sedge Hollow. Nothing in it was caught: crabs are simulated
one by one through molt and refill, then trapped and counted as a person on a small boat would.
Run it from a checkout with the program installed; the same seed writes the same file.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta

import numpy as np
from numpy.typing import NDArray

from planner.assets import demo_log, demo_place
from planner.clock import from_utc64
from planner.logbook import Haul, Log, export_table
from planner.sites import Site, load_site
from planner.sky import lunar_phase_angle, sky_days

SEED = 7
FIRST, LAST = date(2025, 3, 1), date(2026, 11, 22)
WARM_UP_DAYS = 365
CRABS = 6000

DESIGNS = {"A": "bare wire, 2 doors", "B": "coated wire, 4 doors", "C": "chambered, 4 doors"}
TRAPS = tuple(f"{row}{number}" for row in "ABC" for number in range(1, 5))
DESIGN_FACTOR = {"A": 0.85, "B": 1.05, "C": 1.2}
SPOT_FACTOR = {
    "ramp flat": 0.65,
    "grass edge": 1.0,
    "oyster bar": 1.15,
    "old pilings": 1.0,
    "channel lip": 1.3,
    "deep bend": 0.9,
}
KEEPERS_PER_TRAP = 2.7
TRAP_K, TRIP_SD_LOG = 2.5, 0.25
TRIPS_IN_SEASON = {2025: 17, 2026: 17}

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Crabs:
    """Per day from FIRST: share of light crabs among those a trap can catch, and water."""

    light: Floats
    water_c: Floats


def main() -> None:
    """Write the demo log and say what is in it."""
    rng = np.random.default_rng(SEED)
    site = load_site(demo_place())
    crabs = simulate_crabs(site, rng)
    hauls: list[Haul] = []
    for evening in trip_evenings(rng):
        hauls += trip_hauls(site, evening, crabs, rng)
    first = hauls[0]
    invented = "INVENTED demo log: no such water, traps or crabs"
    hauls[0] = Haul(**{**vars(first), "notes": invented})
    path = demo_log()
    path.parent.mkdir(parents=True, exist_ok=True)
    log = Log(tuple(hauls))
    export_table(log, path, lambda _: site.zone)
    trips = log.outcomes()
    shares = [trip.light / trip.judged for trip in trips if trip.judged and trip.light is not None]
    print(f"{path.name}: {len(trips)} trips, {len(hauls)} hauls")
    print("light shares by trip:", " ".join(f"{share:.2f}" for share in shares))


def simulate_crabs(site: Site, rng: np.random.Generator) -> Crabs:
    """Follow legal males day by day: ready by warmth, shed in runs, refill, die, be replaced."""
    days = (LAST - FIRST).days + 1 + WARM_UP_DAYS
    start = np.datetime64(FIRST) - np.timedelta64(WARM_UP_DAYS, "D")
    dates = start + np.arange(days)
    water_c = water_of(site, dates) + smooth_noise(days, 12.0, 0.8, rng)
    phase = np.radians(lunar_phase_angle(dates.astype("datetime64[ms]")))
    runs = np.exp(smooth_noise(days, 9.0, 0.6, rng))
    since_molt = rng.uniform(0, 60, CRABS)
    fullness = np.ones(CRABS)
    light = np.zeros(days)
    for day in range(days):
        warmth = max(water_c[day] - 10.0, 0.0)
        tau_d = 17.0 * 1.8 ** ((25.0 - water_c[day]) / 10.0)
        fullness += (1 - fullness) / tau_d * (warmth > 0)
        since_molt += 1
        # Molts gather a little about the full moon, and stop in cool water.
        moon = np.exp(0.3 * np.cos(phase[day] - np.pi))
        hazard = 0.022 * moon * runs[day] * (warmth / 15.0) * (water_c[day] > 20.5)
        molts = (since_molt > 18) & (rng.random(CRABS) < hazard)
        fullness[molts] /= rng.normal(1.24, 0.02, molts.sum()) ** 3
        since_molt[molts] = 0
        # The caught and the dead are replaced by crabs that became legal by molting.
        if hazard > 0:
            gone = rng.random(CRABS) < 0.006
            fullness[gone] = 0.52
            since_molt[gone] = 0
        light[day] = np.mean(fullness[since_molt > 3] < 0.75)
    return Crabs(light[WARM_UP_DAYS:], water_c[WARM_UP_DAYS:])


def water_of(site: Site, dates: NDArray[np.datetime64]) -> Floats:
    """Return the place's usual water temperature, between the middles of the months."""
    monthly = np.array(site.monthly_water_c)
    month = dates.astype("datetime64[M]").astype(int) % 12
    day = (dates - dates.astype("datetime64[M]")).astype(int)
    at = month + (day - 15) / 30.4
    around = np.arange(-1, 14)
    usual: Floats = np.interp(at, around, np.take(monthly, around, mode="wrap"))
    return usual


def smooth_noise(days: int, memory_d: float, sd: float, rng: np.random.Generator) -> Floats:
    """Return noise of that spread which forgets itself over memory_d days, shape (days,)."""
    keep = np.exp(-1 / memory_d)
    noise = np.empty(days)
    value = rng.normal(0, sd)
    for day in range(days):
        value = keep * value + rng.normal(0, sd * np.sqrt(1 - keep**2))
        noise[day] = value
    return noise


def trip_evenings(rng: np.random.Generator) -> list[date]:
    """Return the evenings of setting: Fridays and Saturdays from March to November."""
    evenings: list[date] = []
    for year, count in TRIPS_IN_SEASON.items():
        first = friday_by(date(year, 3, 7))
        weekends = [first + timedelta(weeks=week) for week in range(37)]
        middle = [day for day in weekends[1:-1] if day <= date(year, 11, 15)]
        chosen = sorted(rng.choice(len(middle), count - 2, replace=False))
        last = friday_by(date(year, 11, 21))
        for friday in [weekends[0], *(middle[i] for i in chosen), last]:
            stays_two_nights = friday != last and rng.random() < 0.3
            evenings.append(friday if stays_two_nights else friday + timedelta(days=1))
    return evenings


def friday_by(day: date) -> date:
    """Return the last Friday not after a day."""
    return day - timedelta(days=(day.weekday() - 4) % 7)


def spots_of(season: int, trip: int, rng: np.random.Generator) -> dict[str, str]:
    """Return where each trap goes: hardly moved in the first season, rotated in the second."""
    spots = list(SPOT_FACTOR)
    if season == FIRST.year:
        placed = {trap: spots[index // 2] for index, trap in enumerate(TRAPS)}
        if rng.random() < 0.3:
            one, other = rng.choice(TRAPS, 2, replace=False)
            placed[one], placed[other] = placed[other], placed[one]
        return placed
    shifted = [spots[(index // 2 + 2 * trip + index % 2) % 6] for index in range(len(TRAPS))]
    return dict(zip(TRAPS, shifted, strict=True))


def trip_hauls(site: Site, evening: date, crabs: Crabs, rng: np.random.Generator) -> list[Haul]:
    """Return one trip's hauls: set before sunset, pulled after sunrise one or two days later."""
    nights = 2 if evening.weekday() == 4 else 1
    morning = evening + timedelta(days=nights)
    sun = sky_days(site, evening, morning)
    sunset, sunrise = sun.sunset[0], sun.sunrise[-1]
    minutes = np.timedelta64(1, "m")
    set_at = five_minutes(sunset) - int(rng.integers(30, 40)) * 5 * minutes
    haul_at = five_minutes(sunrise) + int(rng.integers(3, 12)) * 5 * minutes
    day = min((morning - FIRST).days, crabs.light.size - 1)
    water_c = float(crabs.water_c[day])
    light = beta_share(crabs.light[day], 14.0, rng)
    trip_luck = np.exp(rng.normal(0, TRIP_SD_LOG)) / (1 + np.exp(-(water_c - 12.5) / 1.5))
    placed = spots_of(evening.year, (evening - FIRST).days // 7, rng)
    depths = {spot.name: spot.depth_m for spot in site.spots}
    bait = str(rng.choice(["menhaden", "chicken neck", "mullet"], p=[0.5, 0.25, 0.25]))
    second_bait = str(rng.choice(["menhaden", "chicken neck", "mullet"]))
    taken = sorted(rng.choice(len(TRAPS), int(rng.choice([8, 10, 11, 12, 12])), replace=False))
    judges = rng.random() < 0.9
    reads_water = rng.random() < 0.75
    hauls = []
    for order, index in enumerate(taken):
        trap, spot = TRAPS[index], placed[TRAPS[index]]
        soak_h = float((haul_at - set_at) / np.timedelta64(1, "h"))
        filled = (1 - 2 ** (-soak_h / 10)) / (1 - 2 ** (-24 / 10))
        mean = KEEPERS_PER_TRAP * filled * trip_luck * SPOT_FACTOR[spot] * DESIGN_FACTOR[trap[0]]
        keepers = int(rng.poisson(mean * rng.gamma(TRAP_K, 1 / TRAP_K)))
        females = int(rng.poisson(1.1))
        sponge = int(rng.binomial(females, 0.25 if 4 <= morning.month <= 8 else 0.03))
        recorded = rng.random() < 0.98
        judged = keepers if judges and recorded and rng.random() < 0.94 else None
        hauls.append(
            Haul(
                trip=f"{morning.day} {morning:%b %Y}",
                place=site.name,
                spot=spot,
                trap=trap,
                design=DESIGNS[trap[0]],
                bait=bait if order % 4 else second_bait,
                set_at=as_datetime(set_at + order * 5 * minutes),
                hauled_at=as_datetime(haul_at + order * 5 * minutes),
                depth_m=depths[spot],
                keepers=keepers if recorded else None,
                shorts=int(rng.poisson(1.6)) if rng.random() < 0.95 else None,
                females=females if rng.random() < 0.95 else None,
                sponge=sponge,
                other=str(rng.choice(["", "", "", "", "", "2 pinfish", "1 stone crab", "1 whelk"])),
                judged=judged,
                light=None if judged is None else int(rng.binomial(judged, light)),
                water_c=round(water_c, 0) if reads_water else None,
                notes=str(rng.choice(["", "line fouled", "float dragged"], p=[0.96, 0.02, 0.02])),
            )
        )
    return hauls


def beta_share(mean: float, strength: float, rng: np.random.Generator) -> float:
    """Return the share for one trip: crabs of a trip are alike."""
    mean = min(max(mean, 0.02), 0.98)
    return float(rng.beta(mean * strength, (1 - mean) * strength))


def five_minutes(instant: np.datetime64) -> np.datetime64:
    """Return an instant on the five minutes before it."""
    whole: int = int(instant.astype("datetime64[m]").astype(np.int64)) // 5 * 5
    return np.datetime64(whole, "m")


def as_datetime(instant: np.datetime64) -> datetime:
    """Return an instant as an aware datetime."""
    return from_utc64(instant)


if __name__ == "__main__":
    main()
