"""Learning from a log: what moves the forecast, what must not, and honesty about little data."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import numpy as np
import pytest

from planner.assets import demo_log, demo_place
from planner.logbook import Haul, Log, book_zone, read_log
from planner.molt import evidence, forecast
from planner.molt.learning import effective_weights, judged_trips, shifted
from planner.sites import load_site

SPAN = (date(2026, 8, 1), date(2026, 8, 31))


@pytest.fixture(scope="module")
def site():
    return load_site(demo_place())


@pytest.fixture(scope="module")
def demo(site):
    return read_log(demo_log(), book_zone)


def trips(site, shares, judged=20, place=None):
    """A log of summer trips ten days apart, each with one haul of a light share."""
    return Log(
        tuple(
            Haul(
                trip=f"trip {i}",
                place=place or site.name,
                hauled_at=datetime(2025, 6, 1, 14, tzinfo=UTC) + timedelta(days=10 * i),
                keepers=judged,
                judged=judged,
                light=round(share * judged),
            )
            for i, share in enumerate(shares)
        )
    )


def light_share(site, log):
    return float(forecast(site, *SPAN, log=log).light_share.mean.mean())


def test_a_log_of_light_trips_raises_the_forecast(site):
    """Ten trips a third light move the forecast well above the prior; ten full ones below it."""
    prior = light_share(site, None)
    assert light_share(site, trips(site, [0.35] * 10)) > prior + 0.05
    assert light_share(site, trips(site, [0.0] * 10)) < prior - 0.01


def test_one_trip_moves_it_little(site):
    """A single striking trip is not taken for a law: ten of its kind move the forecast far more."""
    prior = light_share(site, None)
    one = light_share(site, trips(site, [0.5])) - prior
    ten = light_share(site, trips(site, [0.5] * 10)) - prior
    assert 0 < one < 0.6 * ten


def test_more_light_crabs_never_lower_the_forecast(site):
    """The same trips with more of their crabs light forecast at least as many light ones."""
    shares = [light_share(site, trips(site, [0.1, 0.1, 0.1, last])) for last in (0.0, 0.2, 0.5)]
    assert shares == sorted(shares)


def test_basis_and_count_say_what_it_rests_on(site, demo):
    """Trips with judged crabs count, others do not; the parts of why still add up."""
    found = forecast(site, *SPAN, log=demo)
    judged = judged_trips(site, demo)
    assert found.basis == "log"
    assert found.trips == len(judged.days) == sum(bool(o.judged) for o in demo.outcomes(site.name))
    total = found.why.season + found.why.moon + found.why.runs + found.why.place
    np.testing.assert_allclose(total, found.light_share.mean - found.yearly_light_share, atol=1e-12)


def test_trips_elsewhere_and_unjudged_are_the_prior(site):
    """A log without a judged trip of this place leaves the prior, and says so."""
    elsewhere = forecast(site, *SPAN, log=trips(site, [0.5] * 3, place="Another Creek"))
    unjudged = forecast(site, *SPAN, log=trips(site, [0.0] * 3, judged=0))
    prior = forecast(site, *SPAN)
    for found in (elsewhere, unjudged):
        assert found.basis == "prior"
        np.testing.assert_array_equal(found.light_share.mean, prior.light_share.mean)
    assert evidence(site, trips(site, [], place=None)) is None


def test_row_order_does_not_matter(site, demo):
    """The same hauls in another order give the very same numbers."""
    turned = Log(demo.hauls[::-1], demo.trips)
    np.testing.assert_array_equal(
        forecast(site, *SPAN, log=demo).light_share.mean,
        forecast(site, *SPAN, log=turned).light_share.mean,
    )


def test_evidence_of_the_demo_log(site, demo):
    """Effects rest on all judged trips, curves are shares, the record scores earlier trips only."""
    found = evidence(site, demo)
    judged = judged_trips(site, demo)
    assert {effect.cause for effect in found.effects} == {"season", "moon", "place"}
    for effect in found.effects:
        assert effect.swing.low <= effect.swing.mean <= effect.swing.high
        assert (effect.trips, effect.crabs) == (len(judged.days), judged.judged.sum())
        assert 0 <= effect.p_matters(0.1) <= effect.p_matters(0.01) <= 1
    for curve in (found.moon, found.season):
        assert curve.x_d.shape == curve.light_share.mean.shape
        assert ((curve.light_share.mean >= 0) & (curve.light_share.mean <= 1)).all()
    assert len(found.record.trips) == len(judged.days) - 3
    assert all(0 < score < 1 for score in (found.record.brier, found.record.brier_running_mean))


def test_a_late_trip_leaves_earlier_forecasts_of_the_record_alone(site):
    """Each past trip is forecast from earlier trips: what came later cannot have been known."""
    short = evidence(site, trips(site, [0.1, 0.3, 0.0, 0.2, 0.1]))
    longer = evidence(site, trips(site, [0.1, 0.3, 0.0, 0.2, 0.1, 0.9]))
    for before, after in zip(short.record.trips, longer.record.trips, strict=False):
        # The draws run on a longer span, so their temperatures differ by chance.
        assert before.forecast.mean == pytest.approx(after.forecast.mean, abs=0.03)


@pytest.mark.parametrize("count", [1, 2, 3, 4, 40])
def test_any_number_of_trips_reads_sensibly(site, count):
    """Nothing divides by zero with few trips; a record needs four."""
    found = evidence(site, trips(site, [0.1] * count))
    assert found.trips == count
    assert len(found.record.trips) == max(count - 3, 0)
    assert np.isnan(found.record.brier) == (count <= 3)


def test_weights_keep_enough_draws():
    """However sharp the likelihood, sixty draws' worth remains; a flat one is left alone."""
    sharp = np.linspace(0, 500, 1000)
    assert 1 / np.sum(effective_weights(sharp) ** 2) > 50
    np.testing.assert_allclose(effective_weights(np.zeros(100)), 0.01)


def test_shifting_by_nothing_changes_nothing():
    """Log-odds of zero leave a share, ones above zero raise it."""
    share = np.array([[0.1, 0.5, 0.9]])
    np.testing.assert_allclose(shifted(share, np.array([0.0])), share)
    assert (shifted(share, np.array([0.5])) > share).all()
